using System.Text.Json;
using System.Xml.Linq;
using LeverDraw.Comparison;
using LeverDraw.Comparison.Sheets;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Pipeline;
using LeverDraw.Tests.Support;
using LeverDraw.Tests.Writers;
using LeverDraw.Writers.Dxf;
using LeverDraw.Writers.Svg;

namespace LeverDraw.Tests.Comparison.Sheets;

public sealed class OverlaySheetTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string, string, string> PairsAndPapers()
    {
        var data = new TheoryData<string, string, string>();
        foreach ((string a, string b) in OverlayPairs.Shipped)
        {
            foreach (string paper in (string[])["A4", "A3", "A2", "letter", "tabloid"])
                data.Add(a, b, paper);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(PairsAndPapers))]
    public void Compose_AnyUnitsAndAlignment_DrawsALegibleSheet(string a, string b, string paper)
    {
        Box2D frame = SheetMaker.Frame(paper);
        List<string> faults = [];
        foreach (ShownUnits units in Enum.GetValues<ShownUnits>())
        {
            foreach (Alignment alignment in Enum.GetValues<Alignment>())
            {
                SheetOptions options = SheetMaker.Options(paper, units, alignment == Alignment.Nose ? ProjectionMethod.FirstAngle : ProjectionMethod.ThirdAngle);
                Checked<PlotSheet> drawn = DrawingRoad.Sheet(OverlaySheet.Of(OverlayPairs.Compare(a, b, alignment)), options);
                string sheet = $"{units} {alignment}: ";
                faults.AddRange(drawn.Value is { } plot
                    ? Legibility.Faults(plot, frame).Concat(PartsApart.Faults(plot, frame)).Select(f => sheet + f)
                    : drawn.Diagnostics.Select(d => sheet + d.Message));
            }
        }

        Assert.True(faults.Count == 0, string.Join("\n", faults));
    }

    /// <summary>Middle and rare lie farthest apart in the fork view at one place, whichever is asked: it is said once, and its line drawn there alone.</summary>
    [Fact]
    public void Compose_OneDistanceSeenFromEither_IsSaidOnce()
    {
        PlotSheet sheet = DrawingRoad.Sheet(OverlaySheet.Of(OverlayPairs.Compare("middle", "rare", Alignment.Pivot)), SheetMaker.Options("A3")).Value!;
        PlotDimension said = Assert.Single(sheet.Dimensions, d => d.Name.StartsWith("fork.distance", StringComparison.Ordinal));
        LineEdge line = Assert.Single(sheet.Items.OfType<PlotStroke>().Where(s => s.View == "fork" && s.Owner is null && s.Role == LineRole.Dimension).Select(s => s.Edge).OfType<LineEdge>());
        Assert.Equal(said.Value * sheet.Views.Single(v => v.Id == "fork").ToPaper.Scale, line.Length, 6);
        Assert.Equal(0, line.From.DistanceTo(said.Points[0]), 6);
        Assert.Equal(2, sheet.Dimensions.Count(d => d.Name.StartsWith("side.distance", StringComparison.Ordinal)));
    }

    /// <summary>Outlines of any two sound levers; the tables are those of shipped profiles, as random levers have none.</summary>
    [Theory]
    [InlineData("A3", Alignment.Pivot)]
    [InlineData("A4", Alignment.Nose)]
    public void Compose_RandomPairs_IsLegible(string paper, Alignment alignment)
    {
        Lever[] levers = OverlayPairs.RandomLeversOf(13);
        List<string> faults = [];
        for (int i = 0; i + 1 < levers.Length; i++)
        {
            LeverComparison pair = LeverComparison.Of(OverlayPairs.Variant("early") with { Lever = levers[i] }, OverlayPairs.Variant("late") with { Lever = levers[i + 1] }, alignment);
            Checked<PlotSheet> drawn = DrawingRoad.Sheet(OverlaySheet.Of(pair), SheetMaker.Options(paper));
            string name = FormattableString.Invariant($"pair {i}: ");
            faults.AddRange((drawn.Value is { } plot ? Legibility.Faults(plot, SheetMaker.Frame(paper)) : drawn.Diagnostics.Select(d => d.Message)).Select(f => name + f));
        }

        Assert.True(faults.Count == 0, string.Join("\n", faults));
    }

    /// <summary>Both units: sizes stand in both, and so does what is left when the one is taken from the other.</summary>
    [Fact]
    public void Content_BothUnits_SaysTheSizesInBoth()
    {
        SheetContent content = OverlaySheet.Content(OverlayPairs.Compare("early", "late"), new SheetOptions(Units: ShownUnits.MillimetresAndInches), []);
        SheetTable sizes = content.Tables.Single(t => t.Title == "WHERE THEY DIFFER");
        Assert.Equal("SIZE, mm [in]", sizes.Columns[0].Head);
        // 4.2 mm is .1654 in, 3 mm is .1181 in: .0473 apart as shown.
        Assert.Equal(["ARMS, THICKNESS", "4.2 [.1654]", "3 [.1181]", "−1.2", "−.0473", "STRENGTH"], sizes.Rows.Single(r => r[0] == "ARMS, THICKNESS").ToArray());
    }

    [Fact]
    public void Compose_VariantWithItself_IsLegibleAndHatchesNothing()
    {
        PlotSheet sheet = Draw("middle", "middle", "A4");
        Assert.Empty(Legibility.Faults(sheet, SheetMaker.Frame("A4")));
        Assert.DoesNotContain(sheet.Items, i => i is PlotHatch { View: not null });
        Assert.Empty(sheet.Dimensions);
    }

    /// <summary>Told apart by line kind and by colour: two classes of the contract, one dashed and red; hatched by lines that lean to either side.</summary>
    [Fact]
    public void Write_Svg_TellsTheTwoApartTwice()
    {
        XElement root = XDocument.Load(new MemoryStream(Bytes.Of(new SvgWriter(), Draw("early", "smallest", "A3")))).Root!;
        XElement a = root.Elements(Svg + "g").Single(g => (string?)g.Attribute("class") == "overlay-a"), b = root.Elements(Svg + "g").Single(g => (string?)g.Attribute("class") == "overlay-b");
        Assert.Null(a.Attribute("stroke-dasharray"));
        Assert.NotNull(b.Attribute("stroke-dasharray"));
        Assert.Null(a.Attribute("stroke"));
        Assert.NotNull(b.Attribute("stroke"));
        PlotHatch[] hatches = [.. Draw("early", "smallest", "A3").Items.OfType<PlotHatch>().Where(h => h.View is not null)];
        Assert.NotEmpty(hatches);
        Assert.All(hatches, h => Assert.Equal(h.Role == LineRole.OverlayA ? 45 : 135, h.Angle * 180 / Math.PI, 9));
        Assert.Contains(hatches, h => h.Role == LineRole.OverlayB);
    }

    /// <summary>No part of the sheet may be cut along.</summary>
    [Fact]
    public void Draw_Overlay_HasNoOutlineToCutAlong() =>
        Assert.All(Draw("early", "late", "A3").Views, v => Assert.Empty(v.Outlines));

    [Fact]
    public void Draw_MarksTheLargestDistancesWhereTheyAre()
    {
        PlotSheet sheet = Draw("early", "late", "A3");
        LeverComparison both = OverlayPairs.Compare("early", "late");
        foreach ((string view, ViewOverlay seen) in ((string, ViewOverlay)[])[("side", both.Side), ("fork", both.Fork)])
        {
            foreach ((string letter, Deviation far) in ((string, Deviation)[])[("A", seen.AFromB), ("B", seen.BFromA)])
            {
                PlotDimension note = sheet.Dimensions.Single(d => d.Name == view + ".distance." + letter);
                // The fork view is symmetric: there the leader may take the same place on the other side.
                Transform2D toPaper = sheet.Views.Single(v => v.Id == view).ToPaper;
                // From where there is no metal: the other's outline, when the place lies within it.
                Point2D tip = far.Outside ? far.At : far.Nearest;
                Point2D[] places = view == "fork" ? [tip, new Point2D(-tip.X, tip.Y)] : [tip];
                Assert.Equal(0, places.Min(p => toPaper.Apply(p).DistanceTo(note.Points[0])), 1e-9);
                Assert.Equal(far.Distance.Millimetres, note.Value);
            }
        }
    }

    /// <summary>The views at twice full size on A4 and A3, and each leader comes from outside: over one outline at most, the other lever's, when the place lies inside that.</summary>
    [Theory]
    [InlineData("early", "late", "A4")]
    [InlineData("early", "late", "A3")]
    [InlineData("middle", "rare", "A4")]
    [InlineData("middle", "rare", "A3")]
    public void Draw_OnPaperPeopleHave_ShowsTheViewsLargeAndLeadersFromOutside(string a, string b, string paper)
    {
        List<string> faults = [];
        foreach (ShownUnits units in (ShownUnits[])[ShownUnits.Millimetres, ShownUnits.MillimetresAndInches])
        {
            foreach (Alignment alignment in Enum.GetValues<Alignment>())
            {
                PlotSheet sheet = Draw(a, b, paper, alignment, units);
                Assert.Equal(2, sheet.MainScale);
                // Laid on each other by their pads the middle and the rare one lie criss-cross, and a place is inside both heads.
                int most = alignment == Alignment.Pads && b == "rare" ? 3 : 1;
                faults.AddRange(LeaderLines.Faults(sheet, most).Select(f => $"{units} {alignment}: {f}"));
            }
        }

        Assert.True(faults.Count == 0, string.Join("\n", faults));
    }

    [Fact]
    public void Draw_SaysBothNamesNumbersAndTheAlignment()
    {
        string[] texts = [.. Draw("middle", "rare", "A4", Alignment.Pads).Items.OfType<PlotText>().Select(t => t.Text)];
        Assert.Contains("TC-L-02 / TC-L-05", texts);
        Assert.Contains("B/A", texts);
        Assert.Contains("A: MIDDLE, TC-L-02", texts);
        Assert.Contains("B: RARE BULB-NOSED, TC-L-05", texts);
        Assert.Contains("BY THE MIDDLES OF THE", string.Join(' ', texts), StringComparison.Ordinal);
    }

    [Fact]
    public void Content_WithVerdicts_SaysThemInTheNotes()
    {
        SheetContent content = OverlaySheet.Content(OverlayPairs.Compare("early", "late"), new SheetOptions(), ["A GOES INTO PLANE X, B RATTLES THERE."]);
        Assert.Contains("A GOES INTO PLANE X, B RATTLES THERE.", content.Notes);
    }

    /// <summary>The DXF as a reader that is not ours sees it: no fault; both levers as closed loops at true size on layers of their own; the same lettering as the sheet.</summary>
    [OutsideReaderFact(OutsideReader.Ezdxf)]
    public void Write_Dxf_IsReadStrictlyWithBothLeversAtTrueSize()
    {
        (string A, string B, string Paper, ShownUnits Units)[] cases = [.. OverlayPairs.Shipped.SelectMany(p => ((string, string, string, ShownUnits)[])[(p.A, p.B, "A3", ShownUnits.Millimetres), (p.A, p.B, "letter", ShownUnits.Inches)])];
        PlotSheet[] sheets = [.. cases.Select(c => Draw(c.A, c.B, c.Paper, units: c.Units))];
        JsonElement[] read = OutsideReader.ReadByEzdxf(sheets.Select(s => Bytes.Of(new DxfWriter(new DxfOptions()), s)));
        for (int i = 0; i < cases.Length; i++)
        {
            Assert.Equal("[]", read[i].GetProperty("faults").ToString());
            double unit = sheets[i].Unit == SheetUnit.Inch ? 25.4 : 1;
            LeverComparison both = OverlayPairs.Compare(cases[i].A, cases[i].B);
            foreach ((string layer, LineRole role, Silhouette[] seen) in ((string, LineRole, Silhouette[])[])[("OVERLAY_A", LineRole.OverlayA, [both.Side.A, both.Fork.A]), ("OVERLAY_B", LineRole.OverlayB, [both.Side.B, both.Fork.B])])
            {
                Assert.Equal("""{"LWPOLYLINE": 2, "CIRCLE": 1, "LINE": 1}""", Sorted(read[i].GetProperty("counts").GetProperty(layer)));
                double sample = sheets[i].Items.OfType<PlotStroke>().Single(s => s.Role == role).Edge.Length / sheets[i].MainScale;
                double loops = seen.Sum(s => ContourMeasure.Length(s.Outer) + s.Holes.Sum(ContourMeasure.Length));
                Assert.Equal((loops + sample) / unit, read[i].GetProperty("lengths").GetProperty(layer).GetDouble(), 1e-6);
            }

            string[] drawn = [.. sheets[i].Items.OfType<PlotText>().Select(t => Plain(t.Text)).Order(StringComparer.Ordinal)];
            Assert.Equal(drawn, read[i].GetProperty("texts").EnumerateArray().Select(t => t.GetString()!).Order(StringComparer.Ordinal));
        }
    }

    /// <summary>SVG says what the sheet says; PDF and PNG are made from its very bytes.</summary>
    [Fact]
    public void Write_Svg_HasEveryPieceOfLettering()
    {
        PlotSheet sheet = Draw("middle", "rare", "A4", units: ShownUnits.MillimetresAndInches);
        using var file = new MemoryStream(Bytes.Of(new SvgWriter(), sheet));
        Assert.Equal(sheet.Items.OfType<PlotText>().Select(t => t.Text).Order(StringComparer.Ordinal), SvgInk.Read(file).Lettering.Select(l => l.Label).Order(StringComparer.Ordinal));
    }

    private static PlotSheet Draw(string a, string b, string paper, Alignment alignment = Alignment.Pivot, ShownUnits units = ShownUnits.Millimetres)
    {
        Checked<PlotSheet> drawn = DrawingRoad.Sheet(OverlaySheet.Of(OverlayPairs.Compare(a, b, alignment)), SheetMaker.Options(paper, units));
        Assert.True(drawn.Ok, string.Join("; ", drawn.Diagnostics.Select(d => d.Message)));
        return drawn.Value!;
    }

    private static string Sorted(JsonElement counts) =>
        "{" + string.Join(", ", ((string[])["LWPOLYLINE", "CIRCLE", "LINE"]).Select(k => $"\"{k}\": {counts.GetProperty(k)}")) + "}";

    /// <summary>The %% forms, typed here once more from the published DXF reference.</summary>
    private static string Plain(string text) => text.Replace("⌀", "%%c", StringComparison.Ordinal).Replace("°", "%%d", StringComparison.Ordinal).Replace("±", "%%p", StringComparison.Ordinal).Replace("−", "-", StringComparison.Ordinal).Replace("×", "x", StringComparison.Ordinal);
}
