using System.Collections.Immutable;
using LeverDraw.Diagnostics;

namespace LeverDraw.Lookups;

/// <summary>Something a user of <c>tables</c> gives: a word in its place, or an option.</summary>
/// <param name="Name">In capitals for a place, with two dashes for an option.</param>
/// <param name="Help">What it is and how it is written.</param>
/// <param name="Needed">False when it may be left out; options may always be.</param>
/// <param name="SeveralWords">True for a name of one or more words; only the last place may be one.</param>
public sealed record LookupInput(string Name, string Help, bool Needed = true, bool SeveralWords = false)
{
    public bool IsOption => Name.StartsWith("--", StringComparison.Ordinal);
}

/// <summary>One question the tables answer.</summary>
/// <param name="Name">The word that asks it.</param>
/// <param name="Summary">What it answers, one line.</param>
/// <param name="Example">All that stands after <c>tables</c>, names in double quotes where they have blanks.</param>
/// <param name="Inputs">Places in their order, then options.</param>
/// <param name="Find">The answer, or every fault of what was given.</param>
public sealed record Lookup(
    string Name,
    string Summary,
    string Example,
    ImmutableArray<LookupInput> Inputs,
    Func<LookupRequest, Checked<LookupAnswer>> Find);
