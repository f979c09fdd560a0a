using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.TitleBlocks;

namespace LeverDraw.Drafting.Sheets;

/// <summary>One variant of a family on a tabled sheet.</summary>
/// <param name="Name">Head of its column, such as its drawing number.</param>
public sealed record TableVariant(string Name, SheetContent Content);

/// <summary>
/// A tabled drawing: letters stand on the drawing, values in a table with a column for each variant. The first variant is the one that is drawn.
/// Sizes that are equal in all of several variants stay on the drawing; so do notes that all variants share.
/// </summary>
public static class TableStyle
{
    /// <summary>Letters that cannot be taken for a figure or for each other: no i, l, o. None reaches below the line, where a short dimension's arrowheads are.</summary>
    private const string Letters = "abcdefhkmnrstuvwxz";

    /// <summary>Longer tables are broken into blocks side by side.</summary>
    private const int MostRows = 16;

    /// <summary>Stands for a size that a variant has not got.</summary>
    private const string None = "–";

    /// <param name="variants">At least one, of the same part kind and sheet.</param>
    /// <param name="unit">As the title block names it.</param>
    /// <returns>Refused when a variant has a size that the first one's drawing has no place for.</returns>
    public static Checked<SheetContent> Of(ImmutableArray<TableVariant> variants, string unit)
    {
        SheetContent first = variants[0].Content;
        var sizes = variants.Select(v => LabelledSizes.Of(v.Content).ToDictionary(s => s.Key)).ToArray();
        Diagnostic[] refused = [.. variants.Select((v, i) => Refusal(variants[0], sizes[0], v, sizes[i])).OfType<Diagnostic>()];
        if (refused.Length > 0)
            return Checked<SheetContent>.Bad([.. refused]);

        var labels = new Dictionary<(string View, string Name, int Occurrence), Label>();
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<string>>();
        foreach (LabelledSize size in LabelledSizes.Of(first))
        {
            Label?[] said = [.. sizes.Select(s => s.GetValueOrDefault(size.Key)?.Label)];
            bool equal = said.All(l => l?.ToString() == size.Label.ToString());
            if (equal && (variants.Length > 1 || size.IsNote))
                continue;
            string letter = LetterOf(labels.Count);
            labels.Add(size.Key, size.Label with { Lines = [size.IsReference ? "(" + letter + ")" : letter] });
            rows.Add([letter, LetteredName.Of(size.Name), .. said.Select(l => l?.ToString() ?? None)]);
        }

        rows.AddRange(TitleRows(variants));
        return Checked<SheetContent>.Good(LabelledSizes.Relabelled(first, labels) with
        {
            Kind = first.Kind + "-table",
            Notes = Notes(variants, rows.Any(r => r.Contains(None))),
            Title = TitleOf(variants),
            Tables = [.. OwnTables(variants), .. Blocks(variants, unit, rows.ToImmutable())],
        });
    }

    /// <summary>a, b, … z, then aa, ab, …</summary>
    private static string LetterOf(int index) => index < Letters.Length
        ? Letters[index].ToString()
        : LetterOf((index / Letters.Length) - 1) + Letters[index % Letters.Length];

    private static Diagnostic? Refusal(
        TableVariant first, Dictionary<(string View, string Name, int Occurrence), LabelledSize> drawn,
        TableVariant other, Dictionary<(string View, string Name, int Occurrence), LabelledSize> sizes)
    {
        // A size in brackets follows from others and may go unsaid.
        string[] without = [.. sizes.Values
            .Where(s => drawn.TryGetValue(s.Key, out LabelledSize? same) ? same.Drawn != s.Drawn || same.Label.Signs != s.Label.Signs : !s.IsReference)
            .Select(s => s.Name).Distinct()];
        string[] marks = [.. MarksOf(other.Content).Except(MarksOf(first.Content))];
        return without.Length + marks.Length == 0
            ? null
            : DiagnosticCatalogue.VariantsDiffer.At(null, null, other.Name, first.Name, string.Join(", ", without.Concat(marks)));
    }

    /// <summary>Annotations that are no sizes cannot differ: a letter would say nothing of them.</summary>
    private static IEnumerable<string> MarksOf(SheetContent content) =>
        content.Views.SelectMany(v => v.Annotations).Where(a => !LabelledSizes.IsSize(a)).Select(a => a.Name + (a.Label.Lines.IsEmpty ? "" : " " + a.Label));

    private static IEnumerable<ImmutableArray<string>> TitleRows(ImmutableArray<TableVariant> variants)
    {
        foreach ((string name, Func<TitleBlock, string> of) in ((string, Func<TitleBlock, string>)[])
            [("MATERIAL", t => t.Material), ("PROCESS", t => t.Process), ("GENERAL TOLERANCES", t => t.GeneralTolerance), ("REVISION", t => t.Revision), ("DATE OF ISSUE", t => t.Date)])
        {
            if (variants.Any(v => of(v.Content.Title) != of(variants[0].Content.Title)))
                yield return ["", name, .. variants.Select(v => of(v.Content.Title) is { Length: > 0 } text ? text : None)];
        }
    }

    private static TitleBlock TitleOf(ImmutableArray<TableVariant> variants)
    {
        TitleBlock title = variants[0].Content.Title;
        string Shared(Func<TitleBlock, string> of, string otherwise) =>
            variants.All(v => of(v.Content.Title) == of(title)) ? of(title) : otherwise;
        return title with
        {
            // Another document than the plain drawing: it must not share its number.
            DrawingNumber = title.DrawingNumber.Length > 0 ? title.DrawingNumber + "-T" : "",
            SupplementaryTitle = variants.Length == 1
                ? title.SupplementaryTitle
                : variants.Length.ToString(System.Globalization.CultureInfo.InvariantCulture) + " VARIANTS, DRAWN: " + variants[0].Name,
            Material = Shared(t => t.Material, "SEE TABLE"),
            Process = Shared(t => t.Process, "SEE TABLE"),
            GeneralTolerance = Shared(t => t.GeneralTolerance, "SEE TABLE"),
            Revision = Shared(t => t.Revision, None),
            Date = Shared(t => t.Date, "SEE TABLE"),
            Approver = Shared(t => t.Approver, ""),
        };
    }

    /// <summary>Notes of all variants once, then the others in the order of the variants, each under the names of those that have it.</summary>
    /// <param name="someLack">A variant lacks something that the drawn one has, so that its size is a dash.</param>
    private static ImmutableArray<string> Notes(ImmutableArray<TableVariant> variants, bool someLack)
    {
        var common = variants[0].Content.Notes.Where(n => variants.All(v => v.Content.Notes.Contains(n))).ToHashSet(StringComparer.Ordinal);
        // Every sheet's last note is for safety; it stays the last.
        string[] last = [.. variants[0].Content.Notes.TakeLast(1).Where(common.Contains)];
        // Lettered sizes of the drawn variant only are drawn to scale.
        string[] about = variants.Length > 1 ? ["LETTERED SIZES ARE IN THE TABLE" + (someLack ? ", " + None + " WHERE THERE IS NOTHING TO SIZE; " : "; ") + variants[0].Name + " IS DRAWN TO SCALE."] : [];
        return
        [
            .. about,
            .. variants[0].Content.Notes.Where(common.Contains).SkipLast(last.Length),
            .. variants.SelectMany(v => v.Content.Notes).Where(n => !common.Contains(n)).Distinct(StringComparer.Ordinal).Select(n => string.Join(", ", variants.Where(v => v.Content.Notes.Contains(n)).Select(v => v.Name)) + ": " + n),
            .. last,
        ];
    }

    /// <summary>Tables the plain sheets have: once where all variants share it; those of one title and the same columns as one, its rows under the variants' names; else each variant's own under its name.</summary>
    private static IEnumerable<SheetTable> OwnTables(ImmutableArray<TableVariant> variants)
    {
        static string Text(SheetTable table) => string.Join('\n', [table.Title, .. table.Columns.Select(c => c.Head), .. table.Rows.Select(r => string.Join('\t', r))]);
        var common = variants[0].Content.Tables.Select(Text).Where(t => variants.All(v => v.Content.Tables.Any(o => Text(o) == t))).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. variants[0].Content.Tables.Where(t => common.Contains(Text(t))),
            .. variants.SelectMany(v => v.Content.Tables.Where(t => !common.Contains(Text(t))).Select(t => (v.Name, Table: t))).GroupBy(t => (t.Table.Title, Heads: string.Join('\t', t.Table.Columns.Select(c => c.Head)))).Select(Joined),
        ];
    }

    private static SheetTable Joined(IEnumerable<(string Name, SheetTable Table)> tables)
    {
        (string Name, SheetTable Table)[] all = [.. tables];
        SheetTable first = all[0].Table;
        return all.Length == 1
            ? first with { Title = all[0].Name + ": " + first.Title }
            : first with
            {
                Columns = [new TableColumn("FOR"), .. first.Columns],
                Rows = [.. all.SelectMany(t => t.Table.Rows.Select((r, i) => ImmutableArray.Create([i == 0 ? t.Name : "", .. r])))],
            };
    }

    private static IEnumerable<SheetTable> Blocks(ImmutableArray<TableVariant> variants, string unit, ImmutableArray<ImmutableArray<string>> rows)
    {
        ImmutableArray<TableColumn> columns = [new TableColumn("", 0.5), new TableColumn("SIZE, " + unit), .. variants.Select(v => new TableColumn(v.Name))];
        return new SheetTable("", columns, rows).InBlocks(MostRows);
    }
}
