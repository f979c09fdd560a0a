using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Profiles;

namespace LeverDraw.Parts;

/// <summary>One sheet for several variants of a part kind: letters on the drawing, values in a table.</summary>
public static class TabledSheet
{
    /// <param name="parts">Of one kind; the first is drawn.</param>
    /// <param name="sheet">A sheet of that kind, such as <c>finished</c>.</param>
    /// <returns>A sheet called <c>finished-table</c>.</returns>
    public static BuiltSheet Of(ImmutableArray<BuiltPart> parts, string sheet)
    {
        BuiltSheet first = parts[0].Find(sheet) ?? throw new ArgumentException("The part has no such sheet.", nameof(sheet));
        return new BuiltSheet(first.Name + "-table", first.State, options =>
        {
            Checked<SheetContent>[] contents = [.. parts.Select(p => p.Find(sheet)!.Content(options))];
            string[] names = Names(parts);
            return Checked<TableVariant[]>
                .From([.. contents.SelectMany(c => c.Diagnostics)], () => [.. contents.Select((c, i) => new TableVariant(names[i], c.Value!))])
                .Then(variants => TableStyle.Of([.. variants], variants[0].Content.Title.Units));
        });
    }

    /// <summary>Drawing numbers where each has its own, else the variants' names.</summary>
    private static string[] Names(ImmutableArray<BuiltPart> parts)
    {
        string[] numbers = [.. parts.Select(p => p.Profile.Values.Get(CommonFields.Number))];
        return numbers.All(n => n.Length > 0) && numbers.Distinct(StringComparer.Ordinal).Count() == numbers.Length
            ? numbers
            : [.. parts.Select(p => p.Profile.Name)];
    }
}
