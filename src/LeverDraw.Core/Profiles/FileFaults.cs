using LeverDraw.Diagnostics;

namespace LeverDraw.Profiles;

/// <summary>The faults of one file. Beyond <see cref="Most"/> they are only counted, so that a megabyte of noise stays quick and readable.</summary>
internal sealed class FileFaults(string file)
{
    public const int Most = 100;

    private readonly List<Diagnostic> found = [];
    private int more;

    /// <summary>Set once the file's text is known.</summary>
    public SourceMap? Source { get; set; }

    public bool IsFull => found.Count >= Most;

    public void Add(DiagnosticKind kind, TextSpan? at, string? field, params ReadOnlySpan<object> arguments) =>
        AddWithHint(kind, at, field, null, arguments);

    public void AddWithHint(DiagnosticKind kind, TextSpan? at, string? field, string? hint, params ReadOnlySpan<object> arguments)
    {
        if (IsFull)
        {
            more++;
            return;
        }
        SourcePosition position = at is { } span && Source is not null ? Source.Position(span) : SourcePosition.WholeFile(file);
        found.Add(kind.AtWithHint(position, field, hint, arguments));
    }

    /// <summary>In the order of the text.</summary>
    public IEnumerable<Diagnostic> All()
    {
        IEnumerable<Diagnostic> inOrder = found.OrderBy(d => d.Position?.Line).ThenBy(d => d.Position?.Column);
        return more == 0 ? inOrder : inOrder.Append(DiagnosticCatalogue.MoreFaults.At(SourcePosition.WholeFile(file), null, more));
    }
}
