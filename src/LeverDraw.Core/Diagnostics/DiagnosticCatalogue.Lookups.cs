using System.Collections.Immutable;

namespace LeverDraw.Diagnostics;

/// <content>LD6xx: look-ups in the tables.</content>
public static partial class DiagnosticCatalogue
{
    public static DiagnosticKind NotInTable { get; } = new("LD601", Severity.Error, "not in the tables",
        "The tables give no answer: {0}.",
        "Take a value inside the range; 'tables' without more lists all look-ups with an example.",
        "tables zone 600 H8", ["tolerance grades are given for sizes over 0 mm up to 500 mm, not for 600 mm"]);

    public static DiagnosticKind NoSuchEntry { get; } = new("LD602", Severity.Error, "no such entry in a table",
        "The table of {1} holds no '{0}'.",
        "It holds: {2}.",
        "tables contraction lead", ["lead", "contractions", "grey iron; brass; aluminium"]);

    private static ImmutableArray<DiagnosticKind> Lookups() => [NotInTable, NoSuchEntry];
}
