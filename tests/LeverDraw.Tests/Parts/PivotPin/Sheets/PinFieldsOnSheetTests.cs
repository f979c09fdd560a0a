using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Parts.PivotPin.Sheets;

public class PinFieldsOnSheetTests
{
    public static TheoryData<string> Pins => [.. SheetMaker.Profiles.Where(p => p.StartsWith("pins/", StringComparison.Ordinal))];

    // Large ends of the inch series, two sources: 2/0 .141, 3/0 .125, 4/0 .109, 5/0 .094 in; 1:48 gives the small ends.
    [Theory]
    [InlineData("pins/early", ".141", "2/0")]
    [InlineData("pins/middle", ".125", "3/0")]
    [InlineData("pins/late", ".109", "4/0")]
    [InlineData("pins/smallest", ".094", "5/0")]
    public void InchPin_ByNumber_HasItsLargeEnd(string profile, string largeEnd, string number)
    {
        SheetOptions options = SheetMaker.Options("A4", ShownUnits.Inches);
        PlotSheet sheet = SheetMaker.Draw(profile, options);
        PlotDimension large = sheet.Dimensions.Single(d => d.Name == "pin.large_end");
        // Precision class: +0.0010/0 in (ASME B18.8.2, from memory).
        Assert.Equal("⌀" + largeEnd + "0 +.0010/0", large.Text);
        double length = sheet.Dimensions.Single(d => d.Name == "pin.length").Value;
        Assert.Equal(large.Value - (length / 48), sheet.Dimensions.Single(d => d.Name == "pin.small_end").Value, 9);
        Assert.Equal("◁ 1:48", sheet.Dimensions.Single(d => d.Name == "pin.taper").Text);
        Assert.Contains(SheetMaker.Content(profile, options).Notes, n => n.StartsWith("INCH TAPER PIN NO. " + number + ":", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Pins))]
    public void Sheet_AnyPin_SaysEachSizeOnce(string profile)
    {
        Pin pin = SheetMaker.Pin(profile);
        PlotSheet sheet = SheetMaker.Draw(profile, SheetMaker.Options("A4"));
        Assert.Equal(sheet.Dimensions.Length, sheet.Dimensions.Select(d => d.Name).Distinct().Count());
        string[] expected = pin.Taper.IsParallel
            ? ["pin.chamfer", "pin.large_end", "pin.length"]
            : ["pin.crown_radius", "pin.gauge_diameter", "pin.gauge_plane", "pin.large_end", "pin.length", "pin.small_end", "pin.taper"];
        Assert.Equal(expected, sheet.Dimensions.Select(d => d.Name).Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Pins))]
    public void Notes_AnyPin_SayHowItIsDrivenAndCaution(string profile)
    {
        string notes = string.Join('\n', SheetMaker.Content(profile, SheetMaker.Options("A4")).Notes);
        Assert.Contains("SUPPORT THE LUG", notes, StringComparison.Ordinal);
        Assert.Equal(profile != "pins/rare", notes.Contains("DRIVE IN FROM THE RIGHT, DRIFT OUT FROM THE LEFT", StringComparison.Ordinal));
        Assert.Equal(profile != "pins/rare", notes.Contains("STANDS 0.5 TO 1.6 mm SHORT OF HOME. HOME: BOTH ENDS EQUALLY PROUD.", StringComparison.Ordinal));
    }
}
