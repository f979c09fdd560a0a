using LeverDraw.Profiles;

namespace LeverDraw.Specimens.Readings;

/// <summary>A piece of a readings file as text, with its place.</summary>
internal readonly record struct RawCell(string Text, TextSpan Span)
{
    public bool IsEmpty => string.IsNullOrWhiteSpace(Text);
}

/// <summary>One row as written, whatever the file's form; an absent cell has an empty text.</summary>
internal sealed record RawReading(RawCell Specimen, RawCell Field, RawCell Value, RawCell Unit, RawCell Instrument, RawCell Where, RawCell Altered, RawCell Note);
