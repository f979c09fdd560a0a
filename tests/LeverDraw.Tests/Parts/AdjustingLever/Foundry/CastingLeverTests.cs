using LeverDraw.Diagnostics;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Profiles;
using LeverDraw.Tests.Support;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Tests.Parts.AdjustingLever.Foundry;

public sealed class CastingLeverTests
{
    public static TheoryData<string, string, string> ShippedInEveryWay
    {
        get
        {
            TheoryData<string, string, string> all = [];
            foreach (string name in ShippedProfiles.Names)
            {
                foreach (FoundryMetal metal in FoundryMetal.All)
                {
                    foreach (MouldingProcess process in MouldingProcess.All)
                        all.Add(name, metal.Word, process.Word);
                }
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(ShippedInEveryWay))]
    public void Of_ShippedLever_CastsAndCleansUpInEveryMetalAndProcess(string name, string metal, string process)
    {
        var values = new WithWord(new WithWord(ShippedProfiles.Read("levers/" + name + ".toml").Value!.Values, CastingFields.Metal, metal), CastingFields.Process, process);
        Lever finished = LeverPart.Build(values).Value!;
        Checked<CastingLever> casting = FoundryPlanning.Of(finished, values, "", "").Then(plan => CastingLever.Of(finished, values, plan));
        Assert.True(casting.Ok, string.Join("\n", casting.Diagnostics.Select(d => d.Message)));
        Assert.Empty(CleanUp.Findings(PatternLever.Of(casting.Value!), values));
        Assert.Empty(ContourSelfCheck.Find(casting.Value!.Shape.SideProfile));
        Assert.Empty(ContourSelfCheck.Find(casting.Value.Shape.ForkProfile));
    }

    [Fact]
    public void Of_HalfAMillimetre_SizesByHand()
    {
        Lever shape = FoundryOf.WithStock(DemoLevers.Early(), 0.5, 0.5, 0.5).Shape;
        Assert.Equal(10.5, shape.Sizes[LeverFields.HeadWidth].Millimetres, 1e-9);
        Assert.Equal(4.3, shape.Sizes[LeverFields.PadThickness].Millimetres, 1e-9);
        Assert.Equal(6.5, shape.Sizes[LeverFields.CrownRadius].Millimetres, 1e-9);
        // Across the mid-line a flank sloping 8° moves by 0.5 / cos 8° = 0.504914 on each side.
        Assert.Equal(4.1 + (2 * 0.5049138), shape.Sizes[LeverFields.TongueThickness].Millimetres, 1e-6);
        // The nose stays about its centre: (4.1 / 2) cos 8° + 0.5.
        Assert.Equal(2.5300497, shape.Side.NoseRadius, 1e-6);
        Assert.Equal(4.2, shape.Sizes[LeverFields.ArmThickness].Millimetres);
        Assert.Equal(LeverFields.Solid, shape.Hole.Supply);
    }

    [Fact]
    public void Of_NoStock_IsTheFinishedOutline()
    {
        CastingLever casting = FoundryOf.WithStock(DemoLevers.Middle(), 0, 0, 0);
        Same(casting.Finished.SideProfile, casting.Shape.SideProfile);
        Same(casting.Finished.ForkProfile, casting.Shape.ForkProfile);

        static void Same(Contour a, Contour b)
        {
            Assert.Equal(a.Edges.Length, b.Edges.Length);
            for (int i = 0; i < a.Edges.Length; i++)
                Assert.Equal(a.Edges[i], b.Edges[i]);
        }
    }

    [Fact]
    public void Of_Bosses_TakeTheStockAndTheHeadStays()
    {
        ValueBag values = DemoLevers.Early().With(LeverFields.BossSides, LeverFields.Both).With(LeverFields.BossDiameter, 8).With(LeverFields.BossHeight, 0.5);
        Lever shape = FoundryOf.WithStock(values, 0.4, 0.4, 0.4).Shape;
        Assert.Equal(0.9, shape.Boss!.Height.Millimetres, 1e-9);
        Assert.Equal(9.5 / 2, shape.Fork.HeadSide.Start.X, 1e-9);
    }

    [Fact]
    public void Flags_ComeFromTheState()
    {
        PatternLever pattern = FoundryOf.Pattern(DemoLevers.Early().With(CastingFields.Contraction, "1/8 in/ft"), "Grey iron");
        Assert.Equal("CONTRACTION NOT INCLUDED - USE RULE 1 in 96", pattern.Casting.Flag.Text);
        Assert.Equal("CONTRACTION INCLUDED 1 in 96 - USE PLAIN RULE", pattern.Flag.Text);
        Assert.Equal("TWO CONTRACTIONS INCLUDED 1 in 96 AND 1 in 76.8 - USE PLAIN RULE", MasterPatternLever.Of(pattern, FoundryMetal.Aluminium.BookRate).Flag.Text);
    }

    [Fact]
    public void Pattern_SizesOfTheTradeNotes()
    {
        // Trade notes 2.2 at 1.5625 % (3/16 in/ft): arm 3.2 grows by 0.05, head 9 by 0.14, arm length 21 by 0.33.
        PatternLever pattern = FoundryOf.Pattern(DemoLevers.Early().With(CastingFields.AllowanceGrade, CastingFields.None).With(CastingFields.Contraction, "3/16 in/ft"));
        double Grown(string name) => CleanUp.Table(pattern).Single(r => r.Size.Name == name) is var row ? (row.Pattern - row.Casting).Millimetres : 0;
        Assert.Equal(0.14, Grown("head depth"), 0.005);
        Assert.Equal(0.33, Grown("arms length"), 0.005);
    }

    [Fact]
    public void Original_AsPattern_ComesOutAsTheTradeNotesSay()
    {
        // Trade notes 2.4, brass: 22 → 21.66, 9 → 8.86 mm.
        PatternLever pattern = FoundryOf.Pattern(DemoLevers.Early().With(CastingFields.Contraction, "3/16 in/ft"));
        CopiedSize Of(double original) => OriginalAsPattern.Table(pattern, _ => Length.FromMillimetres(original)).Single(c => c.Size.Name == "head height");
        Assert.Equal(21.66, Of(22).ComesOut.Millimetres, 0.005);
        Assert.Equal(8.86, Of(9).ComesOut.Millimetres, 0.005);
        CopiedSize pads = OriginalAsPattern.Table(pattern).Single(c => c.Size.Name == "pad thickness");
        // Padded so, it is the pattern.
        Assert.Equal(CleanUp.Table(pattern).Single(r => r.Size.Name == "pad thickness").Pattern.Millimetres, (pads.Original + (2 * pads.Pad)).Millimetres, 1e-9);
    }

    [Fact]
    public void Findings_TooLittleStock_NamesTheFaceAndWhatIsMissing()
    {
        ValueBag values = FoundryOf.Stocked(DemoLevers.Early(), 1.5, 0.2, 1.2).With(CastingFields.Contraction, "0 %");
        Diagnostic found = Assert.Single(CleanUp.Findings(FoundryOf.Pattern(values), values));
        Assert.Equal(CastingFields.PadAllowance.Name, found.Field);
        Assert.Equal(Severity.Error, found.Severity);
        // Up to 10 mm ±1.0: half of it on each face, less 0.2.
        Assert.Contains("pad thickness: in the worst case 0.3 mm of stock is missing", found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_CoredHoleInSand_IsCastSolidAndSaid()
    {
        Checked<CastingLever> casting = FoundryOf.TryCast(DemoLevers.Early().With(CastingFields.Hole, CastingFields.Cored));
        Assert.Equal(LeverFields.Solid, casting.Value!.Shape.Hole.Supply);
        Assert.Contains(casting.Diagnostics, d => d.Code == DiagnosticCatalogue.HoleNotCastable.Code);
    }

    [Theory]
    [InlineData("Silicon brass", "Turned from bar", "LD410")]
    [InlineData("Oak", "Sand cast", "LD410")]
    public void Plan_UnknownWords_AreAFinding(string material, string process, string code) =>
        Assert.Equal(code, Assert.Single(FoundryOf.Plan(DemoLevers.Early(), material, process).Diagnostics).Code);

    [Fact]
    public void Plan_FaultyFields_AreTold()
    {
        Assert.Equal("LD411", Assert.Single(FoundryOf.Plan(DemoLevers.Early().With(CastingFields.Contraction, "1.6")).Diagnostics).Code);
        Assert.Equal("LD412", Assert.Single(FoundryOf.Plan(DemoLevers.Early().With(CastingFields.TrialPatternZ, 48.8)).Diagnostics).Code);
        Assert.Equal("LD413", Assert.Single(FoundryOf.Plan(DemoLevers.Early().With(CastingFields.TrialPatternZ, 48).With(CastingFields.TrialCastingZ, 48.8)).Diagnostics).Code);
        Assert.Contains(FoundryOf.Plan(DemoLevers.Early().With(CastingFields.ToleranceGrade, "14")).Diagnostics, d => d.Code == "LD415");
    }

    /// <summary>The neck is not filed: half the larger bulb behind its centre the casting's is thicker than the finished one's half the smaller bulb behind, 3.2 + 2·0.5·tan 5° = 3.287 on the rare lever, and that is what its flanks measure there.</summary>
    [Fact]
    public void Neck_OfACastBulb_IsWhatTheFlanksMeasureBehindIt()
    {
        IFieldValues values = ShippedProfiles.Read("levers/rare.toml").Value!.Values;
        Lever shape = FoundryOf.Cast(values).Shape;
        double half = shape.Sizes[LeverFields.TongueThickness].Millimetres / 2;
        Assert.Equal(2.6, half, 9);
        Assert.Equal(3.2 + (2 * 0.5 * Math.Tan(5 * Math.PI / 180)), shape.Sizes[LeverFields.NeckThickness].Millimetres, 9);
        Vector2D along = (shape.Side.NoseCentre - Point2D.Origin).Unit();
        Point2D lower = At(shape.Side.FlankLower), upper = At(shape.Side.FlankUpper);
        Assert.Equal(shape.Sizes[LeverFields.NeckThickness].Millimetres, lower.DistanceTo(upper), 9);

        Point2D At(Edge flank)
        {
            double from = along.Dot(shape.Side.NoseCentre - flank.Start), to = along.Dot(shape.Side.NoseCentre - flank.End);
            return Point2D.Lerp(flank.Start, flank.End, (from - half) / (from - to));
        }
    }

    /// <summary>On a curved arm the two sides of a pad with stock were made in two ways, a step on one and none on the other, which no size or note could explain.</summary>
    [Fact]
    public void Pad_WithStockOnACurvedArm_HasBothSidesOfOneKind()
    {
        Lever shape = FoundryOf.Cast(ShippedProfiles.Read("levers/rare.toml").Value!.Values).Shape;
        ArcEdge right = shape.Side.StepFilletRight!, left = shape.Side.StepFilletLeft!;
        Assert.Equal(right.Radius, left.Radius, 9);
        Assert.Equal(right.Length, left.Length, 0.05);
        Assert.Equal(right.Centre.Y, left.Centre.Y, 0.05);
        Assert.Equal(right.Centre.X - shape.Side.PadCentre.X, shape.Side.PadCentre.X - left.Centre.X, 0.05);
    }
}
