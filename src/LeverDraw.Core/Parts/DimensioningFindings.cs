using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Completeness;

namespace LeverDraw.Parts;

/// <summary>Whether the sheets of a part fix its shape exactly once, as findings. Takes some milliseconds a sheet, so it is asked for, not part of drawing.</summary>
public static class DimensioningFindings
{
    public static ImmutableArray<Diagnostic> Of(BuiltPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        SourcePosition file = SourcePosition.WholeFile(part.Profile.Path);
        return [.. part.Sheets.SelectMany(s => s.Parametric?.Invoke() is { } sheet ? Of(s.Name, Dimensioning.Of(sheet), file) : [])];
    }

    /// <summary>The part again, unless a sheet of it would be wrong.</summary>
    public static Checked<BuiltPart> Checked(BuiltPart part) => Checked<BuiltPart>.From(Of(part), () => part);

    internal static IEnumerable<Diagnostic> Of(string sheet, Dimensioning found, SourcePosition file)
    {
        foreach (ImmutableArray<string> free in found.Free)
            yield return DiagnosticCatalogue.NotDimensioned.At(file, null, sheet, Names(free));
        foreach (ImmutableArray<string> repeated in found.Repeated)
            yield return DiagnosticCatalogue.DimensionedTwice.At(file, null, sheet, Names(repeated));
        if (!found.WronglyBracketed.IsEmpty)
            yield return DiagnosticCatalogue.WronglyBracketed.At(file, null, sheet, Names(found.WronglyBracketed));
        if (found.Unclear is { } why)
            yield return DiagnosticCatalogue.DimensioningUnclear.At(file, null, sheet, why);
    }

    private static string Names(ImmutableArray<string> names) => string.Join(", ", names.Select(n => "'" + n + "'"));
}
