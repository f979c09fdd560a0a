using System.Collections.Immutable;
using LeverDraw.Geometry;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>One half of a pattern as a true taper: the fork outline at the joint and at the far end, the walls straight between.</summary>
/// <param name="Toward">+1 for the half drawn toward the tongue's lean (+n), −1 for the other.</param>
/// <param name="Depth">From joint to far end.</param>
/// <param name="Angle">Per side.</param>
/// <param name="Added">By how much the outline at the joint stands outside the pattern's size.</param>
/// <param name="Taken">By how much the outline at the far end stands inside it.</param>
public sealed record DraftedHalf(int Toward, Length Depth, Angle Angle, Contour AtJoint, Contour AtFarEnd, Length Added, Length Taken)
{
    /// <summary>How far the wall has moved outward, at a distance from the joint: straight from <see cref="Added"/> to less <see cref="Taken"/>.</summary>
    public Length OutwardAt(Length fromJoint) => Added - ((Added + Taken) * (fromJoint / Depth));
}

/// <summary>The draft of a pattern, on the walls along the draw. Crowns and flanks look along the draw and need none.</summary>
/// <param name="Rule">What the angle comes from, for the note.</param>
public sealed record PatternDraft(string Sense, string Rule, ImmutableArray<DraftedHalf> Halves)
{
    /// <summary>1/16 inch per foot (course notes), and 0.03 inch on each side whatever the height (one foundry).</summary>
    private const double FineSlope = 1.0 / 16 / 12, LeastOffsetInches = 0.03;

    public Length MostTaken => Halves.Select(h => h.Taken).DefaultIfEmpty(Length.Zero).Max();

    public Length MostAdded => Halves.Select(h => h.Added).DefaultIfEmpty(Length.Zero).Max();

    public static PatternDraft Of(PatternLever pattern, PartingCandidate parting)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        ArgumentNullException.ThrowIfNull(parting);
        FoundryPlan plan = pattern.Casting.Plan;
        double square = pattern.Rates.N.Factor;
        ImmutableArray<DraftedHalf> halves =
        [
            .. new[] { (Toward: 1, Depth: parting.DepthAhead * square, Arm: parting.ArmAhead * square), (Toward: -1, Depth: parting.DepthBehind * square, Arm: parting.ArmBehind * square) }
                .Where(h => h.Depth.Millimetres > Coincidence.Distance)
                .Select(h => Half(pattern.ForkProfile, h.Toward, h.Depth, h.Arm, AngleFor(plan, h.Depth), plan.Draft.Sense)),
        ];
        return new PatternDraft(plan.Draft.Sense, plan.Draft.Rule, halves);
    }

    /// <summary>The angle per side that the chosen rule gives for a wall of this depth.</summary>
    public static Angle AngleFor(FoundryPlan plan, Length depth)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Draft.Rule switch
        {
            CastingFields.ByHeight => Given(DraftByHeight.External(plan.Process.Draft, depth), plan),
            CastingFields.WoodPattern => Given(DraftByPatternMaterial.Wood(depth).Map(p => p.External), plan),
            CastingFields.MetalPattern => Given(DraftByPatternMaterial.MetalOrPlastic(depth).Map(p => p.External), plan),
            CastingFields.FineSmall => Angle.FromRadians(Math.Atan(FineSlope)),
            CastingFields.LeastOffset => Angle.FromRadians(Math.Atan(Length.FromInches(LeastOffsetInches) / depth)),
            _ => plan.Draft.Stated,
        };
    }

    // No lever is deeper than the tables reach.
    private static Angle Given(Answer<Angle> answer, FoundryPlan plan) => answer.IsGiven ? answer.Value : plan.Draft.Stated;

    private static DraftedHalf Half(Contour fork, int toward, Length depth, Length arm, Angle angle, string sense)
    {
        Length whole = depth * Math.Tan(angle.Radians);
        (Length added, Length taken) = sense switch
        {
            CastingFields.Plus => (whole, Length.Zero),
            CastingFields.Minus => (Length.Zero, whole),
            CastingFields.AtArms => (whole * (arm / depth), whole * (1 - (arm / depth))),
            _ => (whole / 2, whole / 2),
        };
        return new DraftedHalf(toward, depth, angle, Offset(fork, added.Millimetres), Offset(fork, -taken.Millimetres), added, taken);
    }

    private static Contour Offset(Contour contour, double outward) =>
        ContourOffset.By(contour, outward).MaxBy(ContourMeasure.Area) ?? throw new InvalidOperationException("Draft leaves nothing of the outline.");
}
