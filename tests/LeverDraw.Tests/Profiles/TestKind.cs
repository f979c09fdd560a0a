using System.Collections.Immutable;
using System.Text;
using LeverDraw.Diagnostics;
using LeverDraw.Profiles;

namespace LeverDraw.Tests.Profiles;

/// <summary>A small part kind and a source in memory, so that the reader is tested apart from the real parts.</summary>
internal static class TestKind
{
    public static SizeField Thickness { get; } = new("arms.thickness", "ta", "Thickness of an arm.", 1, 12);

    public static SizeField Width { get; } = new("arms.width", "aw", "Width of an arm.", 1, 25.4, 5.2);

    public static ChoiceField Form { get; } = new("arms.form", null, "Form of the arms.", ["straight", "curved"], "straight");

    public static SizeField Sagitta { get; } = new("arms.sagitta", null, "Height of the curve.", 0.1, 5) { OnlyWhen = new FieldCondition(Form, ["curved"]) };

    public static AngleField Sweep { get; } = new("tongue.sweep", "sw", "Angle of the tongue.", 0, 80, 40);

    public static SizeField Hole { get; } = new("hole.diameter", null, "Diameter at mid-length.", 1, 10) { MayBeAbsent = true };

    public static TaperField Taper { get; } = new("hole.taper", null, "Taper of the hole.", LeverDraw.Units.Taper.Parallel);

    public static FlagField Web { get; } = new("arms.web", null, "Whether a web is left.", false);

    public static PartFields Fields { get; } = new("test-lever", [Thickness, Width, Form, Sagitta, Web, Sweep, Hole, Taper]);

    public static ImmutableArray<PartFields> Kinds { get; } = [Fields, new PartFields("test-pin", [new SizeField("pin.length", "L", "Length.", 1, 100)])];

    /// <summary>Everything required and nothing more, with room for a fault after it.</summary>
    public const string Head = """
        kind = "test-lever"
        name = "Middle"
        units = "mm"

        [material]
        name = "Brass, free of lead"

        """;

    public const string Good = Head + """
        [arms]
        thickness = 3.6

        """;

    public static Checked<Profile> Read(string text) => Read(("a.toml", text));

    public static Checked<Profile> Read(params (string Path, string Text)[] files) =>
        ProfileReader.Read(files[0].Path, new MemorySource(files.ToDictionary(f => f.Path, f => Encoding.UTF8.GetBytes(f.Text))), Kinds);

    public static Checked<Profile> ReadBytes(byte[] bytes) =>
        ProfileReader.Read("a.toml", new MemorySource(new() { ["a.toml"] = bytes }), Kinds);

    public static Profile ReadGood(string text)
    {
        Checked<Profile> result = Read(text);
        Assert.True(result.Ok, string.Join('\n', result.Diagnostics.Select(DiagnosticText.Headline)));
        return result.Value;
    }

    /// <summary>Code, line and column of each finding.</summary>
    public static string[] Places(Checked<Profile> result) =>
        [.. result.Diagnostics.Select(d => FormattableString.Invariant($"{d.Code} {d.Position!.Value.Line}:{d.Position.Value.Column}"))];

    internal sealed class MemorySource(Dictionary<string, byte[]> files) : IProfileSource
    {
        public ProfileFile Open(string path)
        {
            string plain = path.Replace("x/../", "", StringComparison.Ordinal);
            return path switch
            {
                "folder" => new ProfileFile.IsDirectory(),
                "huge" => new ProfileFile.TooLarge(5_000_000_000),
                "locked" => new ProfileFile.NotReadable(),
                _ => files.TryGetValue(plain, out byte[]? bytes) ? new ProfileFile.Found(bytes, plain) : new ProfileFile.Missing(),
            };
        }
    }
}
