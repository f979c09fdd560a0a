using LeverDraw.Diagnostics;
using LeverDraw.Profiles;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>From a lever and its profile to the states, with whatever stands in the way.</summary>
public static class FoundryRoad
{
    /// <summary>The casting; refused as well when a face of it may not clean up.</summary>
    public static Checked<CastingLever> Casting(Lever finished, Profile profile)
    {
        ArgumentNullException.ThrowIfNull(profile);
        return FoundryPlanning.Of(finished, profile)
            .Then(plan => CastingLever.Of(finished, profile.Values, plan))
            .Then(casting => Checked<CastingLever>.From([.. CleanUp.Findings(PatternLever.Of(casting), profile.Values)], () => casting));
    }

    public static bool HasMaster(Profile profile)
    {
        ArgumentNullException.ThrowIfNull(profile);
        return profile.Values.Get(CastingFields.PatternMetal) != CastingFields.None && FoundryPlanning.IsMeant(profile);
    }

    /// <summary>The master of a working pattern; refused when the profile names no metal for that pattern.</summary>
    public static Checked<MasterPatternLever> Master(Lever finished, Profile profile) => Casting(finished, profile).Then(casting => casting.Plan.PatternMetal is { } metal
        ? Checked<MasterPatternLever>.Good(MasterPatternLever.Of(PatternLever.Of(casting), metal.BookRate))
        : Checked<MasterPatternLever>.Bad([DiagnosticCatalogue.NoPatternMetal.At(profile.Values.PositionOf(CastingFields.PatternMetal), CastingFields.PatternMetal.Name, CastingFields.PatternMetal.Name)]));
}
