using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever.Foundry;

namespace LeverDraw.Parts.AdjustingLever.FoundrySheets;

/// <summary>The head cut through the pin's axis, in (x, n), with its draft as it is; the hole is cast solid.</summary>
/// <param name="Walls">Of the head.</param>
/// <param name="BossWalls">Of the bosses, less deep than the head.</param>
internal sealed record HeadSection(Lever Shape, ImmutableArray<DraftedWall> Walls, ImmutableArray<DraftedWall> BossWalls)
{
    public Interval Depth { get; } = ContourChords.HorizontalAt(Shape.SideProfile, 0).First(c => c.From < 0 && c.To > 0);

    private double Side => Shape.Fork.ShoulderStart.X;

    private double BossRadius => (Shape.Boss?.Diameter.Millimetres ?? 0) / 2;

    public static HeadSection Of(Lever shape, PatternDraft draft) => new(shape, [.. draft.Of(DraftedPart.Head)], [.. draft.Of(DraftedPart.Bosses)]);

    /// <summary>Half the width at a depth n, on the side of the joint that <paramref name="toward"/> names.</summary>
    public double HalfWidth(double n, int toward, bool onBoss) =>
        (onBoss ? Shape.Hole.HalfLength.Millimetres : Side) + ((onBoss ? BossWalls : Walls).FirstOrDefault(w => w.Toward == toward) is { } wall
            ? wall.OutwardAt(Units.Length.FromMillimetres(Math.Abs(n - wall.Joint.Millimetres))).Millimetres
            : 0);

    public ViewGeometry Seen()
    {
        Contour face = Face();
        double right = face.Box.MaxX;
        return new ViewGeometry
        {
            Outlines = [new PlotOutline("section", face)],
            Edges = [new(LineRole.Centre, new LineEdge(new(-right, 0), new(right, 0))), new(LineRole.Centre, new LineEdge(new(0, Depth.From), new(0, Depth.To)))],
            Hatching = [new HatchedRegion([face])],
        };
    }

    /// <summary>The finished faces and the hole to come.</summary>
    /// <param name="finished">At the same contraction as the shape.</param>
    public IEnumerable<ViewEdge> Finished(Lever finished)
    {
        double face = finished.Hole.HalfLength.Millimetres;
        (double low, double high) = BossRadius > 0 ? (-BossRadius, BossRadius) : (Depth.From, Depth.To);
        foreach (int sign in (int[])[-1, 1])
        {
            if (Shape.Hole.HalfLength.Millimetres - face > Coincidence.Distance)
                yield return new ViewEdge(LineRole.Phantom, new LineEdge(new(sign * face, low), new(sign * face, high)));
            if (Shape.Hole.Supply == LeverFields.Solid)
                yield return new ViewEdge(LineRole.Phantom, new LineEdge(new(-face, sign * finished.Hole.AtLeft.Millimetres / 2), new(face, sign * finished.Hole.AtRight.Millimetres / 2)));
        }
    }

    /// <summary>The depths n between the head's own faces at which its width steps: the bosses'.</summary>
    public IEnumerable<double> Steps => BossRadius > 0 ? [-BossRadius, BossRadius] : [];

    private Contour Face()
    {
        List<Point2D> right = [];
        double[] levels = [.. Levels().Distinct().Order()];
        for (int i = 0; i + 1 < levels.Length; i++)
        {
            double middle = (levels[i] + levels[i + 1]) / 2;
            int toward = Walls.FirstOrDefault(w => (middle - w.Joint.Millimetres) * w.Toward > 0)?.Toward ?? 1;
            bool boss = Math.Abs(middle) < BossRadius;
            right.Add(new(HalfWidth(levels[i], toward, boss), levels[i]));
            right.Add(new(HalfWidth(levels[i + 1], toward, boss), levels[i + 1]));
        }

        Point2D[] all = [.. right, .. right.Select(p => new Point2D(-p.X, p.Y)).Reverse()];
        return Contour.Of(Enumerable.Range(0, all.Length).Select(i => new LineEdge(all[i], all[(i + 1) % all.Length])).Where(e => e.Length > Coincidence.Distance));
    }

    private IEnumerable<double> Levels()
    {
        yield return Depth.From;
        yield return Depth.To;
        foreach (double step in Steps)
            yield return step;
        foreach (DraftedWall wall in Walls)
        {
            if (wall.Joint.Millimetres > Depth.From && wall.Joint.Millimetres < Depth.To)
                yield return wall.Joint.Millimetres;
        }
    }
}
