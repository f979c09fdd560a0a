using System.Text.Json;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Geometry;
using LeverDraw.Tests.Support;
using LeverDraw.Tests.Writers;
using LeverDraw.Writers.Dxf;
using LeverDraw.Writers.Svg;

namespace LeverDraw.Tests.Drafting.Annotations;

/// <summary>One invented plate with a dimension of each kind, as finished ink.</summary>
public class DimensionKindsTests
{
    [Theory]
    [InlineData("A4", ShownUnits.Millimetres)]
    [InlineData("A3", ShownUnits.Millimetres)]
    [InlineData("A3", ShownUnits.Inches)]
    [InlineData("A2", ShownUnits.MillimetresAndInches)]
    public void EachKind_OnOneView_IsLegible(string paper, ShownUnits units)
    {
        Assert.Empty(Legibility.Faults(KindSheet.Draw(paper, units), SheetMaker.Frame(paper)));
        Assert.Empty(Legibility.Faults(Ordinates(RunForm.Ordinate, paper, units), SheetMaker.Frame(paper)));
        Assert.Empty(Legibility.Faults(Ordinates(RunForm.Running, paper, units), SheetMaker.Frame(paper)));
    }

    [Fact]
    public void Chain_AllMembers_StandOnOneLineAndAddUp()
    {
        PlotSheet sheet = KindSheet.Draw("A3");
        PlotDimension[] chain = [.. sheet.Dimensions.Where(d => d.Kind == PlotDimensionKind.Chain)];
        Assert.Equal(6, chain.Length);
        Assert.Single(chain.Select(d => Math.Round(d.Points[2].Y, 9)).Distinct());
        Assert.Equal(44, chain.Sum(d => d.Value), 9);
        Assert.Equal(["12", "1", "1.5", "1.5", "14", "14"], chain.Select(d => d.Text));
        for (int i = 1; i < chain.Length; i++)
            Assert.Equal(chain[i - 1].Points[1], chain[i].Points[0]);
        // Three narrow spans in a row: dots at the two points between them, twelve corners each.
        Assert.Equal(2, sheet.Items.OfType<PlotFill>().Count(f => f.Corners.Length == 12 && chain.Any(d => d.Id == f.Owner)));
    }

    [Fact]
    public void Baseline_Members_StandInEvenTiersShortestNearest()
    {
        PlotSheet sheet = KindSheet.Draw("A3");
        PlotDimension[] baseline = [.. sheet.Dimensions.Where(d => d.Kind == PlotDimensionKind.Baseline)];
        Assert.Equal(KindSheet.Steps, baseline.Select(d => d.Value));
        double[] levels = [.. baseline.Select(d => d.Points[2].Y)];
        double tier = levels[0] - levels[1];
        Assert.True(tier >= 6, "ISO practice: 6 to 8 mm between dimension lines");
        for (int i = 1; i < levels.Length; i++)
            Assert.Equal(tier, levels[i - 1] - levels[i], 9);
        Assert.Single(baseline.Select(d => d.Points[0]).Distinct());
    }

    [Theory]
    [InlineData(RunForm.Ordinate, 0)]
    [InlineData(RunForm.Running, 1)]
    public void Ordinates_Numbers_StandInOneRowClearOfEachOther(RunForm form, int circles)
    {
        PlotSheet sheet = Ordinates(form, "A3", ShownUnits.Millimetres);
        Assert.Equal(["12", "13", "14.5", "16", "30", "44"], sheet.Dimensions.Select(d => d.Text));
        Assert.Single(sheet.Dimensions.Select(d => Math.Round(d.Points[2].Y, 9)).Distinct());
        Assert.Equal(circles, sheet.Items.OfType<PlotStroke>().Count(s => s.Owner is not null && s.Edge is ArcEdge { IsFullCircle: true }));
        // The zero mark; upright numbers are read from the right.
        PlotText[] numbers = [.. sheet.Items.OfType<PlotText>().Where(t => t.Owner is not null)];
        Assert.Equal("0", Assert.Single(numbers, t => sheet.Dimensions.All(d => d.Text != t.Text)).Text);
        Assert.All(numbers, t => Assert.Equal(Math.PI / 2, t.Angle, 9));
    }

    [Fact]
    public void Basic_Size_HasABoxOfFourLinesRoundItsNumber()
    {
        PlotSheet sheet = KindSheet.Draw("A3");
        PlotDimension basic = sheet.Dimensions.Single(d => d.Name == "basic");
        Box2D ink = InkBoxOf(sheet, basic);
        LineEdge[] lines = [.. sheet.Items.OfType<PlotStroke>().Where(s => s.Owner == basic.Id).Select(s => s.Edge).OfType<LineEdge>()];
        LineEdge[] box = [.. lines.Where(l => l.Box.Inflated(1e-6).Overlaps(ink.Inflated(3)) && l.Length < 20)];
        Assert.True(box.Length >= 4);
        Assert.Equal(4, box.SelectMany(l => new[] { l.From, l.To }).GroupBy(p => (Math.Round(p.X, 6), Math.Round(p.Y, 6))).Count(g => g.Count() == 2));
    }

    [Fact]
    public void ArcLength_QuarterOfRadiusTen_MeasuresAlongTheArc()
    {
        PlotSheet sheet = KindSheet.Draw("A3");
        PlotDimension arc = sheet.Dimensions.Single(d => d.Kind == PlotDimensionKind.ArcLength);
        Assert.Equal("⌒15.708", arc.Text);
        double scale = sheet.Views[0].ToPaper.Scale;
        double turn = Math.Acos((arc.Points[1] - arc.Points[0]).Unit().Dot((arc.Points[2] - arc.Points[0]).Unit()));
        Assert.Equal(arc.Value, turn * (arc.Points[1] - arc.Points[0]).Length / scale, 9);
        // A right angle at most: the dimension arc has the measured one's radius and its extension lines are parallel.
        Assert.Contains(sheet.Items.OfType<PlotStroke>(), s => s.Owner == arc.Id && s.Edge is ArcEdge e && Math.Abs(e.Radius - (10 * scale)) < 1e-9);
        LineEdge[] extensions = [.. sheet.Items.OfType<PlotStroke>().Where(s => s.Owner == arc.Id).Select(s => s.Edge).OfType<LineEdge>()];
        Assert.Equal(2, extensions.Length);
        Assert.Equal(0, (extensions[0].To - extensions[0].From).Unit().Cross((extensions[1].To - extensions[1].From).Unit()), 9);
    }

    /// <summary>Every kind's text is in the SVG, under its kind's name.</summary>
    [Fact]
    public void Svg_NamesTheKinds()
    {
        using var file = new MemoryStream();
        new SvgWriter().Write(KindSheet.Draw("A3"), file);
        string svg = System.Text.Encoding.UTF8.GetString(file.ToArray());
        foreach (string kind in (string[])["chain", "baseline", "arc-length", "linear"])
            Assert.Contains("data-kind=\"" + kind + "\"", svg, StringComparison.Ordinal);
        Assert.Contains("aria-label=\"25 +0.1/−0.05\"", svg, StringComparison.Ordinal);
    }

    /// <summary>Read strictly by a reader that is not ours: one entity per member with its own measure; an arc's length is ink.</summary>
    [OutsideReaderFact(OutsideReader.Ezdxf)]
    public void Dxf_EachMember_IsADimensionOfItsKindAndValue()
    {
        PlotSheet[] sheets = [KindSheet.Draw("A3"), Ordinates(RunForm.Ordinate, "A3", ShownUnits.Millimetres), Ordinates(RunForm.Running, "A4", ShownUnits.Inches)];
        JsonElement[] read = OutsideReader.ReadByEzdxf([.. sheets.Select(s => Bytes.Of(new DxfWriter(new DxfOptions()), s))]);
        foreach ((PlotSheet sheet, JsonElement found) in sheets.Zip(read))
        {
            Assert.Equal("[]", found.GetProperty("faults").ToString());
            PlotDimension[] expected = [.. sheet.Dimensions.Where(d => d.Kind != PlotDimensionKind.ArcLength)];
            JsonElement[] entities = [.. found.GetProperty("dimensions").EnumerateArray()];
            Assert.Equal(expected.Length, entities.Length);
            foreach ((PlotDimension dimension, JsonElement entity) in expected.Zip(entities))
            {
                // Group 70 of the DXF reference: 0 rotated, 6 ordinate.
                Assert.Equal(dimension.Kind == PlotDimensionKind.Ordinate ? 6 : 0, entity.GetProperty("kind").GetInt32());
                double unit = sheet.Unit == SheetUnit.Inch ? 25.4 : 1;
                Assert.Equal(dimension.Value / unit, entity.GetProperty("measured").GetDouble() * entity.GetProperty("factor").GetDouble(), 1e-6);
                Assert.Contains(dimension.Text.Replace("−", "-", StringComparison.Ordinal), entity.GetProperty("drawn").EnumerateArray().Select(t => t.GetString()));
            }
        }
    }

    private static PlotSheet Ordinates(RunForm form, string paper, ShownUnits units) =>
        KindSheet.Draw(paper, units, text => [KindSheet.Run(form, text, DimensionSides.Left)]);

    private static Box2D InkBoxOf(PlotSheet sheet, PlotDimension dimension) =>
        sheet.Items.OfType<PlotText>().Where(t => t.Owner == dimension.Id).Aggregate(Box2D.Empty, (b, t) => b.Union(Legibility.BoxOf(t)));
}
