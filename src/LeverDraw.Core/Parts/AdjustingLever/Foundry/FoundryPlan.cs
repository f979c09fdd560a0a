using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>Everything the foundry's states follow from, beside the finished lever: chosen by the profile or by the tables.</summary>
/// <param name="Tolerance">Casting tolerance.</param>
/// <param name="Required">Least stock wanted on a machined face in the worst case; zero when the profile states the stock itself.</param>
/// <param name="Stock">Laid on the machined faces.</param>
/// <param name="Rates">Contraction of the casting.</param>
/// <param name="PatternMetal">Of a working pattern that is cast itself; null for a pattern made directly.</param>
/// <param name="CoredHole">Diameter of the cored hole; null when it is cast solid.</param>
public sealed record FoundryPlan(
    FoundryMetal Metal,
    MouldingProcess Process,
    CastingToleranceRule Tolerance,
    Length Required,
    LeverStock Stock,
    AxisRates Rates,
    FoundryMetal? PatternMetal,
    Rapping Rapping,
    DraftChoice Draft,
    string Parting,
    Length? CoredHole);

/// <summary>How much rapping enlarges the mould on each side. Square to the joint it enlarges nothing.</summary>
/// <param name="Along">Along the arms.</param>
/// <param name="Across">Along the pin.</param>
public readonly record struct Rapping(Length Along, Length Across)
{
    public bool IsNone => Along == Length.Zero && Across == Length.Zero;
}

/// <summary>How draft is laid on.</summary>
/// <param name="Rule">As <c>casting.draft_rule</c> names it.</param>
/// <param name="Stated">The angle of <c>casting.draft</c>.</param>
/// <param name="Sense">As <c>casting.draft_sense</c> names it.</param>
public readonly record struct DraftChoice(string Rule, Angle Stated, string Sense);
