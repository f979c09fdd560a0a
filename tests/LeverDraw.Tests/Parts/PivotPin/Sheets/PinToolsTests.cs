using System.Collections.Immutable;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Parts.PivotPin.Sheets;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Parts.PivotPin.Sheets;

public class PinToolsTests
{
    // 3/0: .125 in; .125 − .75/48 = .1094 in; 2/0: .141 and .1254 in. Drills a tenth of a millimetre under: 2.678 mm = .1054 in, #37 (.1040 in = 2.642 mm); 3.0845 mm = .1214 in, #31 (.1200 in = 3.048 mm). Lug 4.5 mm: 4.5 − 3.175/2 = 2.9125 and half the hole, 1.5875; 4.5 − 1.7907 = 2.7093: to hundredths, on the careful side.
    [Fact]
    public void Table_InchPin_ListsToolsAndNextOversize()
    {
        SheetTable table = Assert.Single(SheetMaker.Content("pins/middle", SheetMaker.Options("A4")).Tables);
        Assert.Equal(["PIN", "PIN'S LARGE\nEND ⌀", "PIN'S SMALL\nEND ⌀", "DRILL\nAT MOST", "TAPER\nREAMER", "WALL OF\nLUG LEFT", "AT LEAST\nHALF ⌀"], table.Columns.Select(c => c.Head));
        Assert.Equal(2, table.Rows.Length);
        Assert.Equal(["NO. 3/0", "3.175", "2.778", "#37 ⌀2.642", "NO. 3/0", "2.91", "1.59"], table.Rows[0].ToArray());
        Assert.Equal(["NO. 2/0\nNEXT OVERSIZE", "3.581", "3.185", "#31 ⌀3.048", "NO. 2/0", "2.70", "1.80"], table.Rows[1].ToArray());
    }

    // Large ends of the inch series, .125 − .109 = .016 in = 0.4064 mm; .141 − .125 likewise; .156 − .141 and .109 − .094 = .015 in = 0.381 mm. Both pins taper alike, so it is the same in the middle: the late lever's 2.8 then is 3.206, and 3/0 has 3.175 − 9.525/48 = 2.977 there.
    [Theory]
    [InlineData("pins/early", ShownUnits.Millimetres, "0.381 mm")]
    [InlineData("pins/middle", ShownUnits.Inches, ".0160 in")]
    [InlineData("pins/late", ShownUnits.MillimetresAndInches, "0.406 mm [.0160 in]")]
    [InlineData("pins/smallest", ShownUnits.Millimetres, "0.381 mm")]
    public void Notes_NextOversize_SayWhatTheLeversHoleMustBecome(string profile, ShownUnits units, string more) =>
        Assert.Contains("NEXT OVERSIZE: REAM THE LEVER'S HOLE TOO, " + more + " OVER ITS LIMITS, A TAPERED ONE WITH THE TABLE'S REAMER: SAME CLEARANCE. WALL ROUND IT AT LEAST HALF ITS DIAMETER.", SheetMaker.Content(profile, SheetMaker.Options("A4", units)).Notes);

    // The largest pin of the inch series, number 14, has none above it.
    [Fact]
    public void MoreThanOwn_LargestPinOrNoSeries_IsNull()
    {
        ValueBag values = new ValueBag().With(PinFields.Series, PinFields.Inch).With(PinFields.Number, "14").With(PinFields.Length, 60);
        Assert.Null(PinTools.MoreThanOwn(PinPart.Build(values).Value!));
        Assert.Null(PinTools.MoreThanOwn(SheetMaker.Pin("pins/rare")));
    }

    [Fact]
    public void Table_FreePin_IsNotThere() => Assert.Empty(SheetMaker.Content("pins/rare", SheetMaker.Options("A4")).Tables);

    // 0.5/48 and 1.6/48 (trade notes 3.4: 1/16 in of drive is 0.033 mm).
    [Fact]
    public void Notes_TaperPin_SayHowHardItGrips() =>
        Assert.Contains("DRIVEN HOME IT GRIPS BY 0.01 TO 0.033 mm ON DIAMETER; MORE THAN 0.035 MAY SPLIT A LUG.", string.Join('\n', SheetMaker.Content("pins/early", SheetMaker.Options("A4")).Notes), StringComparison.Ordinal);

    // 0.0104167 and 0.033333 mm are .00041 and .00131 in; 0.035 is .00138, cut off in the fifth decimal: with four it would read as the greatest grip.
    [Theory]
    [InlineData(ShownUnits.Inches, "DRIVEN HOME IT GRIPS BY .0004 TO .0013 in ON DIAMETER; MORE THAN .00137 MAY SPLIT A LUG.")]
    [InlineData(ShownUnits.MillimetresAndInches, "DRIVEN HOME IT GRIPS BY 0.01 TO 0.033 mm [.0004 TO .0013 in] ON DIAMETER; MORE THAN 0.035 [.00137] MAY SPLIT A LUG.")]
    [InlineData(ShownUnits.MillimetresAndInches, "REAM THE LUGS TO SUIT EACH PIN: STOP WHEN THE PIN PUSHED IN BY HAND STANDS 0.5 TO 1.6 mm [.020 TO .062 in] SHORT OF HOME (ENDS EQUALLY PROUD).")]
    public void Notes_OtherUnits_ConvertBothEndsOfARange(ShownUnits units, string note) =>
        Assert.Contains(note, string.Join('\n', SheetMaker.Content("pins/early", SheetMaker.Options("A4", units)).Notes), StringComparison.Ordinal);

    [Fact]
    public void Notes_TaperPin_SayHowItIsChecked()
    {
        ImmutableArray<string> notes = SheetMaker.Content("pins/middle", SheetMaker.Options("A4")).Notes;
        Assert.Contains("SIZES IN ROUND BRACKETS, THE CONE'S IN ITS END PLANES, ARE NOT CHECKED. BOXED ARE EXACT.", notes);
        Assert.Contains("CHECK ⌀ IN GAUGE PLANE, TAPER BY BLUE IN RING OR REAMED HOLE: BEARING AT LEAST 75 %.", notes);
    }

    // 3.448 to 3.460 in S7 (ISO 286-2: −15/−27 µm), 3.433 to 3.445; a tenth under 3.433 is .1312 in: #30 (.1285 in = 3.264 mm).
    [Fact]
    public void Notes_ParallelPin_GiveTheLugsHole()
    {
        ImmutableArray<string> notes = SheetMaker.Content("pins/rare", SheetMaker.Options("A4")).Notes;
        Assert.Contains("PARALLEL PIN, HELD BY ITS FIT. HOLES IN THE PLANE'S LUGS, REAMED IN LINE: ⌀3.46 S7 (3.433 / 3.445), DRILL #30 ⌀3.264 AT MOST.", notes);
        Assert.Contains("IT GRIPS BY 0.003 TO 0.027 mm ON DIAMETER; MORE THAN 0.035 MAY SPLIT A LUG. BOTH ENDS EQUALLY PROUD.", notes);
    }

    // Walls 2.9125 and 2.7093 mm are .11466 and .10667 in, cut off; 1.5875 and 1.7907 mm are .0625 and .0705 in, rounded up.
    [Fact]
    public void Table_InBothUnits_GivesEveryNumberTwice()
    {
        SheetTable table = Assert.Single(SheetMaker.Content("pins/middle", SheetMaker.Options("A4", ShownUnits.MillimetresAndInches)).Tables);
        Assert.Equal(["NO. 3/0", "3.175\n[.1250]", "2.778\n[.1094]", "#37 ⌀2.642\n[.1040]", "NO. 3/0", "2.91\n[.114]", "1.59\n[.063]"], table.Rows[0].ToArray());
        Assert.Equal(["NO. 2/0\nNEXT OVERSIZE", "3.581\n[.1410]", "3.185\n[.1254]", "#31 ⌀3.048\n[.1200]", "NO. 2/0", "2.70\n[.106]", "1.80\n[.071]"], table.Rows[1].ToArray());
    }

    [Fact]
    public void Table_OnTheSheet_IsDrawn()
    {
        string[] words = [.. SheetMaker.Draw("pins/middle", SheetMaker.Options("A4")).Items.OfType<LeverDraw.Drafting.Plotting.PlotText>().Select(t => t.Text)];
        Assert.Contains("NEXT OVERSIZE", words);
        Assert.Contains("TOOLS FOR THE LUGS' HOLES, REAMED IN LINE. EDGE 4.5 FROM AXIS", words);
    }

    // 2 − 3.175/2 = 0.4125: less than half the hole, 1.5875.
    [Fact]
    public void Table_LugTooNarrow_SaysTooThin()
    {
        ValueBag values = new ValueBag().With(PinFields.Series, PinFields.Inch).With(PinFields.Number, "3/0").With(PinFields.Length, 19.05).With(PinFields.LugEdgeDistance, 2);
        Assert.Equal("0.41\nTOO THIN", PinTools.Of(PinPart.Build(values).Value!, new DimensionText(ShownUnits.Millimetres))!.Rows[0][5]);
    }

    // 1:50 over 20 mm is 0.4 (ISO 2339: named by the small end; 4 follows 3); no lug given, no wall said. Metric drills of 3 and 4 less 0.1; equal decimals in a column.
    [Fact]
    public void Table_MetricPin_NamesTheSmallEnd()
    {
        ValueBag values = new ValueBag().With(PinFields.Series, PinFields.Metric).With(PinFields.SmallEnd, 3).With(PinFields.Length, 20);
        SheetTable table = PinTools.Of(PinPart.Build(values).Value!, new DimensionText(ShownUnits.Millimetres))!;
        Assert.Equal(5, table.Columns.Length);
        Assert.Equal(["3 × 20", "3.4", "3", "⌀2.9", "1:50"], table.Rows[0].ToArray());
        Assert.Equal(["4 × 20\nNEXT OVERSIZE", "4.4", "4", "⌀3.9", "1:50"], table.Rows[1].ToArray());
    }
}
