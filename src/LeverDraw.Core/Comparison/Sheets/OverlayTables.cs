using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Comparison.Sheets;

/// <summary>How the table of differences stands on the sheet.</summary>
public enum OverlayTableForm
{
    /// <summary>One below the other, sizes in every unit of the sheet.</summary>
    Whole,

    /// <summary>In blocks side by side: a tall table would push the views down in scale.</summary>
    Blocks,

    /// <summary>Whole, the sizes in the first unit only; their difference is in both all the same.</summary>
    FirstUnit,
}

/// <summary>The overlay sheet's tables: what the lines mean, where the variants differ, what follows for the whole lever.</summary>
internal static class OverlayTables
{
    /// <summary>Of a block.</summary>
    private const int MostRows = 16;

    public static ImmutableArray<SheetTable> Of(LeverComparison c, ShownUnits units, OverlayTableForm form)
    {
        ShownUnits shown = form != OverlayTableForm.FirstUnit ? units : units.MillimetresFirst() ? ShownUnits.Millimetres : ShownUnits.Inches;
        SheetTable differences = Differences(c, shown);
        ImmutableArray<SheetTable> all = [Legend(c), .. differences.InBlocks(form == OverlayTableForm.Blocks ? MostRows : Math.Max(1, differences.Rows.Length)), Figures(c, shown)];
        return [.. all.Select(t => t with { IsClose = true })];
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

    /// <summary>Without the revision: the title block has both.</summary>
    private static string Named(string letter, LeverVariant variant)
    {
        string number = variant.Profile.Values.Get(CommonFields.Number);
        return letter + ": " + variant.ShortName.ToUpperInvariant() + (number.Length > 0 ? ", " + number : string.Empty);
    }

    /// <summary>Without the arms' sagitta, which lies inside the metal: how far the pads stand aside follows from it and can be measured.</summary>
    private static SheetTable Differences(LeverComparison c, ShownUnits units) => new(
        "WHERE THEY DIFFER",
        [new TableColumn("SIZE, " + units.Words()), new TableColumn("A", 1), new TableColumn("B", 1), new TableColumn("Δ mm", 1), new TableColumn("Δ in", 1), new TableColumn("CHANGES")],
        [.. c.Sizes.Where(r => r.Name != LeverFields.ArmSagitta.Name).Select(r => (ImmutableArray<string>)
        [
            LetteredName.Of(r.Name), .. Values(r, units).Select(Lettered), Delta(r, LengthUnit.Millimetre, units), r.Delta is null ? string.Empty : Delta(r, LengthUnit.Inch, units),
            r.Matters!.Value.ToString().ToUpperInvariant(),
        ])]);

    /// <summary>Figures alone: the largest distances stand at their leaders, and no size twice on a sheet.</summary>
    private static SheetTable Figures(LeverComparison c, ShownUnits units) => new(
        "WHOLE LEVERS",
        [new TableColumn("FIGURE"), new TableColumn("A", 1), new TableColumn("B", 1), new TableColumn("Δ", 1)],
        [.. c.Figures.Concat(c.Overlay).Where(r => r.Values.Any(v => v is ComparedFigure)).Select(r => (ImmutableArray<string>)
        [
            LetteredName.Of(r.Name) + ", " + ValueText.UnitOf(r, units.First()), .. ValueText.Of(r, units.First()), Delta(r, units.First(), units),
        ])]);

    /// <summary>With both units, a size's second one in square brackets.</summary>
    private static IEnumerable<string> Values(ComparedRow row, ShownUnits units)
    {
        string[] first = ValueText.Of(row, units.First());
        return units.Second() is not { } other
            ? first
            : first.Zip(ValueText.Of(row, other), row.Values).Select(v => v.Third is ComparedSize ? v.First + " [" + v.Second + "]" : v.First);
    }

    private static string Delta(ComparedRow row, LengthUnit unit, ShownUnits units) => ValueText.Delta(row, unit, shown: unit == units.First() || unit == units.Second());

    /// <summary>Words of the profile are lettered in capitals, as the drawing's own are.</summary>
    private static string Lettered(string value) => value.Any(char.IsAsciiLetterLower) ? value.ToUpperInvariant() : value;
}
