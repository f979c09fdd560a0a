using LeverDraw.Diagnostics;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Parts.AdjustingLever.Foundry;

public sealed class MouldTests
{
    [Fact]
    public void Candidates_BentLever_OnlyAJointThatFollowsItDraws()
    {
        Lever shape = FoundryOf.Cast(DemoLevers.Early()).Shape;
        var by = MouldParting.Candidates(shape).ToDictionary(c => c.Name, StringComparer.Ordinal);
        // The swept tongue stands before the head's middle: sand under it locks a flat joint.
        Assert.False(by[CastingFields.HeadMiddle].Draws);
        Assert.False(by[CastingFields.ArmBack].Draws);
        Assert.True(by[CastingFields.AlongMiddle].Draws);
        Assert.True(by[CastingFields.AlongBack].Draws);
        Assert.Equal(["the pads", "the tongue"], by[CastingFields.AlongMiddle].SplitFits.ToArray());
        Assert.Empty(by[CastingFields.AlongBack].SplitFits);
        // Drawn along the pin the fork's gap, 14 mm and at the rounded arm ends up to 1.2 more, is sand between metal.
        Assert.InRange(by[MouldParting.PinMiddle].Locked.Millimetres, 14, 14 + (2 * 0.6));
        Assert.Equal(CastingFields.AlongBack, MouldParting.Best([.. by.Values]).Name);
    }

    [Fact]
    public void Candidates_StraightTongue_AFlatJointDraws()
    {
        Lever shape = FoundryOf.WithStock(DemoLevers.Early().With(LeverFields.Sweep, 0), 0, 0, 0).Shape;
        PartingCandidate flat = MouldParting.Candidates(shape).First(c => c.Name == CastingFields.HeadMiddle);
        Assert.True(flat.Draws);
        Assert.Equal(4.5, flat.DepthAhead.Millimetres, 1e-3);
        Assert.Equal(4.5, flat.DepthBehind.Millimetres, 1e-3);
    }

    [Theory]
    [InlineData(CastingFields.Plus)]
    [InlineData(CastingFields.Minus)]
    [InlineData(CastingFields.Middle)]
    public void Draft_TwoDegreesOverFourAndAHalf_ByHand(string sense)
    {
        ValueBag values = DemoLevers.Early().With(LeverFields.Sweep, 0).With(LeverFields.Draft, 2).With(CastingFields.DraftSense, sense)
            .With(CastingFields.Parting, CastingFields.HeadMiddle).With(CastingFields.Contraction, "0 %").With(CastingFields.AllowanceGrade, CastingFields.None);
        PatternLever pattern = FoundryOf.Pattern(values);
        PatternDraft draft = PatternDraft.Of(pattern, MouldParting.Of(pattern.Casting));
        // Head 9 deep, arms 4.2: half of it on either side of the joint. 4.5 tan 2° = 0.157143, 2.1 tan 2° = 0.073334.
        foreach ((DraftedPart part, double whole) in ((DraftedPart, double)[])[(DraftedPart.Head, 0.157143), (DraftedPart.Arms, 0.073334)])
        {
            DraftedWall[] walls = [.. draft.Of(part)];
            Assert.Equal([1, -1], walls.Select(w => w.Toward));
            foreach (DraftedWall wall in walls)
            {
                double taken = sense switch { CastingFields.Plus => 0, CastingFields.Minus => whole, _ => whole / 2 };
                Assert.Equal(whole, (wall.Added + wall.Taken).Millimetres, 1e-4);
                Assert.Equal(taken, wall.Taken.Millimetres, 1e-4);
                // Held at the wall's own far edge, at the joint, or half way.
                Assert.Equal(0, wall.OutwardAt(sense switch { CastingFields.Plus => wall.Depth, CastingFields.Minus => LeverDraw.Units.Length.Zero, _ => wall.Depth / 2 }).Millimetres, 1e-12);
            }
        }
    }

    [Theory]
    // Reference 05b, hand-moulded sand: 4 to 6.3 mm 6.5°; 05c wood to 1 in 3°, metal 1.5°; 1/16 in per foot 0.298°; 0.03 in over 5 mm 8.7° (trade notes).
    [InlineData(CastingFields.ByHeight, 6.5, 0.01)]
    [InlineData(CastingFields.WoodPattern, 3, 1e-9)]
    [InlineData(CastingFields.MetalPattern, 1.5, 1e-9)]
    [InlineData(CastingFields.FineSmall, 0.298, 0.0005)]
    [InlineData(CastingFields.LeastOffset, 8.7, 0.05)]
    [InlineData(CastingFields.Stated, 2, 1e-9)]
    public void AngleFor_EachHouseRule_GivesItsOwn(string rule, double degrees, double within)
    {
        FoundryPlan plan = FoundryOf.Plan(DemoLevers.Early().With(CastingFields.DraftRule, rule)).Value!;
        Assert.Equal(degrees, PatternDraft.AngleFor(plan, LeverDraw.Units.Length.FromMillimetres(5)).Degrees, within);
    }

    [Fact]
    public void Draft_JointAlongTheBack_EachWallIsAsDeepAsItsMetal()
    {
        PatternLever pattern = FoundryOf.Pattern(DemoLevers.Early().With(CastingFields.Contraction, "0 %").With(CastingFields.AllowanceGrade, CastingFields.None));
        PatternDraft draft = PatternDraft.Of(pattern, MouldParting.Of(pattern.Casting));
        // Head 9, arms 4.2 deep; the tongue's 4.1 lies 40° to the draw: 4.1 / cos 40° = 5.35, less what the round nose takes off above its centre.
        // The fillet under the tongue adds a little to the head's 9.
        Assert.InRange(Assert.Single(draft.Of(DraftedPart.Head)).Depth.Millimetres, 9, 9.1);
        Assert.Equal(4.2, Assert.Single(draft.Of(DraftedPart.Arms)).Depth.Millimetres, 1e-6);
        Assert.InRange(Assert.Single(draft.Of(DraftedPart.Tongue)).Depth.Millimetres, 4.1, 5.36);
        // 2 × 4.2 tan 2°: the gap's true size holds at the arms' far faces and is 0.293 mm less at the joint.
        Assert.Equal(0.2933, 2 * draft.AddedTo(DraftedPart.Arms).Millimetres, 1e-4);
    }

    [Fact]
    public void Draft_WithBosses_HeadIsDrawnFromTheirMiddle()
    {
        ValueBag values = DemoLevers.Early().With(LeverFields.BossSides, LeverFields.Both).With(LeverFields.BossDiameter, 8).With(LeverFields.BossHeight, 0.5)
            .With(CastingFields.Contraction, "0 %").With(CastingFields.AllowanceGrade, CastingFields.None);
        PatternLever pattern = FoundryOf.Pattern(values);
        PartingCandidate parting = MouldParting.Of(pattern.Casting);
        DraftedWall[] head = [.. PatternDraft.Of(pattern, parting).Of(DraftedPart.Head)];
        Assert.Equal(2, head.Length);
        Assert.All(head, w => Assert.Equal(0, w.Joint.Millimetres));
        Assert.All(head, w => Assert.InRange(w.Depth.Millimetres, 4.5, 4.6));
        // The bosses' own walls are as deep as their radius: 4 tan 2° = 0.139683.
        DraftedWall[] bosses = [.. PatternDraft.Of(pattern, parting).Of(DraftedPart.Bosses)];
        Assert.Equal([1, -1], bosses.Select(w => w.Toward));
        Assert.All(bosses, w => Assert.Equal((4, 0.139683), (w.Depth.Millimetres, Math.Round((w.Added + w.Taken).Millimetres, 6))));
        Assert.Contains("the bosses' faces", parting.SplitFits);
        Assert.Contains("LD425", Codes(values));
    }

    [Fact]
    public void Draft_OfAnInvestmentCasting_IsNone()
    {
        PatternLever pattern = FoundryOf.Pattern(DemoLevers.Early(), process: "Investment cast");
        Assert.Empty(PatternDraft.Of(pattern, MouldParting.Of(pattern.Casting)).Walls);
    }

    [Fact]
    public void Stock_MinusDraft_ComesOnTopOfTheUsualStock()
    {
        double plus = FoundryOf.Cast(DemoLevers.Early()).Plan.Stock.Head.Millimetres;
        CastingLever minus = FoundryOf.Cast(DemoLevers.Early().With(CastingFields.DraftSense, CastingFields.Minus));
        // 9 tan 2° = 0.314, up to the next 0.05.
        Assert.Equal(plus + 0.35, minus.Plan.Stock.Head.Millimetres, 1e-9);
        StateSizes head = CleanUp.Table(PatternLever.Of(minus)).Single(r => r.Size.Name == "head width");
        Assert.True(head.LeastStock >= minus.Plan.Required);
    }

    [Fact]
    public void Findings_HeavyStockInIron_TellsWhatAFoundrymanWould()
    {
        ValueBag values = DemoLevers.Smallest();
        string[] codes = [.. Castability.Of(FoundryOf.Cast(values, "Grey iron", "Green sand"), values).Select(d => d.Code).Distinct().Order(StringComparer.Ordinal)];
        // Thin arms, abrupt step, hot spot, small fillet, stock beside section, brittle metal.
        Assert.Equal(["LD418", "LD419", "LD420", "LD421", "LD427", "LD428"], codes);
    }

    [Fact]
    public void Findings_HotSpot_RatioOfTheTradeNotes()
    {
        // Trade notes 7.3 give head by arm 1.33 for E from a rough block; as a cylinder 9 × 9.5 against a bar 4.2 × 5.5: (4.5·9.5 / 2·14) / 1.190722 = 1.2823.
        CastingLever casting = FoundryOf.WithStock(DemoLevers.Early(), 0, 0, 0);
        Diagnostic found = SectionFindings.Of(casting, DemoLevers.Early()).Single(d => d.Code == "LD420");
        Assert.Contains("1.28 times", found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_MarksDraftAndJoint_EachIsTold()
    {
        Assert.Contains("LD426", Codes(DemoLevers.Early().With(LeverFields.MarkPlace, LeverFields.ArmBack).With(LeverFields.MarkText, "T").With(LeverFields.MarkHeight, 0.2)));
        Assert.Contains("LD426", Codes(DemoLevers.Early().With(LeverFields.MarkPlace, LeverFields.HeadFace).With(LeverFields.MarkText, "S").With(LeverFields.MarkLetterHeight, 1.2)));
        Assert.Contains("LD422", Codes(DemoLevers.Early().With(LeverFields.Draft, 0)));
        Assert.Contains("LD423", Codes(DemoLevers.Early().With(CastingFields.DraftSense, CastingFields.Minus)));
        Assert.Contains("LD424", Codes(DemoLevers.Early().With(CastingFields.Parting, CastingFields.HeadMiddle)));
        Assert.Contains("LD425", Codes(DemoLevers.Early().With(CastingFields.Parting, CastingFields.AlongMiddle)));
        string[] usual = Codes(DemoLevers.Early());
        Assert.Empty(usual.Intersect(["LD422", "LD423", "LD424", "LD425", "LD426"]));
    }

    private static string[] Codes(ValueBag values) => [.. Castability.Of(FoundryOf.Cast(values), values).Select(d => d.Code)];
}
