using System.Collections.Immutable;

namespace LeverDraw.Diagnostics;

/// <summary>Every message the tool gives about its input, by code: 1xx files and syntax, 2xx fields, 3xx geometry, 4xx fits and allowances, 5xx drafting, 6xx look-ups, 7xx worn survivors. A code once given is never reused.</summary>
public static partial class DiagnosticCatalogue
{
    // A constructor, because initialisers of several files run in no fixed order.
    static DiagnosticCatalogue() =>
        All = [.. Files(), .. Fields(), .. Geometry(), .. Fits(), .. Foundry(), .. Mechanism(), .. Drafting(), .. Lookups(), .. Specimens()];

    /// <summary>In order of code.</summary>
    public static ImmutableArray<DiagnosticKind> All { get; }

    /// <summary>The kind with this code, in capitals or not; null when there is none.</summary>
    public static DiagnosticKind? Find(string code) =>
        All.FirstOrDefault(k => string.Equals(k.Code, code, StringComparison.OrdinalIgnoreCase));
}
