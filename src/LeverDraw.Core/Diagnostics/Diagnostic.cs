namespace LeverDraw.Diagnostics;

/// <summary>How bad a finding is: an <see cref="Error"/> stops the drawing, the others are told beside it.</summary>
public enum Severity
{
    Note,
    Warning,
    Error,
}

/// <summary>A place in a text file. Line and column count from 1; 0 means the place is the whole file. Width is in characters.</summary>
public readonly record struct SourcePosition(string File, int Line, int Column, int Width)
{
    public static SourcePosition WholeFile(string file) => new(file, 0, 0, 0);
}

/// <summary>One finding about the user's input: what is wrong, where, and what to do next.</summary>
/// <param name="Code">A code of the catalogue, such as LD203.</param>
/// <param name="Position">Where it is; null when it belongs to no file.</param>
/// <param name="Field">The field's full name (such as <c>arms.thickness</c>), or null.</param>
/// <param name="Message">What is wrong, one sentence, with the numbers.</param>
/// <param name="Suggestion">What to do next, one sentence.</param>
public sealed record Diagnostic(
    string Code,
    Severity Severity,
    SourcePosition? Position,
    string? Field,
    string Message,
    string Suggestion);
