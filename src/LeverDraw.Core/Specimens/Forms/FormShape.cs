using System.Text;
using LeverDraw.Parts;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Profiles;

namespace LeverDraw.Specimens.Forms;

/// <summary>The part drawn on a form: an invented stand-in that has every feature that is usual, so that the form needs no profile.</summary>
internal static class FormShape
{
    private const string Lever = """
        kind = "lever"
        name = "Any lever"
        units = "mm"
        material = { name = "Any" }
        head = { width = 9.5, height = 9.5, depth = 8.2 }
        hole = { diameter = 3.06, taper = "1:48" }
        arms = { thickness = 3.6, width = 5.2, length = 21 }
        fork = { gap = 14, crotch_radius = 6.5 }
        pads = { thickness = 3.05, length = 6, crown_radius = 6 }
        tongue = { sweep = 40, length = 11.3, width = 6.4, thickness = 4, foot_fillet = 0.8 }
        blends = { head_fillet = 5 }
        """;

    private const string Pin = """
        kind = "pin"
        name = "Any pin"
        units = "mm"
        material = { name = "Any" }
        pin = { series = "free", large_end = 3.175, taper = "1:48", length = 19 }
        """;

    /// <summary>The lever's hole.</summary>
    public static PivotHole Hole => LeverPart.Build(Read(Lever).Value!.Values).Value!.Hole;

    public static BuiltPart Of(PartKind kind) =>
        Read(kind == PartKinds.Lever ? Lever : Pin).Then(profile => kind.Build(profile)).Value ?? throw new InvalidOperationException("The form's own shape must be sound.");

    private static Diagnostics.Checked<Profile> Read(string text) => ProfileReader.Read("form", new One(text), PartKinds.Fields);

    private sealed class One(string text) : IProfileSource
    {
        public ProfileFile Open(string path) => new ProfileFile.Found(Encoding.UTF8.GetBytes(text), path);
    }
}
