using System.Globalization;
using LeverDraw.Diagnostics;
using LeverDraw.Parts;

namespace LeverDraw.Cli.Reporting;

/// <summary>One line about a profile: <c>middle.toml: lever 'Middle', 1 warning</c>.</summary>
internal static class Summary
{
    public static string Of(string file, Checked<BuiltPart> part)
    {
        string head = part.Ok ? $"{file}: {part.Value.Kind.Name} '{part.Value.Profile.Name}', " : file + ": ";
        string[] counts = [.. new[] { Severity.Error, Severity.Warning, Severity.Note }
            .Select(s => Count(part.Diagnostics.Count(d => d.Severity == s), DiagnosticText.Word(s))).OfType<string>()];
        return head + (counts.Length == 0 ? "no faults" : string.Join(", ", counts));
    }

    private static string? Count(int n, string word) =>
        n == 0 ? null : n.ToString(CultureInfo.InvariantCulture) + " " + word + (n == 1 ? "" : "s");
}
