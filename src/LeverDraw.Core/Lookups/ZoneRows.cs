using System.Collections.Immutable;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Lookups;

/// <summary>What <c>fit</c> and <c>zone</c> say of one zone.</summary>
internal static class ZoneRows
{
    public static ImmutableArray<StandardSource> Sources(ToleranceZone zone) => zone switch
    {
        { Letter: DeviationLetter.JS } => [Iso286Grades.Source],
        { Feature: FitFeature.Hole } => [Iso286Grades.Source, Iso286Holes.Source],
        _ => [Iso286Grades.Source, Iso286Shafts.Source],
    };

    /// <summary>Every cell is solid but those their tables say are not: M6 of 250 to 315 mm rests on one source.</summary>
    public static Certainty HowSure(ToleranceZone zone, Length nominal) =>
        zone is { Feature: FitFeature.Hole, Letter: DeviationLetter.M, Grade: 6 } && nominal.Millimetres is > 250 and <= 315 ? Certainty.Thin : Certainty.Solid;

    public static LookupRow Limits(string feature, ToleranceZone zone, Length nominal, SizeLimits limits) =>
        new(feature + " " + zone.Text, LookupValue.Limits(limits), HowSure(zone, nominal), Sources(zone), "");

    public static string Feature(ToleranceZone zone) => zone.Feature == FitFeature.Hole ? "hole" : "shaft";

    /// <summary>The size as understood, in both units.</summary>
    public static string Both(Length size) => LengthText.Both(size, 4, 4);
}
