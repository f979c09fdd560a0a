using LeverDraw.Diagnostics;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Profiles;
using LeverDraw.Tests.Support;
using LeverDraw.Units;
using static LeverDraw.Parts.AdjustingLever.LeverFields;

namespace LeverDraw.Tests.Parts.AdjustingLever;

public class LeverPartTests
{
    public static TheoryData<string, string, string> Impossible => new()
    {
        { "head.corner_radius", "head.depth", "two corners" },
        { "arms.thickness", "head.depth", "as thick as the head" },
        { "head.height", "fork.web", "cuts into the round head" },
        { "arms.length", "pads.length", "together they need" },
        { "arms.sagitta", "arms.length", "sixth" },
        { "blends.head_fillet", "arms.thickness", "cannot be measured" },
        { "pads.thickness", "arms.thickness", "thicker than the arms" },
        { "pads.crown_radius", "pads.length", "cannot span" },
        { "blends.fillet", "pads.length", "whole upper half" },
        { "pads.end", "pads.crown_radius", "no full round" },
        { "pads.end_corner", "pads.length", "reach its middle" },
        { "fork.crotch_radius", "fork.gap", "wider than the fork gap" },
        { "fork.gap", "head.width", "no wider than the head" },
        { "fork.shoulder_radius", "head.width", "ends level" },
        { "fork.shoulder_end", "fork.shoulder_start", "not clearly lower" },
        { "tongue.width", "head.width", "wider than the head" },
        { "blends.fillet", "blends.edge_round", "no edge round" },
        { "blends.edge_round", "blends.fillet", "no fillet to run into" },
        { "tongue.foot_fillet", "tongue.width", "no corner for the foot fillet" },
        { "tongue.thickness", "tongue.flank_taper", "grows to" },
        { "tongue.neck_thickness", "tongue.thickness", "as thick as the bulb" },
        { "tongue.cam_radius", "tongue.thickness", "no flank" },
        { "tongue.nose_radius", "tongue.thickness", "two corners of" },
        { "boss.diameter", "head.depth", "overhangs" },
        { "boss.diameter", "head.height", "runs over" },
        { "boss.height", "head.width", "tolerance on the bosses' height" },
        { "arms.sagitta", "geometry.pad_position", "tolerance on the sagitta" },
        { "hole.diameter", "head.depth", "round the hole" },
        { "mark.text", "mark.letter_height", "long" },
        { "blends.head_fillet", "tongue.sweep", "run into each other" },
        { "tongue.length", "blends.head_fillet", "flank is too short" },
        { "tongue.thickness", "blends.head_fillet", "past the nose's centre" },
        { "tongue.neck_thickness", "blends.head_fillet", "where the neck" },
    };

    [Theory]
    [MemberData(nameof(Impossible))]
    public void Build_ImpossibleSizes_NamesTheFieldsAtOdds(string first, string second, string words)
    {
        Checked<Lever> result = LeverPart.Build(Spoilt(words));
        Assert.False(result.Ok);
        Diagnostic finding = Assert.Single(result.Diagnostics, d => d.Message.Contains(words, StringComparison.Ordinal));
        Assert.Contains("'" + first + "'", finding.Message, StringComparison.Ordinal);
        Assert.Contains("'" + second + "'", finding.Message, StringComparison.Ordinal);
        Assert.NotEmpty(finding.Suggestion);
    }

    [Theory]
    [MemberData(nameof(DemoLevers.Names), MemberType = typeof(DemoLevers))]
    public void Build_DemoLever_HasNoFindings(string name) => Assert.Empty(LeverPart.Build(DemoLevers.Named(name)).Diagnostics);

    [Fact]
    public void Build_GearTooth_NoseRadiusIsHalfThicknessTimesCosine()
    {
        Lever lever = LeverPart.Build(DemoLevers.Early()).Value!;
        // 2.05 · cos 8° worked by hand.
        Assert.Equal(2.030049, lever.Side.NoseRadius, 1e-6);
        Assert.Equal(2.030049, lever.Side.Nose!.Radius, 1e-6);
    }

    [Fact]
    public void Build_HeadFillet_StandsWhereWorkedByHand()
    {
        Lever lever = LeverPart.Build(DemoLevers.Early()).Value!;
        // Centre at n = 2.1 + 5, distance 4.5 + 5 from the pivot: z = −√(9.5² − 7.1²) = −√39.84.
        ArcEdge fillet = lever.Side.HeadFilletArmRight;
        Assert.Equal(7.1, fillet.Centre.X, 1e-9);
        Assert.Equal(-6.311893, fillet.Centre.Y, 1e-6);
        Assert.Equal(5, fillet.Radius, 1e-9);
    }

    [Fact]
    public void Build_CurvedArms_SagittaAndTangentHold()
    {
        Lever lever = LeverPart.Build(DemoLevers.Rare()).Value!;
        ArcEdge midline = Assert.IsType<ArcEdge>(lever.Side.ArmMidline);
        Point2D chordMiddle = Point2D.Lerp(midline.Start, midline.End, 0.5);
        Assert.Equal(0.9, midline.PointAt(0.5).DistanceTo(chordMiddle), 1e-9);
        Assert.Equal(0, midline.TangentAt(1).X, 1e-9);
        Assert.Equal(lever.Side.PadTop, midline.End.Y, 1e-9);
        Assert.True(lever.Side.PadCentre.X < 0);
    }

    [Fact]
    public void Build_FullRoundCrotch_LeavesNoFlat()
    {
        Lever lever = LeverPart.Build(DemoLevers.Early().With(CrotchRadius, 7)).Value!;
        Assert.Null(lever.Fork.GapTopFlat);
        Assert.Equal(-6, lever.Fork.GapTop, 1e-12);
    }

    [Fact]
    public void Build_TaperedHole_HasItsSizesAtTheFaces()
    {
        PivotHole hole = LeverPart.Build(DemoLevers.Early()).Value!.Hole;
        // 3.423 ± 4.75/48 by hand.
        Assert.Equal(3.3240417, hole.AtLeft.Millimetres, 1e-7);
        Assert.Equal(3.5219583, hole.AtRight.Millimetres, 1e-7);
        Assert.Equal(3.3240417, LeverPart.Build(DemoLevers.Early().With(HoleLargeEnd, Left)).Value!.Hole.AtRight.Millimetres, 1e-7);
    }

    [Fact]
    public void Build_ThinWall_IsAWarning()
    {
        Checked<Lever> result = LeverPart.Build(DemoLevers.Early().With(HoleDiameter, 5).With(HeadDepth, 7.2).With(TongueThickness, 3.2).With(FlankTaper, 4).With(ArmThickness, 3.6));
        Assert.True(result.Ok);
        Assert.Contains(result.Diagnostics, d => d.Severity == Severity.Warning && d.Message.Contains("round the hole", StringComparison.Ordinal));
    }

    [Fact]
    public void Build_TakesFarLessThanAMillisecond()
    {
        ValueBag values = DemoLevers.Rare();
        for (int i = 0; i < 200; i++)
            LeverPart.Build(values);
        long start = System.Diagnostics.Stopwatch.GetTimestamp();
        double best = double.PositiveInfinity;
        for (int i = 0; i < 50; i++)
        {
            start = System.Diagnostics.Stopwatch.GetTimestamp();
            LeverPart.Build(values);
            best = Math.Min(best, System.Diagnostics.Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        }

        Assert.True(best < 1, FormattableString.Invariant($"{best} ms"));
    }

    private static ValueBag Spoilt(string words) => words switch
    {
        "two corners" => DemoLevers.Early().With(HeadForm, Block).With(HeadCornerRadius, 4.8),
        "as thick as the head" => DemoLevers.Early().With(HeadDepth, 4.2),
        "cuts into the round head" => DemoLevers.Early().With(HeadDepth, 12).With(HeadHeight, 8),
        "together they need" => DemoLevers.Early().With(ArmLength, 10).With(PadLength, 8),
        "tolerance on the bosses' height" => DemoLevers.Rare().With(BossHeight, 0.5, 0.1),
        "tolerance on the sagitta" => DemoLevers.Rare().With(ArmSagitta, 0.9, 0.1),
        "sixth" => DemoLevers.Rare().With(ArmLength, 14).With(ArmSagitta, 2.5),
        // One head fillet below the head, 4.5 + 13.5, lies below the pads' top, 21 − 6.5 / 2.
        "cannot be measured" => DemoLevers.Early().With(ArmForm, Tapered).With(HeadFillet, 13.5),
        "thicker than the arms" => DemoLevers.Early().With(PadThickness, 4.5),
        "cannot span" => DemoLevers.Early().With(CrownRadius, 3),
        "whole upper half" => DemoLevers.Early().With(Fillet, 3.3),
        "no full round" => DemoLevers.Early().With(PadEnd, Round).With(CrownRadius, 3.4),
        "reach its middle" => DemoLevers.Early().With(PadLength, 3.6).With(PadEndCorner, 2),
        "wider than the fork gap" => DemoLevers.Early().With(CrotchRadius, 7.5),
        "no wider than the head" => DemoLevers.Early().With(ForkGap, 6).With(CrotchRadius, 3).With(ArmWidth, 2).With(HeadWidth, 10),
        "ends level" => DemoLevers.Early().With(ShoulderForm, Concave).With(ShoulderRadius, 7),
        "not clearly lower" => DemoLevers.Early().With(ShoulderStart, 6).With(ShoulderEnd, 5),
        "wider than the head" => DemoLevers.Early().With(TongueWidth, 10),
        "no edge round" => DemoLevers.Early().Without(FootFillet).With(EdgeRound, 0).With(Fillet, 2),
        "no fillet to run into" => DemoLevers.Early().Without(FootFillet).With(EdgeRound, 1.6).With(Fillet, 0),
        "no corner for the foot fillet" => DemoLevers.Early().With(TongueWidth, 9.5),
        "grows to" => DemoLevers.Early().With(FlankTaper, 15),
        "as thick as the bulb" => DemoLevers.Rare().With(NeckThickness, 4.3),
        "no flank" => DemoLevers.Early().With(TongueForm, Cam).With(CamRadius, 6).With(TongueThickness, 6.5),
        "two corners of" => DemoLevers.Early().With(TongueForm, LeverFields.Parallel).With(NoseRadius, 2.2),
        // The fillet ends √(9.5² − 7.05²) = 6.37 mm from the pivot, and the nose's corner begins at 6.2 + 4.1 / 2 − 0.5 = 7.75 mm.
        "past the nose's centre" => DemoLevers.Early().With(TongueForm, LeverFields.Parallel).With(FlankTaper, 0).With(NoseRadius, 0.5).With(TongueLength, 6.2),
        "where the neck" => DemoLevers.Rare().With(TongueLength, 8),
        "overhangs" => DemoLevers.Early().With(BossSides, Both).With(BossHeight, 0.5).With(BossDiameter, 9.4),
        "runs over" => DemoLevers.Early().With(BossSides, Both).With(BossHeight, 0.5).With(BossDiameter, 9).With(EdgeRound, 0.8),
        "round the hole" => DemoLevers.Early().With(HeadDepth, 5.5).With(ArmThickness, 3).With(PadThickness, 2.8).With(HoleDiameter, 5).With(TongueThickness, 2.5).With(FlankTaper, 2),
        "long" => DemoLevers.Early().With(MarkPlace, ArmBack).With(MarkText, "T&C T&C").With(MarkLetterHeight, 3),
        "run into each other" => DemoLevers.Early().With(Sweep, 60).With(HeadFillet, 12),
        _ => DemoLevers.Early().With(TongueLength, 6).With(TongueThickness, 3),
    };
}
