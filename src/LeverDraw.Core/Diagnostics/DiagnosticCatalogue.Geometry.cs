using System.Collections.Immutable;

namespace LeverDraw.Diagnostics;

/// <content>LD3xx: sizes that are each allowed but make no shape together. The fields at odds are named first.</content>
public static partial class DiagnosticCatalogue
{
    public static DiagnosticKind FieldsAtOdds { get; } = new("LD301", Severity.Error, "fields at odds",
        "{0} are at odds: {1}.",
        "Change one of {0}.",
        "[arms]\nthickness = 9\n[head]\ndiameter = 8",
        ["'arms.thickness' and 'head.diameter'", "the arm (9 mm) is thicker than the head (8 mm)"]);

    public static DiagnosticKind FilletImpossible { get; } = new("LD302", Severity.Error, "fillet impossible",
        "{0} are at odds: no arc of radius {1} touches both {2}.",
        "Take a smaller radius, or change one of {0}.",
        "a root fillet larger than the room between head and tongue",
        ["'head.diameter' and 'tongue.root_fillet'", "12 mm", "the head and the tongue's flank"]);

    public static DiagnosticKind OutlineCrosses { get; } = new("LD303", Severity.Error, "outline crosses itself",
        "{0} are at odds: the outline of the {1} crosses itself at {2}.",
        "Change one of {0} so that the two parts of the outline stay clear of each other.",
        "a tongue swept back into the arm",
        ["'arms.thickness' and 'tongue.sweep'", "side profile", "n 3.2 mm, z -4.1 mm"]);

    public static DiagnosticKind NothingLeft { get; } = new("LD304", Severity.Error, "no metal left",
        "{0} are at odds: they leave {1} of metal {2}.",
        "Change one of {0} so that metal is left.",
        "a hole larger than the head",
        ["'head.diameter' and 'hole.diameter'", "-0.4 mm", "round the hole"]);

    public static DiagnosticKind ThinWall { get; } = new("LD305", Severity.Warning, "thin wall",
        "{0} leave only {1} of metal {2}; {3} is wanted.",
        "Check that this is meant; change one of {0} if not.",
        "a hole close to the head's size",
        ["'head.diameter' and 'hole.diameter'", "0.9 mm", "round the hole", "1.5 mm"]);

    public static DiagnosticKind TooShort { get; } = new("LD306", Severity.Error, "length used up",
        "{0} are at odds: together they need {1}, but there is {2}.",
        "Change one of {0}.",
        "a pin shorter than its two end forms",
        ["'pin.length' and 'pin.end_height'", "4 mm", "3 mm"]);

    public static DiagnosticKind TaperRunsOut { get; } = new("LD307", Severity.Error, "taper runs out",
        "{0} are at odds: the taper leaves a small end of {1}.",
        "Take a larger diameter, a shorter length or a finer taper.",
        "a long thin pin with a coarse taper",
        ["'pin.diameter', 'pin.length' and 'pin.taper'", "-0.2 mm"]);

    private static ImmutableArray<DiagnosticKind> Geometry() =>
        [FieldsAtOdds, FilletImpossible, OutlineCrosses, NothingLeft, ThinWall, TooShort, TaperRunsOut];
}
