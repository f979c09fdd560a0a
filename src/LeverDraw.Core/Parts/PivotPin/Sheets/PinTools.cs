using System.Collections.Immutable;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Parts.PivotPin.Sheets;

/// <summary>The table of the holes in the plane's lugs: tools for this pin, and for the next larger one that cures a damaged hole.</summary>
internal static class PinTools
{
    /// <returns>Null for a pin of no series.</returns>
    public static SheetTable? Of(Pin pin, DimensionText text)
    {
        ImmutableArray<ImmutableArray<string>> rows = pin.Series == PinFields.Inch ? Inch(pin, text) : pin.Series == PinFields.Metric ? Metric(pin, text) : [];
        if (rows.IsEmpty)
            return null;
        ImmutableArray<TableColumn> columns = [new("PIN"), new("LARGE\nEND ⌀", 0.5), new("SMALL\nEND ⌀", 0.5), new("DRILL", 0.5), new("TAPER\nREAMER", 0.5)];
        if (pin.LugEdgeDistance is not null)
            columns = columns.Add(new("WALL OF\nLUG LEFT", 0.5)).Add(new("WALL\nAT LEAST", 0.5));
        return new SheetTable("HOLES IN THE PLANE'S LUGS, REAMED IN LINE", columns, rows);
    }

    private static ImmutableArray<ImmutableArray<string>> Inch(Pin pin, DimensionText text)
    {
        if (InchTaperPins.Numbered(pin.Designation) is not { IsGiven: true } own)
            return [];
        Answer<InchTaperPin> next = InchTaperPins.Above(own.Value);
        return next.IsGiven ? [Row(own.Value, string.Empty), Row(next.Value, "\nNEXT OVERSIZE")] : [Row(own.Value, string.Empty)];

        ImmutableArray<string> Row(InchTaperPin size, string words)
        {
            Answer<PinDrillChoice> drill = TaperPinChoice.Drill(size, pin.Length.Nominal);
            Answer<TaperPinReamer> reamer = TaperPinChoice.Reamer(size, pin.Length.Nominal);
            return
            [
                "NO. " + size.Number + words, text.Number(size.LargeEnd), text.Number(size.SmallEnd(pin.Length.Nominal)),
                drill.IsGiven ? drill.Value.Drill.Name + "\n(" + text.Number(drill.Value.Drill.Diameter) + ")" : "–",
                reamer.IsGiven ? "NO. " + reamer.Value.Number : DimensionText.TaperRatio(pin.Taper),
                .. Wall(pin, size.LargeEnd, text),
            ];
        }
    }

    private static ImmutableArray<ImmutableArray<string>> Metric(Pin pin, DimensionText text)
    {
        if (MetricTaperPins.WithSmallEnd(pin.SmallEnd) is not { IsGiven: true } own)
            return [];
        Answer<MetricTaperPin> next = MetricTaperPins.Above(own.Value);
        return next.IsGiven ? [Row(own.Value, string.Empty), Row(next.Value, "\nNEXT OVERSIZE")] : [Row(own.Value, string.Empty)];

        ImmutableArray<string> Row(MetricTaperPin size, string words)
        {
            Answer<Length> drill = MetricTwistDrills.NearestNotAbove(size.SmallEnd);
            Length large = size.LargeEnd(pin.Length.Nominal);
            return
            [
                text.Number(size.SmallEnd) + " × " + text.Number(pin.Length.Nominal) + words, text.Number(large), text.Number(size.SmallEnd),
                drill.IsGiven ? text.Number(drill.Value) : "–", DimensionText.TaperRatio(pin.Taper), .. Wall(pin, large, text),
            ];
        }
    }

    /// <summary>What is left between hole and edge of the lug, and the half diameter that should be (common practice, no source).</summary>
    private static ImmutableArray<string> Wall(Pin pin, Length largeEnd, DimensionText text)
    {
        if (pin.LugEdgeDistance is not { } edge)
            return [];
        Length left = edge - (largeEnd / 2), least = largeEnd * TaperPinFitting.LeastWallPerDiameter;
        // Rounded to the careful side.
        return [text.Number(Hundredths(left, Math.Floor)) + (left < least ? "\nTOO THIN" : string.Empty), text.Number(Hundredths(least, Math.Ceiling))];
    }

    private static Length Hundredths(Length size, Func<double, double> towards) =>
        Length.FromMillimetres(towards(Math.Round(size.Millimetres * 100, 6)) / 100);
}
