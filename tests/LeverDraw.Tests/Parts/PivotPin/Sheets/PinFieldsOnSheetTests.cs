using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Geometry;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Parts.PivotPin.Sheets;
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
        Assert.Equal("(⌀" + largeEnd + "0)", large.Text);
        double length = sheet.Dimensions.Single(d => d.Name == "pin.length").Value;
        Assert.Equal(large.Value - (length / 48), sheet.Dimensions.Single(d => d.Name == "pin.small_end").Value, 9);
        Assert.Equal("◁ 1:48", sheet.Dimensions.Single(d => d.Name == "pin.taper").Text);
        Assert.Contains(SheetMaker.Content(profile, options).Notes, n => n.StartsWith("INCH TAPER PIN NO. " + number + ":", StringComparison.Ordinal));
    }

    // .141 − .375/48 = .1331875 and .0010 more (precision class, ASME B18.8.2, from memory): rounded inwards; 3.3829625 and 3.4083625 mm. 5/0: .094 − .3125/48 = .0874896.
    [Theory]
    [InlineData("pins/early", ShownUnits.Inches, "⌀.1332 / .1341", ".375")]
    [InlineData("pins/early", ShownUnits.Millimetres, "⌀3.383 / 3.408", "9.525")]
    [InlineData("pins/middle", ShownUnits.MillimetresAndInches, "⌀2.977 / 3.001\n[.11721 / .11814]", "9.525 [.375]")]
    [InlineData("pins/smallest", ShownUnits.Inches, "⌀.0875 / .0884", ".3125")]
    public void TaperPin_IsSizedByLimitsInAGaugePlaneThatABoxedSizePlaces(string profile, ShownUnits units, string limits, string plane)
    {
        ImmutableArray<Annotation> all = SheetMaker.Content(profile, SheetMaker.Options("A4", units)).Front.Annotations;
        Label gauge = all.Single(a => a.Name == "pin.gauge_diameter").Label, place = all.Single(a => a.Name == "pin.gauge_plane").Label;
        Assert.Equal(limits, gauge.ToString());
        Assert.Equal(plane, place.ToString());
        Assert.True(place.Boxed);
        // Exact too, its sign before the box (ISO 3040, from memory).
        Label ratio = all.Single(a => a.Name == "pin.taper").Label;
        Assert.Equal((true, "1:48"), (ratio.Boxed, ratio.ToString()[ratio.BoxedFrom..]));
        Assert.False(gauge.IsReference || place.IsReference);
        Assert.All(all.Where(a => a.Name is "pin.large_end" or "pin.small_end"), a => Assert.True(a.Label.IsReference));
    }

    /// <summary>One diameter is one number: on the view, as crown radius and in the table of tools.</summary>
    [Theory]
    [InlineData("pins/early", ShownUnits.Millimetres, "3.581", "3.185")]
    [InlineData("pins/early", ShownUnits.Inches, ".1410", ".1254")]
    [InlineData("pins/late", ShownUnits.Millimetres, "2.769", "2.372")]
    public void EndDiameters_OnViewAndInTable_AreTheSameNumbers(string profile, ShownUnits units, string large, string small)
    {
        SheetContent content = SheetMaker.Content(profile, SheetMaker.Options("A4", units));
        Assert.Equal("(⌀" + large + ")", content.Front.Annotations.Single(a => a.Name == "pin.large_end").Label.ToString());
        Assert.Equal("(⌀" + small + ")", content.Front.Annotations.Single(a => a.Name == "pin.small_end").Label.ToString());
        Assert.Equal([large, small], content.Tables[0].Rows[0].Skip(1).Take(2));
        if (units == ShownUnits.Millimetres)
            Assert.Equal("2× R" + large, content.Front.Annotations.Single(a => a.Name == "pin.crown_radius").Label.ToString());
    }

    [Theory]
    [MemberData(nameof(Pins))]
    public void Sheet_AnyPin_SaysTextureOfEndsAndStateOfEdges(string profile)
    {
        SheetContent content = SheetMaker.Content(profile, SheetMaker.Options("A4"));
        Assert.Equal(new GeneralSigns(new TextureSign(TextureProcess.Removal, "Ra 3.2"), new EdgeSign("−0.05", "−0.2")), content.Signs);
        Assert.Equal("Ra 0.8", content.Front.Annotations.OfType<SurfaceTexture>().Single().Sign.Text);
        Assert.Contains(content.Notes, n => n.StartsWith("EDGE SIGN: ALL EDGES. Ra IN MICROMETRES.", StringComparison.Ordinal));
    }

    // 0.00197 and 0.00787 in, inwards.
    [Fact]
    public void GeneralSigns_SideUnsaid_HaveNoOthersInBrackets()
    {
        ValueBag values = new ValueBag().With(PinFields.Series, PinFields.Inch).With(PinFields.Number, "2/0").With(PinFields.Length, 19.05).With(PinFields.SideTexture, 0).With(PinFields.EndTexture, 0);
        GeneralSigns signs = PinSymbols.General(PinPart.Build(values).Value!, new DimensionText(ShownUnits.Inches));
        Assert.False(signs.HasOthers);
        Assert.Equal(new TextureSign(TextureProcess.Removal), signs.Rest);
        Assert.Equal(new EdgeSign("−.002", "−.007"), signs.Edges);
    }

    // ISO 286-2: h10 of 3 mm is 0/−40 µm; 3 + 10/50 = 3.2 in the middle of 20 mm.
    [Fact]
    public void MetricPin_SaysItsZoneAndItsLimitsInTheGaugePlane()
    {
        ValueBag values = new ValueBag().With(PinFields.Series, PinFields.Metric).With(PinFields.SmallEnd, 3).With(PinFields.Length, 20);
        SheetContent content = PinSheet.Content(PinPart.Build(values).Value!, SheetMaker.Around("pin", values), SheetMaker.Options("A4"));
        Assert.Equal("⌀3.160 / 3.200", content.Front.Annotations.Single(a => a.Name == "pin.gauge_diameter").Label.ToString());
        Assert.Contains("CHECK ⌀ IN GAUGE PLANE, TAPER BY BLUE IN RING OR REAMED HOLE: BEARING AT LEAST 75 %. ⌀ HAS THE TOLERANCE OF THE SMALL END, h10.", content.Notes);
    }

    /// <summary>The frame is drawn round the ratio alone.</summary>
    [Fact]
    public void Ratio_OnTheSheet_StandsInItsBoxAndTheSignBeforeIt()
    {
        PlotSheet sheet = SheetMaker.Draw("pins/early", SheetMaker.Options("A4"));
        PlotText sign = sheet.Items.OfType<PlotText>().Single(t => t.Text == "◁"), ratio = sheet.Items.OfType<PlotText>().Single(t => t.Text == "1:48");
        double left = sheet.Items.OfType<PlotStroke>().Where(s => s.Owner == ratio.Owner && s.Edge is LineEdge { Start: var a, End: var b } && Math.Abs(a.X - b.X) < 1e-9).Min(s => s.Edge.Start.X);
        Assert.InRange(left, sign.Anchor.X + sign.Width, ratio.Anchor.X);
    }

    [Fact]
    public void FlatPin_GaugedAtItsLargeEnd_HasItsSizeThere()
    {
        ValueBag values = new ValueBag().With(PinFields.Series, PinFields.Inch).With(PinFields.Number, "2/0").With(PinFields.Length, 19.05).With(PinFields.Ends, PinFields.Flat).With(PinFields.GaugePlane, 0);
        ImmutableArray<Annotation> all = PinAnnotations.Of(PinPart.Build(values).Value!, new DimensionText(ShownUnits.Inches));
        Assert.Equal("⌀.1410 +.0010/0", all.Single(a => a.Name == "pin.large_end").Label.ToString());
        Assert.DoesNotContain(all, a => a.Name is "pin.gauge_plane" or "pin.gauge_diameter");
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
        Assert.Equal(profile != "pins/rare", notes.Contains("STANDS 0.5 TO 1.6 mm SHORT OF HOME (ENDS EQUALLY PROUD).", StringComparison.Ordinal));
    }
}
