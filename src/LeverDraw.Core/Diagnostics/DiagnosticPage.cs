using System.Text;

namespace LeverDraw.Diagnostics;

/// <summary>The catalogue as the page <c>docs/diagnostics.md</c>.</summary>
public static class DiagnosticPage
{
    public static string Markdown()
    {
        StringBuilder page = new();
        page.Append("# Diagnostics\n\n")
            .Append("Made from the catalogue in `src/LeverDraw.Core/Diagnostics`; a test compares the two.\n")
            .Append("An error stops the drawing; a warning or a note is told beside it.\n");
        string group = "";
        foreach (DiagnosticKind kind in DiagnosticCatalogue.All)
        {
            if (Group(kind) is { } next && next != group)
                page.Append("\n## ").Append(group = next).Append('\n');
            page.Append("\n### ").Append(kind.Code).Append(": ").Append(kind.Title).Append("\n\n")
                .Append(kind.Severity == Severity.Error ? "" : "(" + DiagnosticText.Word(kind.Severity) + ") ")
                .Append(kind.ExampleMessage).Append("\n\n")
                .Append("What to do: ").Append(kind.ExampleHint).Append("\n\n")
                .Append("```text\n").Append(kind.Example).Append("\n```\n");
        }
        return page.ToString();
    }

    private static string Group(DiagnosticKind kind) => kind.Code[2] switch
    {
        '1' => "LD1xx: files and syntax",
        '2' => "LD2xx: fields",
        '3' => "LD3xx: geometry",
        '4' => "LD4xx: fits and allowances",
        '5' => "LD5xx: drafting",
        '6' => "LD6xx: look-ups in the tables",
        _ => "LD7xx: worn survivors",
    };
}
