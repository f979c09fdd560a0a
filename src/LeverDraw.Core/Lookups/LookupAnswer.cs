using System.Collections.Immutable;
using LeverDraw.Standards;

namespace LeverDraw.Lookups;

/// <summary>One line of an answer.</summary>
/// <param name="HowSure">Of this very value; may be better or worse than its table as a whole.</param>
/// <param name="Sources">The tables it was read from; empty when it only follows from other lines.</param>
/// <param name="Note">What else is to be known, without a stop; may be empty.</param>
public sealed record LookupRow(string Name, LookupValue Value, Certainty HowSure, ImmutableArray<StandardSource> Sources, string Note)
{
    /// <summary>As sure as its table.</summary>
    public static LookupRow From(StandardSource source, string name, LookupValue value, string note = "") =>
        new(name, value, source.Certainty, [source], note);

    /// <summary>Surer or less sure than its table.</summary>
    public static LookupRow From(StandardSource source, Certainty howSure, string name, LookupValue value, string note = "") =>
        new(name, value, howSure, [source], note);
}

/// <summary>What the tables say.</summary>
/// <param name="Title">What was asked, as understood.</param>
public sealed record LookupAnswer(string Title, ImmutableArray<LookupRow> Rows)
{
    /// <summary>Every table an answer was read from, each once, in the order met.</summary>
    public ImmutableArray<StandardSource> Sources => [.. Rows.SelectMany(row => row.Sources).Distinct()];
}
