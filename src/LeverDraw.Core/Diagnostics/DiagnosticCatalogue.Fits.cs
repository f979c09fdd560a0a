using System.Collections.Immutable;

namespace LeverDraw.Diagnostics;

/// <content>LD4xx: tolerances, fits and allowances.</content>
public static partial class DiagnosticCatalogue
{
    public static DiagnosticKind UnknownZone { get; } = new("LD401", Severity.Error, "zone not in the tables",
        "The tables hold no tolerance zone '{0}' for a size of {1}.",
        "Take one of the zones the tables hold, such as {2}.",
        "diameter = { size = 3.057, fit = \"ZC17\" }", ["ZC17", "3.057 mm", "H7, H8, H9"]);

    public static DiagnosticKind OutsideTable { get; } = new("LD402", Severity.Error, "outside a standard's table",
        "{0} is outside the table of {1}, which goes from {2} to {3}.",
        "State the limits of this size by hand.",
        "a size of 4000 mm with a fit", ["4000 mm", "tolerance grades", "0 mm", "3150 mm"]);

    public static DiagnosticKind ZoneForOtherSide { get; } = new("LD403", Severity.Error, "hole zone on a shaft, or the reverse",
        "'{0}' is a zone for {1}, but this size is {2}.",
        "Write the letter {3}.",
        "diameter = { size = 3.057, fit = \"h8\" }   # a hole", ["h8", "a shaft", "a hole", "in capitals: H8"]);

    public static DiagnosticKind NoClearance { get; } = new("LD404", Severity.Warning, "fit may bind",
        "{0} may bind: the clearance is from {1} to {2}.",
        "Widen the one or narrow the other if the fit is to run free.",
        "a pin as large as its hole", ["'pin.diameter' and 'hole.diameter'", "-0.012 mm", "0.02 mm"]);

    public static DiagnosticKind AllowanceTooLarge { get; } = new("LD405", Severity.Warning, "allowance large for its section",
        "The allowance {0} is large beside the section {1} it stands on.",
        "Take filing stock only, or leave the face as cast.",
        "1.5 mm of stock on a pad 3 mm thick", ["1.5 mm", "3 mm"]);

    private static ImmutableArray<DiagnosticKind> Fits() =>
        [UnknownZone, OutsideTable, ZoneForOtherSide, NoClearance, AllowanceTooLarge];
}
