using System.Collections.Immutable;
using LeverDraw.Geometry;
using LeverDraw.Standards;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>The part of the lever whose walls along the draw have one depth.</summary>
public enum DraftedPart
{
    Head,
    Bosses,
    Arms,
    Tongue,
}

/// <summary>Draft of one part's walls in one half of the mould: straight from the joint to the wall's own far edge.</summary>
/// <param name="Toward">+1 for the half drawn toward the tongue's lean (+n), −1 for the other.</param>
/// <param name="Joint">The joint's n here.</param>
/// <param name="Depth">From joint to far edge.</param>
/// <param name="Angle">Per side.</param>
/// <param name="Added">By how much the wall stands outside the part's size at the joint.</param>
/// <param name="Taken">By how much it stands inside it at the far edge.</param>
public sealed record DraftedWall(DraftedPart Part, int Toward, Length Joint, Length Depth, Angle Angle, Length Added, Length Taken)
{
    /// <summary>How far the wall has moved outward, at a distance from the joint.</summary>
    public Length OutwardAt(Length fromJoint) => Added - ((Added + Taken) * (fromJoint / Depth));
}

/// <summary>The draft on the walls along the draw. Crowns and flanks look along the draw and need none. Every wall is as deep as the metal there, and its size is held at its own far edge (plus), at the joint (minus) or half way.</summary>
/// <param name="Rule">What the angle comes from, for the note.</param>
public sealed record PatternDraft(string Sense, string Rule, ImmutableArray<DraftedWall> Walls)
{
    /// <summary>1/16 inch per foot (course notes), and 0.03 inch on each side whatever the height (one foundry).</summary>
    private const double FineSlope = 1.0 / 16 / 12, LeastOffsetInches = 0.03;

    /// <summary>Whose side faces are machined, the only such that lie along the draw: the bosses', or without them the head's own.</summary>
    public DraftedPart Machined => Of(DraftedPart.Bosses).Any() ? DraftedPart.Bosses : DraftedPart.Head;

    /// <summary>What draft adds to each machined side face at the joint.</summary>
    public Length AddedToMachined => AddedTo(Machined);

    /// <summary>What draft takes off each machined side face at the most.</summary>
    public Length TakenFromMachined => Of(Machined).Select(w => w.Taken).DefaultIfEmpty(Length.Zero).Max();

    public IEnumerable<DraftedWall> Of(DraftedPart part) => Walls.Where(w => w.Part == part);

    /// <summary>By how much a wall's size is larger on each side at the joint.</summary>
    public Length AddedTo(DraftedPart part) => Of(part).Select(w => w.Added).DefaultIfEmpty(Length.Zero).Max();

    public static PatternDraft Of(PatternLever pattern, PartingCandidate parting)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        return Of(pattern.Casting.Plan, parting, pattern.Enlarged);
    }

    /// <param name="shape">Casting or pattern.</param>
    /// <returns>No walls for an investment casting, whose pattern leaves the mould by melting, nor for a joint along the arms or the pin.</returns>
    public static PatternDraft Of(FoundryPlan plan, PartingCandidate parting, Lever shape)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(parting);
        ArgumentNullException.ThrowIfNull(shape);
        bool drafted = plan.Process != MouldingProcess.Investment && parting.Axis == DrawAxis.SquareToArms;
        return new PatternDraft(plan.Draft.Sense, plan.Draft.Rule, drafted ? [.. WallsOf(plan, parting, shape)] : []);
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

    private static IEnumerable<DraftedWall> WallsOf(FoundryPlan plan, PartingCandidate parting, Lever shape)
    {
        foreach ((DraftedPart part, double level) in ((DraftedPart, double)[])[(DraftedPart.Head, 0), (DraftedPart.Arms, ArmLevel(shape)), (DraftedPart.Tongue, shape.Side.NoseCentre.Y)])
        {
            ImmutableArray<Interval> metal = ContourChords.HorizontalAt(shape.SideProfile, level);
            if (metal.IsEmpty)
                continue;
            Interval whole = new(metal[0].From, metal[^1].To);
            // Bosses stand out sideways: at the head's sides the joint is coped down to their middle.
            double joint = part == DraftedPart.Head && shape.Boss is not null ? 0 : MouldParting.JointAt(parting.Name, shape, whole);
            foreach ((int toward, double depth) in ((int, double)[])[(1, whole.To - joint), (-1, joint - whole.From)])
            {
                if (depth > Coincidence.Distance)
                    yield return Wall(plan, part, toward, Length.FromMillimetres(joint), Length.FromMillimetres(depth));
            }
        }

        if (shape.Boss is not { } boss)
            yield break;
        foreach (int toward in (int[])[1, -1])
            yield return Wall(plan, DraftedPart.Bosses, toward, Length.Zero, boss.Diameter / 2);
    }

    private static DraftedWall Wall(FoundryPlan plan, DraftedPart part, int toward, Length joint, Length depth)
    {
        Angle angle = AngleFor(plan, depth);
        Length whole = depth * Math.Tan(angle.Radians);
        (Length added, Length taken) = plan.Draft.Sense switch
        {
            CastingFields.Plus => (whole, Length.Zero),
            CastingFields.Minus => (Length.Zero, whole),
            _ => (whole / 2, whole / 2),
        };
        return new DraftedWall(part, toward, joint, depth, angle, added, taken);
    }

    /// <summary>Half way between the pads and the gap's top.</summary>
    internal static double ArmLevel(Lever shape) => (shape.Side.PadTop + shape.Fork.GapTop) / 2;

    // No lever is deeper than the tables reach.
    private static Angle Given(Answer<Angle> answer, FoundryPlan plan) => answer.IsGiven ? answer.Value : plan.Draft.Stated;
}
