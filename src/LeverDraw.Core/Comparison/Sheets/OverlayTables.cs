using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Comparison.Sheets;

/// <summary>The overlay sheet's tables: what the lines mean, where the variants differ, what follows for the whole lever.</summary>
internal static class OverlayTables
{
    public static ImmutableArray<SheetTable> Of(LeverComparison c, ShownUnits units)
    {
        LengthUnit unit = units.MillimetresFirst() ? LengthUnit.Millimetre : LengthUnit.Inch;
        ImmutableArray<SheetTable> all = [Legend(c), Figures(c, unit)];
        return c.Sizes.IsEmpty ? all : all.Insert(1, Differences(c, unit));
    }

    private static SheetTable Legend(LeverComparison c) => new(
        string.Empty,
        [new TableColumn("LINE"), new TableColumn("MEANING")],
        [[string.Empty, Named("A", c.A)], [string.Empty, Named("B", c.B)], [string.Empty, "ONLY A HAS IT"], [string.Empty, "ONLY B HAS IT"]])
    {
        Samples =
        [
            new TableSample(LineRole.OverlayA),
            new TableSample(LineRole.OverlayB),
            new TableSample(LineRole.OverlayA, Math.PI / 4),
            new TableSample(LineRole.OverlayB, 3 * Math.PI / 4),
        ],
    };

    private static string Named(string letter, LeverVariant variant)
    {
        IFieldValues values = variant.Profile.Values;
        string number = values.Get(CommonFields.Number), revision = values.Get(CommonFields.Revision);
        return letter + ": " + variant.ShortName.ToUpperInvariant() + (number.Length > 0 ? ", " + number : string.Empty) + (revision.Length > 0 ? " REV " + revision : string.Empty);
    }

    private static SheetTable Differences(LeverComparison c, LengthUnit unit) => new(
        "WHERE THEY DIFFER",
        [new TableColumn("SIZE, " + (unit == LengthUnit.Inch ? "in" : "mm")), new TableColumn("A", 1), new TableColumn("B", 1), new TableColumn("Δ mm", 1), new TableColumn("Δ in", 1), new TableColumn("MATTERS FOR")],
        [.. c.Sizes.Select(r => (ImmutableArray<string>)[Words(r.Name), .. ValueText.Of(r, unit).Select(Shown), ValueText.Delta(r, LengthUnit.Millimetre), r.Delta is null ? string.Empty : ValueText.Delta(r, LengthUnit.Inch), r.Matters!.Value.ToString().ToUpperInvariant()])]);

    private static SheetTable Figures(LeverComparison c, LengthUnit unit) => new(
        "WHOLE LEVERS",
        [new TableColumn("FIGURE"), new TableColumn("A", 1), new TableColumn("B", 1), new TableColumn("Δ", 1)],
        [.. c.Figures.Concat(c.Overlay).Where(r => r.Values.Any(v => v is not null)).Select(r => (ImmutableArray<string>)[Words(r.Name) + ", " + UnitOf(r, unit), .. ValueText.Of(r, unit), ValueText.Delta(r, unit)])]);

    private static string UnitOf(ComparedRow row, LengthUnit unit) =>
        row.Values.OfType<ComparedFigure>().FirstOrDefault() is { } figure ? figure.Unit : unit == LengthUnit.Inch ? "in" : "mm";

    /// <summary>Words of the profile are lettered in capitals, as the drawing's own are.</summary>
    private static string Shown(string value) => value.Any(char.IsAsciiLetterLower) ? value.ToUpperInvariant() : value;

    /// <summary>A name as words: <c>ARMS, LEAST AREA</c>.</summary>
    private static string Words(string name) => name.Replace(".", ", ", StringComparison.Ordinal).Replace('_', ' ').ToUpperInvariant();
}
