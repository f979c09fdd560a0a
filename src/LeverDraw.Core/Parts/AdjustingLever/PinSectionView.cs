using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>The cut face through the pin's axis: the head's width by its depth, bosses, and the hole with its taper.</summary>
internal static class PinSectionView
{
    public static ViewGeometry Of(Lever lever)
    {
        Interval depth = ContourChords.HorizontalAt(lever.SideProfile, 0).First(c => c.From < 0 && c.To > 0);
        double side = lever.Fork.ShoulderStart.X, face = lever.Hole.HalfLength.Millimetres, boss = (lever.Boss?.Diameter.Millimetres ?? 0) / 2;
        double left = lever.Hole.AtLeft.Millimetres / 2, right = lever.Hole.AtRight.Millimetres / 2;
        ImmutableArray<HatchedRegion> faces;
        ImmutableArray<ViewEdge> edges = [];
        if (lever.Hole.Supply == LeverFields.Solid)
        {
            Contour whole = Loop([.. Step(side, face, boss, depth.To), .. Step(side, face, -boss, depth.From).Select(p => new Point2D(-p.X, p.Y))]);
            faces = [new([whole])];
        }
        else
        {
            Contour upper = Loop([new(-face, left), new(face, right), .. Step(side, face, boss, depth.To)]);
            Contour lower = Loop([new(face, -right), new(-face, -left), .. Step(side, face, -boss, depth.From).Select(p => new Point2D(-p.X, p.Y))]);
            faces = [new([upper]), new([lower])];
            // The hole's rims behind the cut.
            edges =
            [
                new(LineRole.Section, new LineEdge(new(-face, -left), new(-face, left))),
                new(LineRole.Section, new LineEdge(new(face, -right), new(face, right))),
            ];
        }

        return new ViewGeometry
        {
            Outlines = [.. faces.Select((f, i) => new PlotOutline(i == 0 ? "section-upper" : "section-lower", f.Loops[0]))],
            Edges = [.. edges, new(LineRole.Centre, new LineEdge(new(-face, 0), new(face, 0))), new(LineRole.Centre, new LineEdge(new(0, depth.From), new(0, depth.To)))],
            Hatching = faces,
        };
    }

    /// <summary>From the right face over the boss's rim to the head's edge and back on the left; for the lower half the caller mirrors it.</summary>
    private static IEnumerable<Point2D> Step(double side, double face, double boss, double edge)
    {
        if (face - side > Coincidence.Distance)
        {
            yield return new(face, boss);
            yield return new(side, boss);
        }

        yield return new(side, edge);
        yield return new(-side, edge);
        if (face - side > Coincidence.Distance)
        {
            yield return new(-side, boss);
            yield return new(-face, boss);
        }
    }

    private static Contour Loop(IEnumerable<Point2D> corners)
    {
        Point2D[] all = [.. corners];
        return Contour.Of(Enumerable.Range(0, all.Length).Select(i => new LineEdge(all[i], all[(i + 1) % all.Length])).Where(e => e.Length > Coincidence.Distance));
    }
}
