using LeverDraw.Tolerancing.Allowances;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>The contraction flag of a title block. Only the states themselves can ask for one, each for its own.</summary>
internal static class ContractionFlag
{
    public static string NotIncluded(AxisRates rates) => "CONTRACTION NOT INCLUDED - USE RULE " + Words(rates);

    public static string Included(AxisRates rates) => "CONTRACTION INCLUDED " + Words(rates) + " - USE PLAIN RULE";

    public static string Twice(AxisRates casting, ContractionRate patternMetal) =>
        "TWO CONTRACTIONS INCLUDED " + Words(casting) + " AND " + ContractionText.OneIn(patternMetal) + " - USE PLAIN RULE";

    private static string Words(AxisRates rates) => rates.AreAlike
        ? ContractionText.OneIn(rates.X)
        : ContractionText.OneIn(rates.X) + " ALONG PIN, " + ContractionText.OneIn(rates.N) + " SQUARE TO ARMS, " + ContractionText.OneIn(rates.Z) + " ALONG ARMS";
}
