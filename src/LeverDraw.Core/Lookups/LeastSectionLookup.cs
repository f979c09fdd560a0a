using LeverDraw.Diagnostics;
using LeverDraw.Standards;

namespace LeverDraw.Lookups;

/// <summary>Least wall that still fills.</summary>
public static class LeastSectionLookup
{
    private static readonly LookupInput _metal = new("METAL", "Name or part of it; all when left out", Needed: false, SeveralWords: true);

    public static Lookup Entry { get; } = new("least-section", "Least wall that still fills, by metal", "least-section brass", [_metal], Find);

    private static Checked<LookupAnswer> Find(LookupRequest request)
    {
        IReadOnlyList<LeastSection> rows = request.Text(_metal) is null ? LeastSections.All : request.Named(_metal, "least sections", LeastSections.All, s => s.Metal);
        return request.Answer(() => new LookupAnswer("Least section", [.. rows.Select(s => LookupRow.From(
            LeastSections.Source, s.Kind == "from memory" ? Certainty.FromMemory : Certainty.Thin, s.Metal + ", " + s.Process, LookupValue.Range(s.From, s.To), s.Kind))]));
    }
}
