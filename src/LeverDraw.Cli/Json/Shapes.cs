namespace LeverDraw.Cli.Json;

/// <summary>A finding as <c>--json</c> shows it; line and column count from 1, 0 means the whole file.</summary>
internal sealed record DiagnosticShape(
    string Code, string Severity, string? File, int Line, int Column, int Width, string? Field, string Message, string Suggestion);

/// <summary>What <c>check --json</c> prints.</summary>
internal sealed record CheckShape(bool Ok, IReadOnlyList<CheckedFileShape> Files);

internal sealed record CheckedFileShape(string File, bool Ok, string? Kind, string? Name, IReadOnlyList<DiagnosticShape> Diagnostics);

/// <summary>What <c>draw --json</c> prints.</summary>
internal sealed record DrawShape(bool Ok, IReadOnlyList<WrittenShape> Written, IReadOnlyList<DiagnosticShape> Diagnostics);

internal sealed record WrittenShape(string Path, string Profile, string Sheet, string Format, int Bytes);

/// <summary>What <c>remould --json</c> prints; sizes in millimetres.</summary>
internal sealed record RemouldShape(bool Ok, string File, string? Metal, string? Process, IReadOnlyList<CopiedShape> Sizes, IReadOnlyList<DiagnosticShape> Diagnostics);

/// <param name="Pad">On each face of an outside or inside size, else in all; negative to take off.</param>
internal sealed record CopiedShape(string Name, string Field, bool Machined, double Finished, double Original, double ComesOut, double ShortBy, double Pad);

/// <summary>What <c>explain CODE --json</c> prints.</summary>
internal sealed record CodeShape(string Code, string Severity, string Title, string Message, string WhatToDo, string Example);

/// <summary>What <c>explain FIELD --json</c> prints, one for every kind that has it.</summary>
internal sealed record FieldShape(string Kind, string Name, string? Symbol, string Help, string Allowed, string? Default, bool Required, string? AppliesWhen);

/// <summary>What <c>tables LOOKUP --json</c> prints.</summary>
internal sealed record LookupShape(
    bool Ok, string Lookup, string? Title, IReadOnlyList<LookupValueShape> Values, IReadOnlyList<SourceShape> Sources, IReadOnlyList<DiagnosticShape> Diagnostics);

/// <param name="Numbers">One value or the least and the most, in <paramref name="Unit"/>; none for a word.</param>
/// <param name="Sources">Places in the list of sources, counted from 0.</param>
internal sealed record LookupValueShape(
    string Name, string Text, IReadOnlyList<double> Numbers, string Unit, string InchText, IReadOnlyList<double> InchNumbers, string InchUnit,
    string HowSure, IReadOnlyList<int> Sources, string Note);

internal sealed record SourceShape(string Subject, string Document, string Edition, string Table, string HowSure, string Note);

/// <summary>What <c>tables --json</c> prints, one for every look-up.</summary>
internal sealed record LookupNameShape(string Name, string Summary, string Example);
