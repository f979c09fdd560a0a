using System.Globalization;
using System.Text.RegularExpressions;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Parts.AdjustingLever.FoundrySheets;
using LeverDraw.Profiles;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Parts.AdjustingLever.FoundrySheets;

/// <summary>What the foundry's sheets say, beside what the trade asks of them.</summary>
public sealed partial class FoundryContentTests
{
    public static TheoryData<string> Sheets => [.. ShippedProfiles.Names.SelectMany(n => new[] { "levers/" + n + ":casting", "levers/" + n + ":pattern" })];

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Text_OfEverySize_IsItsValueToAHundredth(string name)
    {
        int seen = 0;
        foreach (PlotDimension dimension in SheetMaker.Draw(name, SheetMaker.Options("A3")).Dimensions.Where(d => d.Value != 0 && d.Name != LeverFields.Draft.Name))
        {
            if (dimension.Text.EndsWith('°'))
                continue;
            Match number = Number().Match(dimension.Text);
            Assert.True(number.Success, dimension.Name + " says " + dimension.Text);
            Assert.Equal(dimension.Value, double.Parse(number.Groups[1].Value, CultureInfo.InvariantCulture), 0.00501);
            seen++;
        }

        Assert.True(seen > 20);
    }

    /// <summary>As-cast sizes carry a tolerance, the finished part's fits and tolerances stand nowhere.</summary>
    [Fact]
    public void Casting_Sizes_ShowTheCastingToleranceAndNoFit()
    {
        PlotSheet sheet = SheetMaker.Draw("levers/middle:casting", SheetMaker.Options("A3"));
        string Says(string name) => sheet.Dimensions.First(d => d.Name == name).Text;
        // DCTG 7 of ISO 8062-3:2007, table 2 (trade notes 3.6): to 10 mm 0.74, to 16 0.78, to 25 0.82, halved; a wall has DCTG 8: 1.0.
        Assert.Equal("10.5 ±0.39", Says("head.width"));
        Assert.Equal("2× 4.05 ±0.37", Says("pads.thickness"));
        Assert.Equal("21 ±0.41", Says("arms.length"));
        Assert.Equal("3.6 ±0.5", Says("arms.thickness"));
        Assert.DoesNotContain(sheet.Dimensions, d => d.Text.Contains('+', StringComparison.Ordinal) || d.Text.Contains('H', StringComparison.Ordinal));
    }

    /// <summary>Finished 10.5 and 0.5 stock a side; plus draft of 2° from each boss's own edge, 4 mm from the joint: 11.5 + 8 tan 2° = 11.779.</summary>
    [Theory]
    [InlineData("levers/early")]
    [InlineData("levers/rare")]
    public void Casting_WithBosses_IsWidestAtTheJointByTheBossesOwnDepth(string name)
    {
        PlotSheet sheet = SheetMaker.Draw(name + ":casting", SheetMaker.Options("A3"));
        Assert.Equal("11.5 ±0.39", sheet.Dimensions.First(d => d.Name == "boss.over_both").Text);
        Assert.Equal("(11.78)", sheet.Dimensions.First(d => d.Name == "head.width_at_joint").Text);
    }

    [Fact]
    public void Pattern_Sizes_AreTheCastingsLongerByTheRule()
    {
        PlotSheet casting = SheetMaker.Draw("levers/middle:casting", SheetMaker.Options("A3")), pattern = SheetMaker.Draw("levers/middle:pattern", SheetMaker.Options("A3"));
        foreach (PlotDimension size in casting.Dimensions.Where(d => d.Kind is PlotDimensionKind.Linear or PlotDimensionKind.Radius or PlotDimensionKind.Diameter && d.Name != "head.width_at_joint"))
        {
            // 3/16 in per foot.
            PlotDimension twin = pattern.Dimensions.Single(d => d.Id == size.Id);
            Assert.Equal(size.Value * (1 + (3.0 / 16 / 12)), twin.Value, 1e-9);
        }

        Assert.DoesNotContain(pattern.Dimensions, d => d.Text.Contains('±', StringComparison.Ordinal));
    }

    /// <summary>Trade notes 2.1: contraction once, in words nobody can miss, and each state its own document.</summary>
    [Theory]
    [InlineData("levers/late:casting", "CONTRACTION NOT INCLUDED - USE RULE 1 in 64", "CASTING DRAWING, AS CAST", "TC-L-03-C")]
    [InlineData("levers/late:pattern", "CONTRACTION INCLUDED 1 in 64 - USE PLAIN RULE", "PATTERN DRAWING", "TC-L-03-P")]
    public void Title_OfEachState_SaysItsContraction(string name, string flag, string document, string number)
    {
        SheetContent content = SheetMaker.Content(name, new SheetOptions());
        Assert.Equal((flag, document, number, "40 + 3 to keep"), (content.Title.Flag, content.Title.DocumentType, content.Title.DrawingNumber, content.Title.Quantity));
        string[] lettered = [.. SheetMaker.Draw(name, SheetMaker.Options("A3")).Items.OfType<PlotText>().Select(t => t.Text)];
        Assert.Contains(flag, lettered);
        Assert.Contains("CONTRACTION", lettered);
    }

    [Fact]
    public void Views_InSand_ShowJointDraftStockGateAndFinishedFaces()
    {
        SheetContent content = SheetMaker.Content("levers/middle:casting", new SheetOptions());
        ViewSource Of(string id) => content.Views.Single(v => v.Id == id);
        foreach (string id in (string[])["side", "section"])
        {
            MouldJoint named = Assert.Single(Of(id).Annotations.OfType<MouldJoint>(), j => j.Ahead.Length > 0);
            // The deeper half is the drag; along the back all metal lies ahead of the joint.
            Assert.Equal(("DRAG", "COPE", "P.L."), (named.Ahead, named.Behind, named.Label.ToString()));
        }

        Assert.Contains(Of("side").Annotations, a => a.Label.ToString() == "GATE");
        Assert.Contains(Of("section").Annotations, a => a.Label.ToString() == "DRAFT 2° PLUS");
        foreach ((string view, string field) in ((string, string)[])[("section", "casting.allowance_head"), ("pad", "casting.allowance_pads"), ("nose", "casting.allowance_tongue")])
            Assert.Equal("M 0.5", Assert.Single(Of(view).Annotations, a => a.Name == field).Label.ToString());
        Assert.All((string[])["fork", "side", "section", "nose", "pad"], id => Assert.Contains(Of(id).Edges, e => e.Role == LineRole.Phantom));
    }

    [Fact]
    public void Section_WithDraft_HasItsWallsAtTheirAngle()
    {
        CastingLever casting = Cast("middle");
        ViewSource section = SheetMaker.Content("levers/middle:casting", new SheetOptions()).Views.Single(v => v.Id == "section");
        LineEdge wall = section.Edges.Where(e => e.Role == LineRole.Section).Select(e => e.Edge).OfType<LineEdge>().First(e => e.From.X > 4 && Math.Abs(e.To.Y - e.From.Y) > 5);
        Assert.Equal(2, Math.Abs(Math.Atan((wall.To.X - wall.From.X) / (wall.To.Y - wall.From.Y))) * 180 / Math.PI, 1e-6);
        // Plus: the size holds at the far edge.
        Assert.Equal(casting.Shape.Sizes[LeverFields.HeadWidth].Millimetres / 2, Math.Min(wall.From.X, wall.To.X), 1e-6);
    }

    [Fact]
    public void FinishedFaces_LieInsideByTheirStock()
    {
        CastingLever casting = Cast("middle");
        ViewEdge[] phantom = [.. FinishedFaces.Of(casting.Finished.SideProfile.Edges, casting.Shape.SideProfile)];
        Assert.NotEmpty(phantom);
        foreach (Edge edge in phantom.Select(p => p.Edge))
        {
            for (int i = 0; i <= 8; i++)
            {
                double off = ContourQueries.NearestPoint(casting.Shape.SideProfile, edge.PointAt(i / 8.0)).Distance;
                Assert.InRange(off, 0.0199, 0.5 + 1e-6);
                Assert.Equal(0, ContourQueries.NearestPoint(casting.Finished.SideProfile, edge.PointAt(i / 8.0)).Distance, 1e-9);
            }
        }
    }

    [Fact]
    public void Notes_Investment_SayThatTheWaxIsNotIn()
    {
        Profile profile = ShippedFoundrySheetsTests.Chosen("middle", "brass", "investment");
        SheetContent content = SheetMaker.Content(profile, new SheetOptions(), "pattern");
        Assert.Contains(content.Notes, n => n.Contains("CONTRACTION OF THE WAX ITSELF IS NOT IN", StringComparison.Ordinal));
        Assert.DoesNotContain(content.Views.SelectMany(v => v.Annotations), a => a is MouldJoint);
    }

    [Theory]
    [InlineData("casting", "SAFETY: DAMP UNDER METAL")]
    [InlineData("casting", "ZINC FUME AND LEAD POISON")]
    [InlineData("casting", "SILICA DUST")]
    [InlineData("casting", "LOCAL CODES")]
    [InlineData("pattern", "SAFETY: WOOD, RESIN AND PLASTIC DUST")]
    [InlineData("pattern", "LOCAL CODES")]
    [InlineData("casting", "NO GATE, RISER, VENT OR NUMBER ON FACES M.")]
    [InlineData("casting", "AS AGREED WITH THE FOUNDRY")]
    [InlineData("pattern", "1.3 TO 1.82 %")]
    public void Notes_InSand_CautionAndTell(string sheet, string words) =>
        Assert.Contains(SheetMaker.Content("levers/middle:" + sheet, new SheetOptions()).Notes, n => n.Contains(words, StringComparison.Ordinal));

    /// <summary>Graded from memory in the table: said so where it is shown.</summary>
    [Fact]
    public void Notes_GradeFromMemory_SaySo()
    {
        Profile profile = ShippedFoundrySheetsTests.Chosen("middle", "brass", "gravity-die");
        profile = profile with { Values = new WithWord(profile.Values, CastingFields.ToleranceGrade, CastingFields.Usual) };
        Assert.Contains(SheetMaker.Content(profile, new SheetOptions(), "casting").Notes, n => n.StartsWith("TOLERANCES ±0.5 UP TO 10, ±0.55 UP TO 16, ±0.6 UP TO 25, ", StringComparison.Ordinal) && n.Contains(", THE PROCESS'S FINEST (FROM MEMORY): AGREE IT WITH THE FOUNDRY", StringComparison.Ordinal));
    }

    // Halves of ISO 8062-3:2007, grade 7: 0.74, 0.78, 0.82, 0.9.
    [Theory]
    [InlineData("levers/middle:casting", "TOLERANCES ±0.37 UP TO 10, ±0.39 UP TO 16, ±0.41 UP TO 25, ±0.45 UP TO 40, AS AGREED WITH THE FOUNDRY")]
    [InlineData("levers/middle:casting", "ALONG THE LEVER'S BACK, ALL BUT THE MARK IN ONE HALF")]
    [InlineData("levers/late:pattern", "ALONG THE LEVER'S BACK, ALL IN ONE HALF")]
    [InlineData("levers/late:pattern", "TO PADS' THICKNESS LESS STOCK AT PADS' TOP")]
    public void Notes_SayWhatHoldsForAllSizesAndTheMark(string sheet, string words) =>
        Assert.Contains(SheetMaker.Content(sheet, new SheetOptions()).Notes, n => n.Contains(words, StringComparison.Ordinal));

    [Fact]
    public void Legend_OfThePattern_NamesItsScheme()
    {
        SheetTable legend = SheetMaker.Content("levers/middle:pattern", new SheetOptions()).Tables[1];
        Assert.Equal("COLOURS: SCHEME \"CAST BLACK\" (NO LIST IS UNIVERSAL)", legend.Title);
        // Trade notes 2.7: red is machined in one list and left as cast in the other.
        Assert.Contains(legend.Rows, r => r.SequenceEqual(["M", "MACHINED", "RED"]));
        Profile profile = SheetMaker.Profile("levers/middle");
        profile = profile with { Values = new WithWord(profile.Values, CastingFields.Colours, "cast-red") };
        Assert.Contains(SheetMaker.Content(profile, new SheetOptions(), "pattern").Tables[1].Rows, r => r.SequenceEqual(["", "LEFT AS CAST", "RED"]));
    }

    [Fact]
    public void Table_OfTheCasting_HasStockAndNoPatternSizes()
    {
        SheetTable table = SheetMaker.Content("levers/middle:casting", new SheetOptions()).Tables[0];
        Assert.Equal(["SIZE", "FINISHED", "CASTING", "±", "STOCK\nLEAST, MOST"], table.Columns.Select(c => c.Head));
        // Pads 3.05 + 2 × 0.5. Least: (4.05 − 0.37 − 4.05·(1.823 − 1.5625) %/1.0156 − 3.05) / 2 = 0.31; most: (4.05 + 0.37 + 4.05·(1.5625 − 1.3) %/1.0156 − 2.95) / 2 = 0.74.
        Assert.Equal(["PAD THICKNESS, M", "3.05", "4.05", "0.37", "0.31, 0.74"], table.Rows.Single(r => r[0].StartsWith("PAD THICKNESS", StringComparison.Ordinal)).ToArray());
    }

    /// <summary>A pattern-maker who reads nothing of rapping does not know whether it is in.</summary>
    [Fact]
    public void Rapping_OnThePattern_IsSaidEitherWay()
    {
        Profile profile = SheetMaker.Profile("levers/middle");
        Assert.Contains("RAPPING: NOTHING TAKEN OFF FOR IT.", SheetMaker.Content(profile, new SheetOptions(), "pattern").Notes);
        Profile rapped = (FoundryChoice.None with
        {
            Trial = FoundryChoice.None.Trial.Add(CastingFields.RappingAcross, LeverDraw.Units.Length.FromMillimetres(0.1)).Add(CastingFields.RappingAlong, LeverDraw.Units.Length.FromMillimetres(0.2)),
        }).On(profile);
        SheetContent content = SheetMaker.Content(rapped, new SheetOptions(), "pattern");
        Assert.Contains(content.Notes, n => n.StartsWith("FOR RAPPING TAKE OFF EACH SIDE 0.2 ALONG THE ARMS, 0.1 ALONG THE PIN", StringComparison.Ordinal));
        string[] Row(string size) => [.. content.Tables[0].Rows.Single(r => r[0].StartsWith(size, StringComparison.Ordinal))];
        // By hand, 1 in 64: 10.5 · 1.015625 − 2 · 0.1 = 10.46; the gap opens: 14 · 1.015625 + 0.2 = 14.42; between middles nothing: 21 · 1.015625 = 21.33.
        Assert.Equal(("10.46", "14.42", "21.33"), (Row("HEAD WIDTH")[3], Row("FORK GAP")[3], Row("ARMS LENGTH")[3]));
    }

    /// <summary>The number of castings must not be read as one of patterns; a wax is spent with its casting.</summary>
    [Theory]
    [InlineData("green-sand", "QUANTITY IS OF CASTINGS: BUILD THE PATTERN TO LAST THAT MANY.")]
    [InlineData("investment", "QUANTITY IS OF CASTINGS: ONE PATTERN EACH, AND SPARES.")]
    public void Quantity_OnThePattern_IsSaidToBeOfCastings(string process, string note) =>
        Assert.Contains(note, SheetMaker.Content(ShippedFoundrySheetsTests.Chosen("middle", "brass", process), new SheetOptions(), "pattern").Notes);

    /// <summary>Reference 05d: grey iron in green sand from 4 mm. All that is thin stands in one note.</summary>
    [Fact]
    public void Notes_ThinInIron_NameEverySectionOnce()
    {
        Profile profile = ShippedFoundrySheetsTests.Chosen("smallest", "grey-iron", "green-sand");
        string note = Assert.Single(SheetMaker.Content(profile, new SheetOptions(), "casting").Notes, n => n.Contains("THINNER THAN", StringComparison.Ordinal));
        Assert.Equal("THINNER THAN THE 4 mm THAT GREY IRON USUALLY FILLS BY HAND-MOULDED GREEN SAND (DESIGN GUIDELINES, WEAK): ARMS' THICKNESS 2.8, ARMS' THICKNESS AT THE PADS 2.45, PADS' THICKNESS AS CAST 3.45. POUR HOT.", note);
    }

    /// <summary>M stands where there is stock to take off: off the finished outline by its 0.5 mm, never on the neck of a bulb or another as-cast face.</summary>
    [Theory]
    [MemberData(nameof(Sheets))]
    public void Letter_OfTheTonguesStock_PointsWhereTheFinishedFaceStandsOff(string name)
    {
        Contour outline = SheetMaker.Lever(name.Split(':')[0]).SideProfile;
        // 1 in 64 is in a pattern's sheet.
        double larger = name.EndsWith("pattern", StringComparison.Ordinal) ? 1.015625 : 1;
        foreach (string paper in (string[])["A3", "A4"])
        {
            PlotSheet sheet = SheetMaker.Draw(name, SheetMaker.Options(paper));
            PlotDimension mark = sheet.Dimensions.Single(d => d.Name == CastingFields.TongueAllowance.Name);
            Transform2D toPaper = sheet.Views.Single(v => v.Id == mark.View).ToPaper;
            double off = ContourQueries.NearestPoint(outline.Transformed(toPaper with { Scale = toPaper.Scale * larger }), mark.Points[0]).Distance / toPaper.Scale;
            Assert.InRange(off, 0.4, 0.6);
        }
    }

    /// <summary>The head is the thickest metal; a gate on raised letters takes them along when it is cut off.</summary>
    [Theory]
    [MemberData(nameof(Sheets))]
    public void Gate_IsOnTheHeadClearOfTheRaisedMark(string name)
    {
        Lever lever = SheetMaker.Lever(name.Split(':')[0]);
        foreach (string paper in (string[])["A3", "A4"])
        {
            PlotSheet sheet = SheetMaker.Draw(name, SheetMaker.Options(paper));
            PlotDimension gate = sheet.Dimensions.Single(d => d.Name == "gate");
            Transform2D toPaper = sheet.Views.Single(v => v.Id == gate.View).ToPaper;
            double level = (gate.Points[0].Y - toPaper.Translation.Y) / toPaper.Scale;
            // Patterns are a sixty-fourth larger.
            Assert.InRange(level / lever.Sizes[LeverFields.HeadDepth].Millimetres, -0.52, 0.52);
            if (MarkProud.OnArmBetween(lever) is { } mark)
                Assert.False(level > mark.From - 1.5 && level < mark.To + 1.5, name + " " + paper);
        }
    }

    /// <summary>Letters that no face has are in no legend: C comes with a cored hole's prints.</summary>
    [Fact]
    public void Legend_ListsTheLettersThatThePatternHas()
    {
        Profile profile = SheetMaker.Profile("levers/middle");
        static string[] Letters(Profile of) => [.. SheetMaker.Content(of, new SheetOptions(), "pattern").Tables[1].Rows.Select(r => r[0])];
        Assert.Equal(["M", ""], Letters(profile));
        // No hole of these sizes is cored in sand, and every shipped lever draws: by hand.
        CastingLever casting = Cast("middle");
        PartingCandidate parting = MouldParting.Of(casting);
        static string[] Of(FoundryPlan plan, PartingCandidate parting, Profile profile) => [.. ColourLegend.Of(plan, parting, profile.Values).InTable.Rows.Select(r => r[0])];
        Assert.Equal(["M", "C", ""], Of(casting.Plan with { CoredHole = LeverDraw.Units.Length.FromMillimetres(6) }, parting, profile));
        Assert.Equal(["M", "L", ""], Of(casting.Plan, parting with { Locked = LeverDraw.Units.Length.FromMillimetres(1) }, profile));
        Assert.Contains(SheetMaker.Content(profile, SheetMaker.Options("A4"), "pattern").Notes, n => n.EndsWith(": M MACHINED RED, LEFT AS CAST BLACK.", StringComparison.Ordinal));
    }

    private static CastingLever Cast(string name) => FoundryRoad.Casting(SheetMaker.Lever("levers/" + name), SheetMaker.Profile("levers/" + name)).Value!;

    [GeneratedRegex(@"^≈? ?\(?(?:M )?(?:\d+× )?[⌀R]?(\d*\.?\d+)")]
    private static partial Regex Number();
}
