using System.Globalization;
using System.Text.RegularExpressions;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Profiles;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Drafting.Sheets;

/// <summary>Limits as lettered on the shipped sheets.</summary>
public partial class StatedLimitsTests
{
    public static TheoryData<string> Levers => [.. SheetMaker.Levers];

    // Hole zones: lower deviation 0; IT7, IT8, IT9 of ISO 286-1 typed from table 1: to 3 mm 10, 14, 25; over 3 to 6 mm 12, 18, 30 µm.
    [Theory]
    [InlineData("levers/early", "⌀3.423 H7 (3.423 / 3.435)")]
    [InlineData("levers/middle", "⌀3.057 H8 (3.057 / 3.075)")]
    [InlineData("levers/late", "⌀2.8 H9 (2.800 / 2.825) THROUGH")]
    [InlineData("levers/smallest", "⌀2.36 H9 (2.360 / 2.385) THROUGH")]
    [InlineData("levers/rare", "⌀3.5 H8 (3.500 / 3.518) THROUGH")]
    public void HoleNote_ShippedLever_GivesTheZonesLimits(string profile, string expected)
    {
        PlotSheet sheet = SheetMaker.Draw(profile, SheetMaker.Options("A3"));
        Assert.Contains(expected.Replace(" THROUGH", "", StringComparison.Ordinal), Hole(sheet), StringComparison.Ordinal);
        Assert.Equal(expected.EndsWith("THROUGH", StringComparison.Ordinal), Hole(sheet).Contains("THROUGH", StringComparison.Ordinal));
    }

    // Worked by hand: limits over 25.4, the lower rounded up and the upper down; a fifth decimal where four lose more than a tenth.
    [Theory]
    [InlineData("levers/early", "⌀.13477 H7 (.13477 / .13523)")]
    [InlineData("levers/middle", "⌀.12036 H8 (.12036 / .12106)")]
    [InlineData("levers/late", "⌀.11024 H9 (.11024 / .11122)")]
    [InlineData("levers/smallest", "⌀.09292 H9 (.09292 / .09389)")]
    [InlineData("levers/rare", "⌀.1378 H8 (.1378 / .1385)")]
    public void HoleNote_InInches_StaysInsideTheZone(string profile, string expected) =>
        Assert.Contains(expected, Hole(SheetMaker.Draw(profile, SheetMaker.Options("A3", ShownUnits.Inches))), StringComparison.Ordinal);

    [Theory]
    [MemberData(nameof(Levers))]
    public void InchLimits_OfEverySizeWithATolerance_NeverLeaveTheMillimetreLimits(string profile)
    {
        LeverSizes sizes = SheetMaker.Lever(profile).Sizes;
        int seen = 0;
        foreach (ShownUnits units in (ShownUnits[])[ShownUnits.Inches, ShownUnits.MillimetresAndInches, ShownUnits.InchesAndMillimetres])
        {
            PlotSheet sheet = SheetMaker.Draw(profile, SheetMaker.Options("A3", units));
            foreach (PlotDimension dimension in sheet.Dimensions)
            {
                if (LeverFields.All.OfType<SizeField>().FirstOrDefault(f => f.Name == dimension.Name) is not { } field || sizes.Find(field) is not { Tolerance: not null } size)
                    continue;
                // With bosses the tolerance stands on the width over them.
                if (field == LeverFields.HeadWidth && SheetMaker.Lever(profile).Boss is not null)
                    continue;
                (double min, double max) = Stated(size);
                (double low, double high) = ShownInches(dimension);
                Assert.True(low >= min - 1e-9 && high <= max + 1e-9 && low < high, dimension.Name + ": " + dimension.Text + " leaves the stated limits");
                seen++;
            }
        }

        Assert.True(seen >= 3 * 6);
    }

    private static (double Min, double Max) Stated(SizeValue size) => size.Tolerance switch
    {
        DeviationTolerance d => (size.Millimetres + d.Lower.Millimetres, size.Millimetres + d.Upper.Millimetres),
        // The same five zones as above.
        ZoneTolerance { Code: "H7" } when size.Millimetres > 3 => (size.Millimetres, size.Millimetres + 0.012),
        ZoneTolerance { Code: "H8" } when size.Millimetres > 3 => (size.Millimetres, size.Millimetres + 0.018),
        ZoneTolerance { Code: "H9" } when size.Millimetres <= 3 => (size.Millimetres, size.Millimetres + 0.025),
        _ => throw new InvalidOperationException("A zone this test does not know."),
    };

    /// <summary>The inch limits that a text gives, in millimetres: both limits in brackets, or a nominal with deviations.</summary>
    private static (double Low, double High) ShownInches(PlotDimension dimension)
    {
        if (InchLimits().Match(dimension.Text) is { Success: true } limits)
            return (Number(limits.Groups[1].Value) * 25.4, Number(limits.Groups[2].Value) * 25.4);
        Match shown = InchDeviations().Match(dimension.Text);
        Assert.True(shown.Success, dimension.Name + " shows no inch limits: " + dimension.Text);
        double nominal = Number(shown.Groups[1].Value);
        return shown.Groups[2].Success
            ? ((nominal - Number(shown.Groups[2].Value)) * 25.4, (nominal + Number(shown.Groups[2].Value)) * 25.4)
            : ((nominal + Number(shown.Groups[4].Value)) * 25.4, (nominal + Number(shown.Groups[3].Value)) * 25.4);
    }

    private static double Number(string text) => double.Parse(text.Replace('−', '-'), CultureInfo.InvariantCulture);

    private static string Hole(PlotSheet sheet) => sheet.Dimensions.Single(d => d.Name == "hole.diameter").Text;

    [GeneratedRegex(@"\((\.\d{4,}) / (\.\d{4,})\)")]
    private static partial Regex InchLimits();

    [GeneratedRegex(@"(\.\d{4,}) (?:±(\.\d{4,})|([+−]\.\d{4,}|0)/([+−]\.\d{4,}|0))")]
    private static partial Regex InchDeviations();
}
