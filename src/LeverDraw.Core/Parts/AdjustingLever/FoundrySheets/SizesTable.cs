using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.FoundrySheets;

/// <summary>The sizes of one lever in its states, side by side.</summary>
internal static class SizesTable
{
    private const int Decimals = 2, InchDecimals = 3;

    private const string None = "–";

    /// <summary>For the foundry: what is left to machine in the worst case, and what may be there to machine. No pattern size stands on a casting's sheet.</summary>
    public static SheetTable ForCasting(ImmutableArray<StateSizes> rows, DimensionText text) => new(
        "FINISHED AND CAST, " + Unit(text),
        [new("SIZE"), new("FINISHED", 1), new("CASTING", 1), new("±", 1), new("STOCK\nLEAST, MOST", 0.5)],
        Rows(rows,
            Column(rows, r => r.Size.Finished, text),
            Column(rows, r => r.Casting, text),
            WhereGiven(rows, r => r.Size.Kind == FoundrySizeKind.Radius ? null : r.PlusMinus, text, MidpointRounding.ToNegativeInfinity),
            [.. WhereGiven(rows, r => r.LeastStock, text).Zip(WhereGiven(rows, r => r.MostStock, text), (least, most) => least == None ? None : least + ", " + most)]));

    /// <summary>For the pattern-maker: with the size at the joint, where draft makes it another, and whatever comes after the pattern's own column.</summary>
    public static SheetTable ForPattern(ImmutableArray<StateSizes> rows, PatternDraft draft, bool rapped, DimensionText text)
    {
        // Millimetres of the drawn pattern; with rapping its sizes are smaller than drawn.
        List<TableColumn> columns = [new("SIZE"), new("FINISHED", 1), new("CASTING", 1), new(rapped ? "PATTERN,\nRAPPING OFF" : "PATTERN", 1)];
        List<ImmutableArray<string>> cells = [Column(rows, r => r.Size.Finished, text), Column(rows, r => r.Casting, text), Column(rows, r => r.Pattern, text)];
        if (draft.Walls.Any(w => w.Added > Length.Zero))
        {
            columns.Add(new("PATTERN\nAT JOINT", 1));
            cells.Add(WhereGiven(rows, r => Added(r.Size, draft) is { } more ? r.Pattern + more : null, text));
        }

        if (rows.Any(r => r.Master is not null))
        {
            columns.Add(new("MASTER", 1));
            cells.Add(Column(rows, r => r.Master ?? Length.Zero, text));
        }

        return new SheetTable("FINISHED, CASTING, PATTERN, " + Unit(text), [.. columns], Rows(rows, [.. cells]));
    }

    /// <summary>What draft adds to a size across the walls; null for one it leaves alone.</summary>
    private static Length? Added(FoundrySize size, PatternDraft draft)
    {
        // The crotch is a hollow, so metal added makes it smaller; of the pads' two ends only the arms' is a wall along the draw.
        if (size.Field == LeverFields.CrotchRadius)
            return -draft.AddedTo(DraftedPart.Arms);
        if (size.Field == LeverFields.PadLength)
            return draft.AddedTo(DraftedPart.Arms);
        if (size.Along != MeasuredAlong.Pin || size.Kind is not (FoundrySizeKind.Outside or FoundrySizeKind.Inside))
            return null;
        DraftedPart part = size.Group == MachinedFaces.Head ? draft.Machined : size.Field == LeverFields.HeadWidth ? DraftedPart.Head : size.Field == LeverFields.TongueWidth ? DraftedPart.Tongue : DraftedPart.Arms;
        Length both = draft.AddedTo(part) * 2;
        return size.Kind == FoundrySizeKind.Inside ? -both : both;
    }

    /// <summary>The sizes as they can be measured: of a round head its diameter, clear of the fillets, and no height, since its lower half goes on into the fork.</summary>
    public static ImmutableArray<StateSizes> Measurable(ImmutableArray<StateSizes> rows, Lever lever) => lever.Forms.Head != LeverFields.Round
        ? rows
        : [.. from row in rows where row.Size.Field != LeverFields.HeadHeight select row.Size.Field == LeverFields.HeadDepth ? row with { Size = row.Size with { Name = "head ⌀" } } : row];

    private static ImmutableArray<ImmutableArray<string>> Rows(ImmutableArray<StateSizes> rows, params ImmutableArray<string>[] columns) =>
        [.. rows.Select((r, i) => (ImmutableArray<string>)[Name(r.Size), .. columns.Select(c => c[i])])];

    private static string Unit(DimensionText text) => text.Units.MillimetresFirst() ? "mm" : "in";

    private static string Name(FoundrySize size) => size.Name.ToUpper(CultureInfo.InvariantCulture) + (size.Group == MachinedFaces.None ? "" : ", " + StockMarks.Letter);

    private static ImmutableArray<string> Column(ImmutableArray<StateSizes> rows, Func<StateSizes, Length> of, DimensionText text) => Column([.. rows.Select(of)], text);

    private static ImmutableArray<string> WhereGiven(ImmutableArray<StateSizes> rows, Func<StateSizes, Length?> of, DimensionText text, MidpointRounding rounding = MidpointRounding.AwayFromZero)
    {
        ImmutableArray<string> given = Column([.. rows.Select(of).OfType<Length>()], text, rounding);
        int next = 0;
        return [.. rows.Select(r => of(r) is null ? None : given[next++])];
    }

    /// <summary>In the sheet's first unit: the views give both.</summary>
    private static ImmutableArray<string> Column(IReadOnlyCollection<Length> sizes, DimensionText text, MidpointRounding rounding = MidpointRounding.AwayFromZero) => [.. text.Column(sizes, InchDecimals, Decimals, rounding).Select(s => s.Split('\n')[0])];
}
