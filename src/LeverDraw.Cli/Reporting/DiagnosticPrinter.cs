using System.Collections.Immutable;
using System.Text;
using LeverDraw.Diagnostics;
using LeverDraw.Profiles;

namespace LeverDraw.Cli.Reporting;

/// <summary>Diagnostics as text, each with the line it is about.</summary>
internal sealed class DiagnosticPrinter(IProfileSource files, TextWriter to, bool colour)
{
    private readonly Dictionary<string, string?> texts = new(StringComparer.Ordinal);

    public void Print(IEnumerable<Diagnostic> diagnostics)
    {
        foreach (Diagnostic diagnostic in diagnostics)
            Print(diagnostic);
    }

    private void Print(Diagnostic diagnostic)
    {
        ImmutableArray<string> lines = DiagnosticText.Lines(diagnostic, diagnostic.Position is { Line: > 0 } at ? TextOf(at.File) : null);
        to.WriteLine(Paint.Of(diagnostic.Severity, lines[0], colour));
        for (int i = 1; i < lines.Length; i++)
            to.WriteLine(i < lines.Length - 1 ? Paint.Quiet(lines[i], colour) : lines[i]);
    }

    private string? TextOf(string path)
    {
        if (!texts.TryGetValue(path, out string? text))
            texts[path] = text = files.Open(path) is ProfileFile.Found found ? Encoding.UTF8.GetString(found.Bytes.Span).TrimStart('\uFEFF') : null;
        return text;
    }
}
