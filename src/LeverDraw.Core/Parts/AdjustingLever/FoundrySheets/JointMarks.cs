using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Tolerancing.Allowances;

namespace LeverDraw.Parts.AdjustingLever.FoundrySheets;

/// <summary>The mould's joint in the views it crosses. None on an investment casting: the joint of the wax's die is its maker's.</summary>
internal sealed record JointMarks(PartingCandidate Parting, MouldingProcess Process)
{
    private const string Name = "casting.parting";

    /// <summary>Between the sampled places of a joint that winds through the metal.</summary>
    private const int Places = 40;

    private bool Shown => Process != MouldingProcess.Investment && Parting.Axis == DrawAxis.SquareToArms;

    /// <summary>The deeper half is the drag: dirt floats to the cope, and what is machined lies clean below (an old manual).</summary>
    private bool DragAhead => Parting.DepthAhead >= Parting.DepthBehind;

    private string Ahead => !Process.Sand ? "HALF 1" : DragAhead ? "DRAG" : "COPE";

    private string Behind => !Process.Sand ? "HALF 2" : DragAhead ? "COPE" : "DRAG";

    public IEnumerable<Annotation> InSideView(Lever shape)
    {
        if (!Shown)
            yield break;
        Box2D box = shape.SideProfile.Box;
        yield return new MouldJoint(Name, new(JointAt(shape, box.MinY + 0.01), box.MinY), new(0, -1), new(1, 0), Ahead, Behind);
        yield return new MouldJoint(Name + ".top", new(JointAt(shape, box.MaxY - 0.01), box.MaxY), new(0, 1), new(1, 0), "", "");
    }

    /// <summary>Where it runs through metal; along the back it is the outline itself.</summary>
    public IEnumerable<ViewEdge> ThroughSideView(Lever shape)
    {
        if (!Shown || Parting.Name == CastingFields.AlongBack)
            yield break;
        Box2D box = shape.SideProfile.Box;
        Point2D At(int i) => box.MinY + 0.01 + ((box.Height - 0.02) * i / Places) is var z ? new Point2D(JointAt(shape, z), z) : default;
        if (Parting.IsFlat)
        {
            yield return new ViewEdge(LineRole.Parting, new LineEdge(At(0), At(Places)));
            yield break;
        }

        for (int i = 0; i < Places; i++)
            yield return new ViewEdge(LineRole.Parting, new LineEdge(At(i), At(i + 1)));
    }

    public IEnumerable<Annotation> InSection(HeadSection section)
    {
        if (!Shown || section.Walls.IsEmpty)
            yield break;
        double joint = section.Walls[0].Joint.Millimetres, half = section.HalfWidth(joint, section.Walls[0].Toward, false);
        yield return new MouldJoint(Name, new(half, joint), new(1, 0), new(0, 1), Ahead, Behind) { Levels = [.. section.Steps.Select(level => level - joint)] };
        yield return new MouldJoint(Name + ".left", new(-half, joint), new(-1, 0), new(0, 1), "", "");
    }

    private double JointAt(Lever shape, double z)
    {
        ImmutableArray<Interval> metal = ContourChords.HorizontalAt(shape.SideProfile, z);
        return MouldParting.JointAt(Parting.Name, shape, new Interval(metal[0].From, metal[^1].To));
    }
}
