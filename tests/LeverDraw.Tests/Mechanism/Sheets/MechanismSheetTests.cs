using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Geometry;
using LeverDraw.Mechanism;
using LeverDraw.Mechanism.Fitting;
using LeverDraw.Mechanism.Setups;
using LeverDraw.Mechanism.Sheets;
using LeverDraw.Parts;
using LeverDraw.Parts.HostPlanes;
using LeverDraw.Pipeline;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Mechanism.Sheets;

/// <summary>The sheets of setups and of fits draw on the papers people have, and one can read them.</summary>
public sealed class MechanismSheetTests
{
    private static readonly string[] Setups = ["rattling", "early", "middle", "late", "smallest", "rare", "thick-iron"];

    public static TheoryData<string, string> SetupsAndPapers()
    {
        var data = new TheoryData<string, string>();
        foreach (string setup in Setups)
        {
            foreach (string paper in (string[])["A4", "A3"])
                data.Add(setup, paper);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(SetupsAndPapers))]
    public void Compose_Setup_IsLegible(string setup, string paper)
    {
        BuiltPart part = Part(setup);
        Box2D frame = SheetMaker.Frame(paper);
        foreach (ShownUnits units in (ShownUnits[])[ShownUnits.Millimetres, ShownUnits.Inches])
        {
            foreach (BuiltSheet sheet in part.Sheets)
            {
                Checked<PlotSheet> drawn = DrawingRoad.Sheet(sheet, SheetMaker.Options(paper, units));
                Assert.True(drawn.Ok, string.Join("; ", drawn.Diagnostics.Select(d => d.Message)));
                List<string> faults = Legibility.Faults(drawn.Value, frame);
                Assert.True(faults.Count == 0, $"{setup} {sheet.Name} {paper} {units}: " + string.Join("\n", faults));
            }
        }
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("A3")]
    public void Compose_Fits_IsLegible(string paper)
    {
        string[] eras = ["early", "middle", "late", "smallest", "rare"];
        FittedLever[] levers = [.. eras.Select(e => new FittedLever(SheetMaker.Profile("levers/" + e).Name, "", SheetMaker.Lever("levers/" + e), SheetMaker.Pin("pins/" + e)))];
        HostPlane[] planes = [.. eras.Select(e => SheetMaker.Profile("planes/" + e)).Select(p => HostPlanePart.Build(p.Name, p.Values).Value!)];
        FitMatrix matrix = FitMatrix.Of([.. levers], [.. planes]);
        for (int i = 0; i < eras.Length; i++)
        {
            SheetOptions options = SheetMaker.Options(paper);
            Checked<PlotSheet> drawn = SheetComposer.Compose(FitsSheet.Content(matrix, levers[i], planes[i], SheetMaker.Profile("levers/" + eras[i]), options), options);
            Assert.True(drawn.Ok, string.Join("; ", drawn.Diagnostics.Select(d => d.Message)));
            List<string> faults = Legibility.Faults(drawn.Value, SheetMaker.Frame(paper));
            Assert.True(faults.Count == 0, eras[i] + ": " + string.Join("\n", faults));
        }
    }

    [Fact]
    public void Sheet_LettersEveryGapWithItsShare()
    {
        PlotSheet drawn = DrawingRoad.Sheet(Part("rattling").Sheets[0], SheetMaker.Options("A3")).Value!;
        string all = string.Join('\n', drawn.Items.OfType<PlotText>().Select(t => t.Text));
        Setup setup = DiskProfiles.Setup("rattling");
        double whole = GapShare.Of(setup.Linkage).Sum(s => s.Turns);
        foreach (GapShare share in GapShare.Of(setup.Linkage))
        {
            Assert.Contains(share.Gap.Words().ToUpperInvariant(), all, StringComparison.Ordinal);
            Assert.Contains((share.Turns / whole * 100).ToString("0", System.Globalization.CultureInfo.InvariantCulture) + " %", all, StringComparison.Ordinal);
        }

        Assert.Equal(PartState.Assembly, drawn.State);
    }

    /// <summary>Three pictures that look alike: each says which it is.</summary>
    [Theory]
    [InlineData("A4")]
    [InlineData("A3")]
    public void Travel_EveryView_HasItsCaption(string paper)
    {
        PlotSheet drawn = DrawingRoad.Sheet(Part("middle").Sheets.Single(s => s.Name == TravelSheet.Kind), SheetMaker.Options(paper)).Value!;
        Assert.Equal(
            ["NUT 3.25 mm BACK, IRON DOWN", "NUT 3.25 mm FORWARD, IRON UP", "NUT AT MID-TRAVEL"],
            drawn.Items.OfType<PlotText>().Where(t => t.View is not null && t.Text.StartsWith("NUT ", StringComparison.Ordinal)).Select(t => t.Text).Order(StringComparer.Ordinal));
    }

    /// <summary>On large paper the poses stand level, from one end of the nut's travel to the other, whatever the projection.</summary>
    [Theory]
    [InlineData(ProjectionMethod.ThirdAngle)]
    [InlineData(ProjectionMethod.FirstAngle)]
    public void Travel_OnA3_HasItsPosesInOneRow(ProjectionMethod projection)
    {
        PlotSheet drawn = DrawingRoad.Sheet(Part("rare").Sheets.Single(s => s.Name == TravelSheet.Kind), SheetMaker.Options("A3", ShownUnits.Millimetres, projection)).Value!;
        PlotText[] captions = [.. drawn.Items.OfType<PlotText>().Where(t => t.View is not null && t.Text.StartsWith("NUT ", StringComparison.Ordinal)).OrderBy(t => t.Anchor.X)];
        Assert.Equal(["NUT 2.75 mm BACK, IRON DOWN", "NUT AT MID-TRAVEL", "NUT 2.75 mm FORWARD, IRON UP"], captions.Select(c => c.Text));
        Assert.All(captions, c => Assert.Equal(captions[0].Anchor.Y, c.Anchor.Y, 9));
        Assert.All(drawn.Views, v => Assert.Equal(drawn.Views[0].ToPaper.Translation.Y, v.ToPaper.Translation.Y, 9));
    }

    /// <summary>What one turn does at mid-travel is one number on both sheets, and the lengths named with it give the formula's.</summary>
    [Theory]
    [InlineData("early")]
    [InlineData("rare")]
    [InlineData("thick-iron")]
    public void Mechanism_OneTurn_IsTheTravelsAtTheMiddle(string setup)
    {
        Linkage linkage = DiskProfiles.Setup(setup).Linkage;
        string notes = string.Join(' ', Part(setup).Sheets[0].Content(new SheetOptions()).Value!.Notes);
        TravelPoint middle = TravelPoint.Over(linkage, 3)[1];
        string Number(double millimetres) => Math.Round(millimetres, 3).ToString("0.###", System.Globalization.CultureInfo.InvariantCulture);
        Assert.Contains("MOVES THE IRON " + Number(middle.PerTurn!.Value.Millimetres) + " mm ALONG THE BED", notes, StringComparison.Ordinal);
        Assert.Contains($"{Number(linkage.IronArm.Millimetres)} / {Number(linkage.NutArm.Millimetres)} = {Number(linkage.Lead.Millimetres * linkage.IronArm.Millimetres / linkage.NutArm.Millimetres)}", notes, StringComparison.Ordinal);
    }

    /// <summary>The lever is pushed aside until the hole's wall behind it bears on the pin: the pin stands where the solver has it, and the gap C opens on the other side.</summary>
    [Theory]
    [InlineData("late")]
    [InlineData("rattling")]
    [InlineData("rare")]
    public void Picture_OfTheDrivenLever_HasThePinWhereItBears(string setup)
    {
        Linkage linkage = DiskProfiles.Setup(setup).Linkage;
        var picture = new MechanismPicture(linkage, default, DrawnGaps.Of(linkage.Typical));
        Vector2D pin = picture.PinCentre - Point2D.Origin, hole = linkage.Solver.WithNutAt(linkage.NutMiddle, Drive.Advance)!.Value.Pose.Offset;
        // The pose says how far the hole's middle stands from the pin's.
        Assert.True(pin.Unit().Dot(hole.Unit()) < -0.99, $"{pin} {hole}");
        // Nut and iron push it back and up: the pin bears in front and below.
        Assert.True(pin.X > 0 && pin.Y < 0);
        Assert.True((picture.PlacesIn(Gap.Pivot)[0].At - Point2D.Origin).Unit().Dot(pin.Unit()) < -0.99);
    }

    /// <summary>Each gap is pointed at from its open side: no edge runs through an arrowhead, and only the leader to the hole, which lies within the lever, comes across an edge at all (common practice, no source).</summary>
    [Theory]
    [MemberData(nameof(SetupsAndPapers))]
    public void Gaps_ArePointedAtFromTheirOpenSide(string setup, string paper)
    {
        PlotSheet drawn = DrawingRoad.Sheet(Part(setup).Sheets.Single(s => s.Name == MechanismSheet.Kind), SheetMaker.Options(paper)).Value!;
        Edge[] edges = [.. drawn.Items.OfType<PlotStroke>().Where(s => s.Role == LineRole.Edge && s.View == "mechanism").Select(s => s.Edge)];
        PlotDimension[] gaps = [.. drawn.Dimensions.Where(d => d.Name.StartsWith("gap.", StringComparison.Ordinal))];
        Assert.Equal(4, gaps.Length);
        Assert.NotEmpty(edges);
        foreach (PlotDimension gap in gaps)
        {
            Point2D[] head = [.. Assert.Single(drawn.Items.OfType<PlotFill>(), f => f.Owner == gap.Id).Corners];
            Point2D tip = head.MinBy(gap.Points[0].DistanceTo);
            IEnumerable<Edge> ink = head.Select((c, i) => new LineEdge(c, head[(i + 1) % head.Length]));
            if (gap.Name != "gap.C")
                ink = ink.Concat(drawn.Items.OfType<PlotStroke>().Where(s => s.Owner == gap.Id).Select(s => s.Edge));
            foreach (Edge line in ink)
            {
                foreach (Edge edge in edges)
                    Assert.All(EdgeIntersection.Between(line, edge).Meetings, m => Assert.True(m.Point.DistanceTo(tip) < 0.2, $"{gap.Name} at {m.Point}"));
            }
        }
    }

    /// <summary>A tapered pin in a parallel hole has another clearance at every place: the sheet says which one it reckons with, and how slanting flanks shorten the iron's arm.</summary>
    [Theory]
    [InlineData("late", true)]
    [InlineData("early", false)]
    public void Notes_OfTapersThatDiffer_SayWhereTheClearanceHolds(string setup, bool differ)
    {
        string notes = string.Join(' ', Part(setup).Sheets[0].Content(new SheetOptions()).Value!.Notes);
        Assert.Equal(differ, notes.Contains("HOLE AND PIN AT HEAD'S MID-PLANE", StringComparison.Ordinal));
        Assert.Matches("THE FLANKS' SLANT MAKES 10.5 ACT AS 10\\.[0-9]+\\.", notes);
        Assert.Contains("THE TOE TO THE RIGHT", notes, StringComparison.Ordinal);
    }

    /// <summary>An iron 1 mm thicker than the plane's own costs turns, and nothing is worn: the sheet names it.</summary>
    [Fact]
    public void Mechanism_OfAThickIron_SaysWhatIsNewAboutNewParts()
    {
        string notes = string.Join(' ', Part("thick-iron").Sheets[0].Content(new SheetOptions()).Value!.Notes);
        Assert.Contains("3.2 mm THICK (A NEW ONE 2.2 mm)", notes, StringComparison.Ordinal);
        Assert.Contains("WITH ALL PARTS NEW, THE IRON 2.2 mm THICK: ", notes, StringComparison.Ordinal);
    }

    private static BuiltPart Part(string setup) => new DrawingRoad(new DiskProfiles(), ProfileKinds.All).Part("profiles/setups/" + setup + ".toml").Value!;
}
