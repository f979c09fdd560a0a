using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Parts.PivotPin.Sheets;

/// <summary>The table of the tools for the holes in the plane's lugs: for this pin, and for the next larger one that cures a damaged hole. The diameters are the pin's.</summary>
internal static class PinTools
{
    private const int InchDecimals = 4, InchWallDecimals = 3, WallDecimals = 2;

    private const string None = "–";

    /// <param name="Drill">Null when the series of drills does not reach.</param>
    private sealed record Row(string Pin, Length LargeEnd, Length SmallEnd, PilotDrill? Drill, string Reamer);

    /// <returns>Null for a pin of no series.</returns>
    public static SheetTable? Of(Pin pin, DimensionText text)
    {
        Row[] rows = Rows(pin);
        if (rows.Length == 0)
            return null;
        ImmutableArray<TableColumn> columns = [new("PIN"), new("PIN'S LARGE\nEND ⌀", 0.5), new("PIN'S SMALL\nEND ⌀", 0.5), new("DRILL\nAT MOST", 0.5), new("TAPER\nREAMER", 0.5)];
        ImmutableArray<string> large = text.Column([.. rows.Select(r => r.LargeEnd)], InchDecimals), small = text.Column([.. rows.Select(r => r.SmallEnd)], InchDecimals);
        ImmutableArray<string> drills = text.Column([.. rows.Select(r => r.Drill?.Diameter ?? Length.Zero)], InchDecimals);
        (ImmutableArray<string> Left, ImmutableArray<string> Least)? walls = pin.LugEdgeDistance is { } edge ? Walls(edge, rows, text) : null;
        if (walls is not null)
            columns = columns.Add(new("WALL OF\nLUG LEFT", 0.5)).Add(new("AT LEAST\nHALF ⌀", 0.5));
        return new SheetTable("TOOLS FOR THE LUGS' HOLES, REAMED IN LINE" + (pin.LugEdgeDistance is { } axis ? ". EDGE " + text.Number(axis) + " FROM AXIS" : string.Empty), columns, [.. rows.Select(Cells)]);

        ImmutableArray<string> Cells(Row row, int i) =>
        [
            row.Pin + (i > 0 ? "\nNEXT OVERSIZE" : string.Empty), large[i], small[i],
            row.Drill is { } drill ? (drill.Name + " ⌀").TrimStart() + drills[i] : None, row.Reamer,
            .. walls is { } wall ? ImmutableArray.Create(wall.Left[i], wall.Least[i]) : [],
        ];
    }

    /// <summary>By how much the next oversize is larger than the pin, at every place alike since both have one taper and one length; the lever's hole must grow as much to keep its clearance. Null when there is none.</summary>
    public static Length? MoreThanOwn(Pin pin) => Rows(pin) is [var own, var next] ? next.LargeEnd - own.LargeEnd : null;

    private static Row[] Rows(Pin pin) => pin.Series == PinFields.Inch ? [.. Inch(pin)] : pin.Series == PinFields.Metric ? [.. Metric(pin)] : [];

    private static IEnumerable<Row> Inch(Pin pin)
    {
        if (InchTaperPins.Numbered(pin.Designation) is not { IsGiven: true } own)
            return [];
        Answer<InchTaperPin> next = InchTaperPins.Above(own.Value);
        InchTaperPin[] sizes = next.IsGiven ? [own.Value, next.Value] : [own.Value];
        return sizes.Select(size =>
        {
            Length small = size.SmallEnd(pin.Length.Nominal);
            Answer<TaperPinReamer> reamer = TaperPinChoice.Reamer(size, pin.Length.Nominal);
            return new Row("NO. " + size.Number, size.LargeEnd, small, PilotDrill.ForTapered(small) is { IsGiven: true, Value: var drill } ? drill : null,
                reamer.IsGiven ? "NO. " + reamer.Value.Number : DimensionText.TaperRatio(pin.Taper));
        });
    }

    private static IEnumerable<Row> Metric(Pin pin)
    {
        if (MetricTaperPins.WithSmallEnd(pin.SmallEnd) is not { IsGiven: true } own)
            return [];
        Answer<MetricTaperPin> next = MetricTaperPins.Above(own.Value);
        MetricTaperPin[] sizes = next.IsGiven ? [own.Value, next.Value] : [own.Value];
        return sizes.Select(size => new Row(
            string.Create(CultureInfo.InvariantCulture, $"{size.SmallEnd.Millimetres:0.###} × {pin.Length.Millimetres:0.###}"),
            size.LargeEnd(pin.Length.Nominal),
            size.SmallEnd,
            PilotDrill.MetricUnder(size.SmallEnd) is { IsGiven: true, Value: var drill } ? new PilotDrill(string.Empty, drill) : null,
            DimensionText.TaperRatio(pin.Taper)));
    }

    /// <summary>What is left between hole and edge of the lug, and the half diameter that should be (common practice, no source): each rounded to the careful side.</summary>
    private static (ImmutableArray<string> Left, ImmutableArray<string> Least) Walls(Length edge, Row[] rows, DimensionText text)
    {
        Length[] left = [.. rows.Select(r => TaperPinChoice.WallLeft(edge, r.LargeEnd))], least = [.. rows.Select(r => TaperPinChoice.LeastWall(r.LargeEnd))];
        ImmutableArray<string> shown = text.Column(left, InchWallDecimals, WallDecimals, MidpointRounding.ToNegativeInfinity);
        return ([.. shown.Select((s, i) => left[i] < least[i] ? s + "\nTOO THIN" : s)], text.Column(least, InchWallDecimals, WallDecimals, MidpointRounding.ToPositiveInfinity));
    }
}
