using LeverDraw.Tolerancing.Allowances;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>What a sheet says of contraction. There is one only of a state, each its own: a title block cannot say of a casting what holds for a pattern.</summary>
public sealed record ContractionFlag
{
    private ContractionFlag(string text) => Text = text;

    public string Text { get; }

    public static ContractionFlag Of(CastingLever casting)
    {
        ArgumentNullException.ThrowIfNull(casting);
        return new ContractionFlag("CONTRACTION NOT INCLUDED - USE RULE " + Words(casting.Plan.Rates));
    }

    public static ContractionFlag Of(PatternLever pattern)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        return new ContractionFlag("CONTRACTION INCLUDED " + Words(pattern.Rates) + " - USE PLAIN RULE");
    }

    public static ContractionFlag Of(MasterPatternLever master)
    {
        ArgumentNullException.ThrowIfNull(master);
        return new ContractionFlag("TWO CONTRACTIONS INCLUDED " + Words(master.Pattern.Rates) + " AND " + ContractionText.OneIn(master.PatternMetal) + " - USE PLAIN RULE");
    }

    private static string Words(AxisRates rates) => rates.AreAlike
        ? ContractionText.OneIn(rates.X)
        : "PIN " + ContractionText.OneIn(rates.X) + ", SQUARE " + ContractionText.OneIn(rates.N) + ", ARMS " + ContractionText.OneIn(rates.Z);
}
