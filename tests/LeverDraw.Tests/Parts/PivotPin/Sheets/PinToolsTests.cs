using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Parts.PivotPin.Sheets;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Parts.PivotPin.Sheets;

public class PinToolsTests
{
    // 3/0: .125 in; .125 − .75/48 = .1094 in; drill 7/64 and 1/8 (US Army table 3-1). 2/0: .141 and .1254 in. Lug 4.5 mm: 4.5 − 3.175/2 = 2.9125 and half the hole, 1.5875; 4.5 − 1.7907 = 2.7093: to hundredths, on the careful side.
    [Fact]
    public void Table_InchPin_ListsToolsAndNextOversize()
    {
        SheetTable table = Assert.Single(SheetMaker.Content("pins/middle", SheetMaker.Options("A4")).Tables);
        Assert.Equal(["PIN", "LARGE\nEND ⌀", "SMALL\nEND ⌀", "DRILL", "TAPER\nREAMER", "WALL OF\nLUG LEFT", "WALL\nAT LEAST"], table.Columns.Select(c => c.Head));
        Assert.Equal(2, table.Rows.Length);
        Assert.Equal(["NO. 3/0", "3.175", "2.778", "7/64\n(2.778)", "NO. 3/0", "2.91", "1.59"], table.Rows[0].ToArray());
        Assert.Equal(["NO. 2/0\nNEXT OVERSIZE", "3.581", "3.185", "1/8\n(3.175)", "NO. 2/0", "2.7", "1.8"], table.Rows[1].ToArray());
    }

    [Fact]
    public void Table_FreePin_IsNotThere() => Assert.Empty(SheetMaker.Content("pins/rare", SheetMaker.Options("A4")).Tables);

    // 0.5/48 and 1.6/48 (trade notes 3.4: 1/16 in of drive is 0.033 mm).
    [Fact]
    public void Notes_TaperPin_SayHowHardItGrips() =>
        Assert.Contains("DRIVEN THAT FAR IT GRIPS BY 0.01 TO 0.033 mm ON DIAMETER; MORE THAN 0.035 MAY SPLIT A LUG.", SheetMaker.Content("pins/early", SheetMaker.Options("A4")).Notes);

    [Fact]
    public void Table_OnTheSheet_IsDrawn()
    {
        string[] words = [.. SheetMaker.Draw("pins/middle", SheetMaker.Options("A4")).Items.OfType<LeverDraw.Drafting.Plotting.PlotText>().Select(t => t.Text)];
        Assert.Contains("NEXT OVERSIZE", words);
        Assert.Contains("HOLES IN THE PLANE'S LUGS, REAMED IN LINE", words);
    }

    // 2 − 3.175/2 = 0.4125: less than half the hole, 1.5875.
    [Fact]
    public void Table_LugTooNarrow_SaysTooThin()
    {
        ValueBag values = new ValueBag().With(PinFields.Series, PinFields.Inch).With(PinFields.Number, "3/0").With(PinFields.Length, 19.05).With(PinFields.LugEdgeDistance, 2);
        Assert.Equal("0.41\nTOO THIN", PinTools.Of(PinPart.Build(values).Value!, new DimensionText(ShownUnits.Millimetres))!.Rows[0][5]);
    }

    // 1:50 over 20 mm is 0.4 (ISO 2339: named by the small end; 4 follows 3); no lug given, no wall said.
    [Fact]
    public void Table_MetricPin_NamesTheSmallEnd()
    {
        ValueBag values = new ValueBag().With(PinFields.Series, PinFields.Metric).With(PinFields.SmallEnd, 3).With(PinFields.Length, 20);
        SheetTable table = PinTools.Of(PinPart.Build(values).Value!, new DimensionText(ShownUnits.Millimetres))!;
        Assert.Equal(5, table.Columns.Length);
        Assert.Equal(["3 × 20", "3.4", "3", "3", "1:50"], table.Rows[0].ToArray());
        Assert.Equal(["4 × 20\nNEXT OVERSIZE", "4.4", "4", "4", "1:50"], table.Rows[1].ToArray());
    }
}
