using System.Globalization;
using LeverDraw.Diagnostics;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Lookups;

/// <summary>Rules of thumb for the shape of castings.</summary>
public static class DesignRulesLookup
{
    private static readonly LookupInput _wall = new("--wall", "Thickness of a wall, to give the fillet to its neighbour", Needed: false);
    private static readonly LookupInput _other = new("--other-wall", "Thickness of the neighbour; the same when left out", Needed: false);

    public static Lookup Entry { get; } = new(
        "design-rules", "Fillets, radii, steps and holes of castings", "design-rules --wall 4 --other-wall 6", [_wall, _other], Find);

    private static Checked<LookupAnswer> Find(LookupRequest request)
    {
        Length? wall = request.Size(_wall);
        Length? other = request.Size(_other);
        return request.Answer(() => new LookupAnswer("Shape of castings", [.. Rows(wall ?? other, other ?? wall)]));
    }

    private static IEnumerable<LookupRow> Rows(Length? wall, Length? other)
    {
        if (wall is { } a && other is { } b)
        {
            yield return Row(Certainty.Thin, "fillet between these walls", LookupValue.Size(Length.Max(CastingDesignRules.Fillet(a, b), CastingDesignRules.LeastFillet)), "half the sum of the two, not below the least fillet");
            bool step = Length.Max(a, b) > Length.Min(a, b) * (1 + CastingDesignRules.MostSectionStep);
            yield return Row(Certainty.Thin, "change of section", LookupValue.Word(step ? "slope it" : "may be a step"), step ? Slope() : "");
        }

        yield return Row(Certainty.Thin, "least inside fillet", LookupValue.Size(CastingDesignRules.LeastFillet), "one weak guide");
        yield return Row(Certainty.Thin, "outside radius, iron under 200 mm", LookupValue.Size(CastingDesignRules.SmallIronOutsideRadius), "one foundry, printed sand");
        yield return Row(Certainty.Thin, "inside radius, iron under 200 mm", LookupValue.Size(CastingDesignRules.SmallIronInsideRadius), "one foundry; preferred");
        yield return Row(Certainty.Thin, "inside radius, if need be", LookupValue.Size(CastingDesignRules.SmallIronInsideRadiusFallback), "one foundry");
        yield return Row(Certainty.FromMemory, "cast solid and drill below", LookupValue.Size(CastingDesignRules.LeastCastHole), "one iron foundry says 30 mm");
        yield return Row(Certainty.Thin, "most step between walls", LookupValue.Amount(CastingDesignRules.MostSectionStep * 100, CastingDesignRules.MostSectionStep * 100, "%"), "of the thinner; " + Slope());
        yield return Row(Certainty.FromMemory, "core print, length over diameter", LookupValue.Amount(CastingDesignRules.CorePrintLengthLeast, CastingDesignRules.CorePrintLengthMost, ""), "horizontal core");
    }

    private static string Slope() => string.Create(CultureInfo.InvariantCulture, $"above that a slope of 1 in {CastingDesignRules.SectionSlope}");

    private static LookupRow Row(Certainty howSure, string name, LookupValue value, string note) =>
        LookupRow.From(CastingDesignRules.Source, howSure, name, value, note);
}
