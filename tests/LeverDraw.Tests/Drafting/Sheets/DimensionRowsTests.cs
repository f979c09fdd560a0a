using LeverDraw.Drafting.Plotting;
using LeverDraw.Tests.Support;
using LeverDraw.Drafting.Sheets;

namespace LeverDraw.Tests.Drafting.Sheets;

/// <summary>Bars on how dimensions stand beside each other on the five shipped levers, A4, A3, letter and tabloid in millimetres, inches and both: 60 sheets, measured on the finished ink (docs/adr/0006-layout.md).</summary>
public class DimensionRowsTests
{
    private static readonly string[] Papers = ["A3", "A4", "letter", "tabloid"];

    /// <summary>42 before it was priced.</summary>
    [Fact]
    public void Compose_ShippedLever_NoNumberStandsInAnotherDimensionsSpan() => AssertAtMost(0, DimensionRows.Claimed);

    /// <summary>38 before; 6 while arms' corners were pointed at through the arms, which left the row below them free; 14 while cutting planes' ends lay on extension lines. Most are in both units, where a number is longer than its line: inside, it would stand in the longer one's span.</summary>
    [Fact]
    public void Compose_ShippedLever_ShorterDimensionsStandMostlyInside() => AssertAtMost(16, DimensionRows.OutsideLonger);

    /// <summary>On every sheet before: the thickness is dimensioned beyond the tip, not across the flanks.</summary>
    [Fact]
    public void Compose_ShippedLever_TongueThicknessMakesNoSliverWithAFlank() =>
        AssertAtMost(0, sheet => LineSlivers.Of(sheet).Where(s => s.StartsWith("tongue.thickness", StringComparison.Ordinal)));

    private static void AssertAtMost(int most, Func<PlotSheet, IEnumerable<string>> faults)
    {
        string[] found =
        [
            .. from lever in SheetMaker.Levers
               from paper in Papers
               from units in (ShownUnits[])[ShownUnits.Millimetres, ShownUnits.Inches, ShownUnits.MillimetresAndInches]
               from fault in faults(SheetMaker.Draw(lever, SheetMaker.Options(paper, units)))
               select $"{lever} {paper} {units}: {fault}",
        ];
        Assert.True(found.Length <= most, string.Join("\n", found));
    }
}
