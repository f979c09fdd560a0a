using System.Collections.Immutable;

namespace LeverDraw.Diagnostics;

/// <content>LD44x: lever, pin and plane together.</content>
public static partial class DiagnosticCatalogue
{
    public static DiagnosticKind TongueNotReached { get; } = new("LD440", Severity.Error, "tongue does not reach the slot",
        "The tongue of '{0}' never reaches the faces of the cap iron's slot in '{1}': it cannot move the iron.",
        "Take a thinner iron, a cap iron with less broken edges, or a lever with a longer tongue; check the depth of the pivot below the bed.",
        "an iron so thick that the nose ends inside it", ["Adjusting lever, smallest size", "Bench plane, middle"]);

    public static DiagnosticKind PadsNotReached { get; } = new("LD441", Severity.Error, "pads do not reach the nut",
        "The pads of '{0}' do not cover the level of the stud's axis in '{1}'.",
        "Take the lever that belongs to this plane, or check 'stud.distance' and 'arms.length'.",
        "the smallest lever in a large plane", ["Adjusting lever, smallest size", "Bench plane, middle"]);

    public static DiagnosticKind ThinLand { get; } = new("LD442", Severity.Warning, "tongue hardly bears",
        "Only {0} of the tongue's full thickness stand in the cap iron's slot, of {1} over the iron; {2} are wanted.",
        "Take a thinner iron or a lever with a longer tongue: the nose soon wears away.",
        "an iron thicker than the plane was made for", ["0.3 mm", "2.1 mm", "0.5 mm"]);

    public static DiagnosticKind PinNotGiven { get; } = new("LD443", Severity.Error, "lever's pin not among the files",
        "The pin of '{0}' is not among the files: none has the drawing number {1}.",
        "Give the pin's profile too, and name its 'sheet.number' in the lever's 'hole.pin'.",
        "fits profiles/levers/middle.toml profiles/planes/middle.toml", ["Adjusting lever, middle", "'TC-P-02'"]);

    public static DiagnosticKind NoRoom { get; } = new("LD444", Severity.Error, "parts do not go together",
        "{0} has no room: the clearance is from {1} to {2}, and less than none at the middle of the limits.",
        "Parts that move in each other have some: measure both again, unworn against worn, and check which of them the setup names.",
        "a measured pin that is larger than its hole", ["The hole on pin", "-0.22 mm", "-0.14 mm"]);

    public static DiagnosticKind PadsJam { get; } = new("LD445", Severity.Warning, "tilted pads fill the groove",
        "Tilted, the pads fill the nut's groove when it stands {0} back or {1} forward of mid-travel, before its travel of {2} ends.",
        "Crown the pads rounder (nearer half their thickness), or widen the groove: the nut binds there.",
        "pads with wide crowns in a close groove", ["3.4 mm", "3.5 mm", "8 mm"]);

    private static ImmutableArray<DiagnosticKind> Mechanism() =>
        [TongueNotReached, PadsNotReached, ThinLand, PinNotGiven, NoRoom, PadsJam];
}
