using LeverDraw.Diagnostics;

namespace LeverDraw.Drafting.Sheets;

/// <summary>Faults of laying out a sheet.</summary>
internal static class SheetFaults
{
    public static Diagnostic DoesNotFit(string kind, string paper, string? scale, IEnumerable<string> reasons)
    {
        string at = scale is null ? "at any scale" : "at " + scale;
        string why = string.Join("; ", reasons);
        return new Diagnostic(
            "LD501", Severity.Error, null, null,
            $"The {kind} sheet does not fit on {paper} {at}" + (why.Length > 0 ? ": " + why + "." : "."),
            scale is null ? "Choose a larger sheet with --paper." : "Choose a smaller scale or a larger sheet.");
    }
}
