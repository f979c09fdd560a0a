using LeverDraw.Drafting.Completeness;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Profiles;

namespace LeverDraw.Parts.AdjustingLever.FoundrySheets;

/// <summary>The sheets of casting and pattern as functions of what shapes the lever, so that it can be reckoned whether each fixes its state exactly once. A master's sheet says the pattern's sizes times one number.</summary>
internal static class StateDimensioning
{
    /// <summary>Null for a lever that is not to be cast, or that cannot be: that is told elsewhere.</summary>
    public static ParametricSheet? OfCasting(Lever finished, Profile profile) => Of(finished, profile, casting => casting);

    /// <inheritdoc cref="OfCasting"/>
    public static ParametricSheet? OfPattern(Lever finished, Profile profile) => Of(finished, profile, PatternLever.Of);

    private static ParametricSheet? Of(Lever finished, Profile profile, Func<CastingLever, FoundryState> state)
    {
        if (!FoundryPlanning.IsMeant(profile) || FoundryRoad.Casting(finished, profile).Value is not { } casting)
            return null;
        PartingCandidate parting = MouldParting.Of(casting);
        return LeverParameters.OfCast(casting, profile.Values, other => StateSheetSizes.Of(state(other), parting));
    }
}
