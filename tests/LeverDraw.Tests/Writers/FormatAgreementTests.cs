using System.Globalization;
using System.Text.Json;
using System.Xml.Linq;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Tests.Support;
using LeverDraw.Writers.Dxf;
using LeverDraw.Writers.Svg;

namespace LeverDraw.Tests.Writers;

/// <summary>What SVG and DXF say of every shipped profile's dimensions, and of the foundry's sheets, read back: the same values and the same words. PDF and PNG are pictures of the SVG's own bytes; that their ink agrees is tested with them.</summary>
public class FormatAgreementTests
{
    private const double Tolerance = 1e-9;

    private static readonly (string Name, PlotSheet Sheet)[] Cases =
    [
        .. SheetMaker.Profiles.Select(p => (p + " mm A3", SheetMaker.Draw(p, SheetMaker.Options("A3")))),
        .. SheetMaker.Profiles.Select(p => (p + " in A4", SheetMaker.Draw(p, SheetMaker.Options("A4", ShownUnits.Inches)))),
        .. SheetMaker.Profiles.Select(p => (p + " mm-in letter", SheetMaker.Draw(p, SheetMaker.Options("letter", ShownUnits.MillimetresAndInches)))),
        .. SheetMaker.Foundry.Select(p => (p + " mm A3", SheetMaker.Draw(p, SheetMaker.Options("A3")))),
    ];

    [Fact]
    public void Svg_EveryShippedProfile_SaysEachDimensionsValueAndWords()
    {
        foreach ((string name, PlotSheet sheet) in Cases)
        {
            XElement root = XDocument.Load(new MemoryStream(Bytes.Of(new SvgWriter(), sheet))).Root!;
            XElement[] read = [.. root.Descendants().Where(e => e.Attribute("data-name") is not null)];
            Assert.Equal((name, sheet.Dimensions.Length), (name, read.Length));
            foreach ((PlotDimension dimension, XElement group) in sheet.Dimensions.Zip(read))
            {
                Assert.Equal(dimension.Name, group.Attribute("data-name")!.Value);
                Assert.Equal(dimension.Value, double.Parse(group.Attribute("data-value")!.Value, CultureInfo.InvariantCulture), Tolerance);
                Assert.StartsWith(Letters(dimension.Text), Letters(string.Concat(group.Descendants().Select(e => e.Attribute("aria-label")?.Value))), StringComparison.Ordinal);
            }

            string[] words = [.. root.Descendants().Select(e => e.Attribute("aria-label")?.Value).OfType<string>().Order(StringComparer.Ordinal)];
            Assert.Equal(sheet.Items.OfType<PlotText>().Select(t => t.Text).Order(StringComparer.Ordinal), words);
        }
    }

    [OutsideReaderFact(OutsideReader.Ezdxf)]
    public void Dxf_EveryShippedProfile_MeasuresEachDimensionsValueAndShowsItsWords()
    {
        JsonElement[] files = OutsideReader.ReadByEzdxf(Cases.Select(c => Bytes.Of(new DxfWriter(new DxfOptions()), c.Sheet)));
        foreach (((string name, PlotSheet sheet), JsonElement found) in Cases.Zip(files))
        {
            PlotDimension[] expected = [.. sheet.Dimensions.Where(d => d.Kind is not (PlotDimensionKind.Note or PlotDimensionKind.ArcLength))];
            JsonElement[] read = [.. found.GetProperty("dimensions").EnumerateArray()];
            Assert.Equal((name, expected.Length), (name, read.Length));
            foreach ((PlotDimension dimension, JsonElement one) in expected.Zip(read))
            {
                bool angle = dimension.Kind == PlotDimensionKind.Angle;
                double value = sheet.Unit == SheetUnit.Inch && !angle ? dimension.Value / 25.4 : dimension.Value;
                Assert.Equal(value, one.GetProperty("measured").GetDouble() * (angle ? 1 : one.GetProperty("factor").GetDouble()), 1e-6);
                Assert.StartsWith(Letters(dimension.Text), Letters(string.Concat(one.GetProperty("drawn").EnumerateArray().Select(t => t.GetString()))), StringComparison.Ordinal);
            }

            string all = Letters(string.Concat(Strings(found)));
            int signs = sheet.Items.OfType<PlotText>().Sum(t => Letters(t.Text).Length);
            Assert.Equal((name, signs), (name, all.Length));
        }
    }

    private static IEnumerable<string> Strings(JsonElement found) =>
        found.GetProperty("texts").EnumerateArray().Select(t => t.GetString()!)
            .Concat(found.GetProperty("dimensions").EnumerateArray().SelectMany(d => d.GetProperty("drawn").EnumerateArray().Select(t => t.GetString()!)));

    /// <summary>Letters and figures alone: signs have forms of their own in a DXF, blanks and line ends are set by the layout. The %% forms go first, or their letters would count. A frame or datum letter that hangs on a dimension follows its words.</summary>
    private static string Letters(string text) =>
        string.Concat(text.Replace("%%c", "", StringComparison.Ordinal).Replace("%%d", "", StringComparison.Ordinal).Replace("%%p", "", StringComparison.Ordinal).Where(c => char.IsAsciiLetterOrDigit(c) && c != 'x'));
}
