using System.Collections.Immutable;

namespace LeverDraw.Profiles;

/// <summary>One profile file as written: its tables and entries with their places.</summary>
/// <param name="Entries">Every entry with its full path, the table's name first; one or two parts.</param>
/// <param name="Mentioned">When the file has syntax faults, the fields whose names begin a line: they may be there but unreadable.</param>
internal sealed record ProfileDocument(
    SourceMap Source,
    ImmutableArray<RawTable> Tables,
    ImmutableArray<RawEntry> Entries,
    ImmutableHashSet<string> Mentioned)
{
    public RawEntry? Find(string name) => Entries.FirstOrDefault(e => string.Join('.', e.Path) == name);
}

internal sealed record RawTable(string Name, TextSpan Span);
