using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>A pattern: the casting enlarged by its contraction, less what rapping adds. There is none without a contraction.</summary>
public sealed record PatternLever : FoundryState
{
    private PatternLever(CastingLever casting, AxisRates rates)
    {
        (Casting, Rates) = (casting, rates);
        Enlarged = LeverScaling.Apply(casting.Shape, rates.X.Factor, rates.N.Factor, rates.Z.Factor);
        (SideProfile, ForkProfile) = Rapped(Enlarged, casting.Plan.Rapping);
    }

    public CastingLever Casting { get; }

    public AxisRates Rates { get; }

    /// <summary>The pattern before rapping is taken off and draft laid on; draw its views as of any lever.</summary>
    internal Lever Enlarged { get; }

    /// <summary>In (n, z), rapping taken off.</summary>
    public Contour SideProfile { get; }

    /// <summary>In (x, z), rapping taken off.</summary>
    public Contour ForkProfile { get; }

    internal override Lever Shape => Enlarged;

    internal override Lever FinishedWithin => LeverScaling.Apply(Casting.Finished, Rates.X.Factor, Rates.N.Factor, Rates.Z.Factor);

    public override FoundryPlan Plan => Casting.Plan;

    public override ContractionFlag Flag => ContractionFlag.Of(this);

    public static PatternLever Of(CastingLever casting)
    {
        ArgumentNullException.ThrowIfNull(casting);
        return new PatternLever(casting, casting.Plan.Rates);
    }

    /// <summary>How much larger than on the casting a size is, rapping apart: for a thickness between slanted faces by their distance, exactly.</summary>
    public double FactorOf(FoundrySize size) => FactorOf(size, Rates);

    /// <summary>Of a casting's size.</summary>
    public Length SizeOf(FoundrySize size, Length onCasting) => (onCasting * FactorOf(size)) - RappingOn(size, Casting.Plan.Rapping);

    /// <summary>The casting's size that comes from a pattern's.</summary>
    public Length CastingFrom(FoundrySize size, Length onPattern) => (onPattern + RappingOn(size, Casting.Plan.Rapping)) / FactorOf(size);

    internal static double FactorOf(FoundrySize size, AxisRates rates)
    {
        MeasuredAlong a = size.Along;
        double x = rates.X.Factor, n = rates.N.Factor, z = rates.Z.Factor;
        return size.Kind switch
        {
            // Faces square to ν end up ν/f apart: their distance grows by 1 / |ν/f|.
            FoundrySizeKind.Outside or FoundrySizeKind.Inside => 1 / Norm(a.X / x, a.N / n, a.Z / z),
            FoundrySizeKind.Distance => Norm(a.X * x, a.N * n, a.Z * z),
            _ => Math.Sqrt((a.X > 0 ? x : n) * z),
        };
    }

    /// <summary>What rapping adds to an outside size and takes from an inside one, both sides together.</summary>
    internal static Length RappingOn(FoundrySize size, Rapping rapping)
    {
        Length both = 2 * ((rapping.Across * Math.Abs(size.Along.X)) + (rapping.Along * Math.Abs(size.Along.Z)));
        return size.Kind switch
        {
            FoundrySizeKind.Outside => both,
            FoundrySizeKind.Inside => -both,
            _ => Length.Zero,
        };
    }

    /// <summary>The pattern is moved to and fro along both directions, and the mould is what it sweeps; so the pattern is the part of the wanted shape that stays inside under every such move.</summary>
    /// <remarks>A move in x and z leaves the meeting of two extrusions the meeting of two, each narrowed by itself.</remarks>
    private static (Contour Side, Contour Fork) Rapped(Lever lever, Rapping rapping)
    {
        double along = rapping.Along.Millimetres, across = rapping.Across.Millimetres;
        return (Narrowed.By(lever.SideProfile, 0, along), Narrowed.By(lever.ForkProfile, across, along));
    }

    private static double Norm(double x, double y, double z) => Math.Sqrt((x * x) + (y * y) + (z * z));
}
