using System.Collections.Immutable;

namespace LeverDraw.Profiles;

/// <summary>A value as it stands in the file, before any field gives it a meaning.</summary>
internal abstract record RawValue(TextSpan Span, string Words);

internal sealed record RawNumber(TextSpan Span, double Value) : RawValue(Span, "a number");

internal sealed record RawText(TextSpan Span, string Value) : RawValue(Span, "text");

internal sealed record RawFlag(TextSpan Span, bool Value) : RawValue(Span, "a flag");

/// <param name="Value">As written.</param>
internal sealed record RawDate(TextSpan Span, string Value) : RawValue(Span, "a date");

internal sealed record RawList(TextSpan Span) : RawValue(Span, "a list");

internal sealed record RawInline(TextSpan Span, ImmutableArray<RawEntry> Members) : RawValue(Span, "an inline table");

/// <summary>A key and its value. The key's parts are what dots part.</summary>
/// <param name="Value">Null when the line has a syntax fault, already told.</param>
internal sealed record RawEntry(ImmutableArray<string> Path, TextSpan KeySpan, RawValue? Value);
