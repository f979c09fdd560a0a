using System.Collections.Immutable;
using LeverDraw.Specimens.Measuring;

namespace LeverDraw.Specimens.Forms;

/// <summary>One line of a form: a number on the drawing, or none for what is only seen.</summary>
internal readonly record struct FormLine(int Number, Measurand Measurand);

/// <summary>What a form asks for, in the order of the part's fields; sheet and file number alike.</summary>
internal static class FormLines
{
    /// <summary>Sizes that a survivor rarely shows, or that only rare forms have: the file may hold them, the form does not ask.</summary>
    private static readonly ImmutableArray<string> Rare =
    [
        "head.height", "head.corner_radius", "arms.sagitta", "fork.web", "fork.shoulder_radius", "tongue.neck_thickness", "tongue.flank_taper", "blends.fillet", "blends.edge_round",
        "boss.diameter", "boss.height", "boss.over", "mark.height", "mark.letter_height", "pin.middle", "arms.overall",
    ];

    public static ImmutableArray<FormLine> Sizes(string part) =>
        [.. Measurands.All.Where(m => m.Part == part && m.Kind is (ReadingKind.Size or ReadingKind.Angle) && !Rare.Contains(m.Name)).Select((m, i) => new FormLine(i + 1, m))];

    public static ImmutableArray<Measurand> Seen(string part) => [.. Measurands.All.Where(m => m.Part == part && m.Kind is ReadingKind.Word or ReadingKind.Taper)];
}
