using System.Globalization;
using System.Text.RegularExpressions;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Geometry;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Drafting.Sheets;

/// <summary>What a dimension points at, what it is worth and what it says are the same thing.</summary>
public partial class DimensionMeaningTests
{
    public static TheoryData<string> Profiles => [.. SheetMaker.Profiles];

    public static TheoryData<string> WithFoundry => [.. SheetMaker.Profiles, .. SheetMaker.Foundry];

    [Theory]
    [MemberData(nameof(WithFoundry))]
    public void Points_MeasuredOnPaper_GiveTheValue(string profile)
    {
        PlotSheet sheet = SheetMaker.Draw(profile, SheetMaker.Options("A3"));
        foreach (PlotDimension dimension in sheet.Dimensions.Where(d => d.Kind != PlotDimensionKind.Note))
        {
            double scale = sheet.Views.Single(v => v.Id == dimension.View).ToPaper.Scale;
            Assert.True(Math.Abs(Measured(dimension, scale) - dimension.Value) < 1e-9, dimension.Name + " is worth " + Text(dimension.Value) + ", measures " + Text(Measured(dimension, scale)));
        }
    }

    /// <summary>An arrow touches ink of its own view: what is pointed at is drawn.</summary>
    [Theory]
    [MemberData(nameof(WithFoundry))]
    public void Points_OfRadiiAndDiameters_LieOnDrawnArcsOfThatRadius(string profile)
    {
        PlotSheet sheet = SheetMaker.Draw(profile, SheetMaker.Options("A3"));
        foreach (PlotDimension dimension in sheet.Dimensions.Where(d => d.Kind is PlotDimensionKind.Radius or PlotDimensionKind.Diameter))
        {
            double radius = dimension.Value * sheet.Views.Single(v => v.Id == dimension.View).ToPaper.Scale / (dimension.Kind == PlotDimensionKind.Diameter ? 2 : 1);
            Point2D tip = dimension.Points[^1];
            IEnumerable<ArcEdge> arcs = sheet.Items.Where(i => i.View == dimension.View && i.Owner is null).SelectMany(Edges).OfType<ArcEdge>();
            Assert.True(arcs.Any(a => Math.Abs(a.Radius - radius) < 1e-6 && Math.Abs((tip - a.Centre).Length - radius) < 1e-6), dimension.Name + " points at no arc of its radius");
        }
    }

    [Theory]
    [MemberData(nameof(Profiles))]
    public void Text_FirstNumber_IsTheValueRounded(string profile)
    {
        foreach (ShownUnits units in Enum.GetValues<ShownUnits>())
        {
            PlotSheet sheet = SheetMaker.Draw(profile, SheetMaker.Options("A3", units));
            foreach (PlotDimension dimension in sheet.Dimensions)
                Assert.True(Says(dimension, sheet.Unit), $"{dimension.Name} is worth {Text(dimension.Value)}, says \"{dimension.Text}\"");
        }
    }

    /// <summary>Both units, where both are lettered, are roundings of one value: millimetres to 0.001, inches to the decimals shown, with limits within the millimetres shown.</summary>
    [Theory]
    [MemberData(nameof(Profiles))]
    public void Text_SecondUnit_IsTheValueRounded(string profile)
    {
        PlotSheet sheet = SheetMaker.Draw(profile, SheetMaker.Options("A3", ShownUnits.MillimetresAndInches));
        int seen = 0;
        foreach (PlotDimension dimension in sheet.Dimensions)
        {
            Match inch = Bracketed().Match(dimension.Text);
            if (!inch.Success)
                continue;
            seen++;
            string number = inch.Groups[1].Value;
            Assert.True(IsToleranced(dimension.Text) ? IsNear(number, dimension.Value) : IsRounding(number, dimension.Value / 25.4, eitherWay: false), dimension.Text);
            Assert.True(number[0] != '0' && DecimalsOf(number) >= 3, dimension.Text);
        }

        Assert.True(seen >= 3);
    }

    private static double Measured(PlotDimension d, double scale) => d.Kind switch
    {
        PlotDimensionKind.Linear => Math.Abs((d.Points[1] - d.Points[0]).Dot(Vector2D.FromAngle(d.Direction))) / scale,
        PlotDimensionKind.Diameter or PlotDimensionKind.Radius => (d.Points[1] - d.Points[0]).Length / scale,
        PlotDimensionKind.Angle => Math.Atan2((d.Points[1] - d.Points[0]).Cross(d.Points[2] - d.Points[0]), (d.Points[1] - d.Points[0]).Dot(d.Points[2] - d.Points[0])),
        _ => throw new ArgumentOutOfRangeException(nameof(d)),
    };

    private static bool Says(PlotDimension dimension, SheetUnit unit)
    {
        string text = dimension.Text;
        if (TaperSign().Match(text) is { Success: true } taper)
            return Math.Abs(dimension.Value - (1 / double.Parse(taper.Groups[1].Value, CultureInfo.InvariantCulture))) < 1e-12;
        if (Degrees().Match(text) is { Success: true } degrees)
            return decimal.Parse(degrees.Groups[1].Value, CultureInfo.InvariantCulture) == Rounded(dimension.Value * 180 / Math.PI, 2);
        Match number = FirstNumber().Match(text);
        if (!number.Success)
            return false;
        string shown = number.Groups[1].Value;
        // A size taken over from inches may lie a micrometre within its limits.
        bool inwards = IsToleranced(text);
        return (unit == SheetUnit.Inch
                ? IsRounding(shown, dimension.Value / 25.4, inwards)
                : decimal.Parse(shown, CultureInfo.InvariantCulture) == Rounded(dimension.Value, 3) || (inwards && Math.Abs((double)decimal.Parse(shown, CultureInfo.InvariantCulture) - dimension.Value) < 1e-3))
            && DecimalsOf(shown) == dimension.Decimals
            && (unit == SheetUnit.Inch ? DecimalsOf(shown) >= 3 : DecimalsOf(shown) <= 3);
    }

    private static bool IsToleranced(string text) => text.Contains('/', StringComparison.Ordinal) || text.Contains('±', StringComparison.Ordinal);

    /// <summary>To the nearest; a size with limits may be rounded the other way so as to lie within them.</summary>
    private static bool IsRounding(string shown, double exact, bool eitherWay)
    {
        decimal number = decimal.Parse(shown, CultureInfo.InvariantCulture);
        return number == Rounded(exact, DecimalsOf(shown)) || (eitherWay && Math.Abs((double)number - exact) < Math.Pow(10, -DecimalsOf(shown)));
    }

    /// <summary>Inches beside millimetres that were rounded inwards lie within those: off by a micrometre and their own last place at the most.</summary>
    private static bool IsNear(string inches, double millimetres) =>
        Math.Abs((double.Parse(inches, CultureInfo.InvariantCulture) * 25.4) - millimetres) < 0.001 + (25.4 * Math.Pow(10, -DecimalsOf(inches)));

    // From the fifteen figures a double surely holds: 10.75 that came out a last bit short is still 10.75.
    private static decimal Rounded(double value, int decimals) =>
        Math.Round(decimal.Parse(value.ToString("F12", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture), decimals, MidpointRounding.AwayFromZero);

    private static int DecimalsOf(string number) => number.Contains('.', StringComparison.Ordinal) ? number.Length - number.IndexOf('.', StringComparison.Ordinal) - 1 : 0;

    private static IEnumerable<Edge> Edges(PlotItem item) => item switch
    {
        PlotStroke stroke => [stroke.Edge],
        PlotLoop loop => loop.Contour.Edges,
        _ => [],
    };

    private static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^\(?(?:NECK )?(?:\d+× )?[⌀R]?(\d*\.?\d+)")]
    private static partial Regex FirstNumber();

    [GeneratedRegex(@"\[(\d*\.?\d+)")]
    private static partial Regex Bracketed();

    [GeneratedRegex(@"^[▷◁] 1:(\d+)$")]
    private static partial Regex TaperSign();

    [GeneratedRegex(@"^(?:\d+× )?(\d+(?:\.\d+)?)°")]
    private static partial Regex Degrees();
}
