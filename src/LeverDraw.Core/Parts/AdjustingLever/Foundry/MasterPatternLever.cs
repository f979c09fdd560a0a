using LeverDraw.Geometry;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>A master from which a working pattern is cast: two contractions.</summary>
public sealed record MasterPatternLever : FoundryState
{
    private MasterPatternLever(PatternLever pattern, ContractionRate patternMetal)
    {
        (Pattern, PatternMetal) = (pattern, patternMetal);
        (double f, Lever shape) = (patternMetal.Factor, pattern.Enlarged);
        Enlarged = LeverScaling.Apply(shape, f, f, f);
        Transform2D enlarge = Transform2D.Enlarge(f);
        (SideProfile, ForkProfile) = (pattern.SideProfile.Transformed(enlarge), pattern.ForkProfile.Transformed(enlarge));
    }

    public PatternLever Pattern { get; }

    /// <summary>Contraction of the working pattern's metal.</summary>
    public ContractionRate PatternMetal { get; }

    internal Lever Enlarged { get; }

    public Contour SideProfile { get; }

    public Contour ForkProfile { get; }

    internal override Lever Shape => Enlarged;

    internal override Lever FinishedWithin => LeverScaling.Apply(Pattern.FinishedWithin, PatternMetal.Factor, PatternMetal.Factor, PatternMetal.Factor);

    public override FoundryPlan Plan => Pattern.Plan;

    public override ContractionFlag Flag => ContractionFlag.Of(this);

    public static MasterPatternLever Of(PatternLever pattern, ContractionRate patternMetal)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        return new MasterPatternLever(pattern, patternMetal);
    }

    /// <summary>Of a working pattern's size.</summary>
    public Length SizeOf(Length onPattern) => onPattern * PatternMetal.Factor;
}
