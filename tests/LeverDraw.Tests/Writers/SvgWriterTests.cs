using System.Globalization;
using System.Xml.Linq;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Writers.Svg;

namespace LeverDraw.Tests.Writers;

public class SvgWriterTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";
    private static readonly PlotSheet Sheet = SampleSheets.Everything();

    [Fact]
    public void Write_Root_IsTheSheetInMillimetres()
    {
        XElement root = Read(Sheet);
        Assert.Equal(Svg + "svg", root.Name);
        Assert.Equal(("297mm", "210mm", "0 0 297 210"), ((string?)root.Attribute("width"), (string?)root.Attribute("height"), (string?)root.Attribute("viewBox")));
        Assert.Equal(Sheet.Title, (string?)root.Element(Svg + "title"));
    }

    [Fact]
    public void Write_Elements_AreOnlyInkAndGroups()
    {
        string[] names = [.. Read(Sheet).DescendantsAndSelf().Select(e => e.Name.LocalName).Distinct().Order(StringComparer.Ordinal)];
        Assert.Equal(["circle", "g", "path", "svg", "title"], names);
    }

    [Fact]
    public void Write_Attributes_ReferToNothingOutside()
    {
        foreach (XAttribute attribute in Read(Sheet).DescendantsAndSelf().Attributes().Where(a => !a.IsNamespaceDeclaration))
        {
            Assert.DoesNotContain("href", attribute.Name.LocalName, StringComparison.OrdinalIgnoreCase);
            Assert.False(attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
            Assert.DoesNotContain("url(", attribute.Value, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public void Write_EachDimension_IsOneGroupWithItsFacts()
    {
        XElement[] groups = [.. Read(Sheet).Elements(Svg + "g").Where(g => g.Attribute("data-name") is not null)];
        Assert.Equal(Sheet.Dimensions.Length, groups.Length);
        foreach ((PlotDimension dimension, XElement group) in Sheet.Dimensions.Zip(groups))
        {
            Assert.Equal("dimension", (string?)group.Attribute("class"));
            Assert.Equal(dimension.Name, (string?)group.Attribute("data-name"));
            Assert.Equal(dimension.Text, (string?)group.Attribute("data-text"));
            Assert.Equal(dimension.Value, double.Parse((string)group.Attribute("data-value")!, CultureInfo.InvariantCulture));
            Assert.Equal(dimension.Kind == PlotDimensionKind.Angle ? "rad" : null, (string?)group.Attribute("data-unit"));
            Assert.Equal(dimension.Text.Split('\n'), group.Elements(Svg + "g").Select(g => (string)g.Attribute("aria-label")!));
        }
    }

    [Fact]
    public void Write_EachText_IsOneLetteringGroupNamedByIt()
    {
        string[] labels = [.. Read(Sheet).Descendants(Svg + "g").Where(g => (string?)g.Attribute("class") == "lettering").Select(g => (string)g.Attribute("aria-label")!)];
        Assert.Equal(Sheet.Items.OfType<PlotText>().Select(t => t.Text).Order(StringComparer.Ordinal), labels.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Write_ControlCharacters_AreReplaced()
    {
        XElement root = Read(Sheet with { Title = "a\u0001b\uD800c" });
        Assert.Equal("a\uFFFDb\uFFFDc", (string?)root.Element(Svg + "title"));
    }

    [Fact]
    public void Write_EveryRole_HasItsClassOfThePromise()
    {
        string[] classes = [.. Read(Sheet).Elements(Svg + "g").Select(g => (string)g.Attribute("class")!).Distinct()];
        string[] promised = ["outline", "hidden", "centre", "phantom", "section", "hatch", "dimension", "lettering", "frame", "titleblock", "parting", "allowance", "overlay-a", "overlay-b"];
        Assert.Empty(promised.Except(classes, StringComparer.Ordinal));
    }

    [Fact]
    public void Write_ThreeQuarterArc_KeepsItsRadiusInPieces()
    {
        // By hand: the keyhole's head has radius 10 on paper about (60, 90); the y axis turns, so its top is at 210 − 100 = 110.
        string path = Read(Sheet).Elements(Svg + "g").First(g => (string?)g.Attribute("class") == "outline").Elements(Svg + "path").Select(p => (string)p.Attribute("d")!).First();
        Assert.Equal("M67.0711 127.0711A10 10 0 0 0 60 110A10 10 0 0 0 52.9289 127.0711L52.9289 150L67.0711 150L67.0711 127.0711Z", path);
    }

    [Fact]
    public void Write_UnknownOwner_Throws() =>
        Assert.Throws<ArgumentException>(() => Bytes.Of(new SvgWriter(), Sheet with { Dimensions = [] }));

    private static XElement Read(PlotSheet sheet) => XDocument.Load(new MemoryStream(Bytes.Of(new SvgWriter(), sheet))).Root!;
}
