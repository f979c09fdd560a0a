using LeverDraw.Units;

namespace LeverDraw.Mechanism.Fitting;

/// <summary>What play is still called good, and what must be left after rework. Common practice and own rules, no source.</summary>
internal static class FittingRules
{
    public static readonly Length EndFloat = Mm(0.5), Pivot = Mm(0.15), Groove = Mm(0.3), Slot = Mm(0.35);

    /// <summary>Least pad, tongue and boss that filing may leave, as a share of what is drawn.</summary>
    public const double LeastLeft = 0.85;

    /// <summary>Least width of flange that must stand beside the fork's inner side.</summary>
    public static readonly Length Flange = Mm(0.3);

    private static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);
}
