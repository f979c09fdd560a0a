using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever;

namespace LeverDraw.Comparison.Sheets;

/// <summary>The two overlaid views. Nothing in them is an outline to cut along.</summary>
internal static class OverlayViews
{
    /// <summary>Slivers thinner than this, millimetres, vanish between the two lines: hatching them would only blot.</summary>
    private const double LeastHatched = 0.1;

    /// <summary>Distances below half of what is lettered are none.</summary>
    private const double LeastShown = 0.005;

    /// <summary>Ends of two distances nearer than this, millimetres, are hard to tell apart.</summary>
    private const double LeastApart = 0.5;

    /// <summary>Places nearer than this, millimetres, are one on the sheet.</summary>
    private const double SamePlace = 0.1;

    public static ViewSource Fork(LeverComparison c, DimensionText text)
    {
        double up = Math.Max(c.A.Lever.Fork.TongueTop, c.B.Lever.Fork.TongueTop + c.Shift.Y), down = Math.Min(c.A.Lever.Fork.ArmEnd, c.B.Lever.Fork.ArmEnd + c.Shift.Y);
        var centre = ImmutableArray.CreateBuilder<ViewEdge>();
        centre.Add(new(LineRole.Centre, new LineEdge(new(0, down), new(0, up))));
        centre.Add(PivotAxis(c.A.Lever, 0));
        if (c.Shift.Y != 0)
            centre.Add(PivotAxis(c.B.Lever, c.Shift.Y));
        return View("fork", c.Fork, centre.ToImmutable(), text, symmetric: true);
    }

    public static ViewSource Side(LeverComparison c, DimensionText text)
    {
        IEnumerable<LineEdge> lines = CentreMark.Through(Point2D.Origin, Reach(c.A.Lever));
        if (c.Shift.Length > 0)
            lines = lines.Concat(CentreMark.Through(Point2D.Origin + c.Shift, Reach(c.B.Lever)));
        return View("side", c.Side, [.. lines.Select(l => new ViewEdge(LineRole.Centre, l))], text, symmetric: false);
    }

    private static double Reach(Lever lever) => lever.Sizes[LeverFields.HeadDepth].Millimetres / 2;

    private static ViewEdge PivotAxis(Lever lever, double level)
    {
        double half = lever.Hole.HalfLength.Millimetres;
        return new(LineRole.Centre, new LineEdge(new(-half, level), new(half, level)));
    }

    /// <param name="symmetric">About x = 0: every distance then stands on either side, and its leader may take the one with more room.</param>
    private static ViewSource View(string id, ViewOverlay seen, ImmutableArray<ViewEdge> centre, DimensionText text, bool symmetric)
    {
        // Where the two are one distance measured from either end, it is said once.
        Deviation[] both = IsTheSame(seen.AFromB, seen.BFromA) ? [seen.AFromB] : [seen.AFromB, seen.BFromA];
        Deviation[] shown = [.. both.Where(d => d.Distance.Millimetres >= LeastShown)];
        return new ViewSource(id, null)
        {
            Loops = [.. Loops(seen.A, LineRole.OverlayA), .. Loops(seen.B, LineRole.OverlayB)],
            Hatching = [.. Hatched(seen.Areas.OnlyA, LineRole.OverlayA, Math.PI / 4), .. Hatched(seen.Areas.OnlyB, LineRole.OverlayB, 3 * Math.PI / 4)],
            Edges = centre,
            Annotations = [.. shown.Select(d => Note(id, d, d == seen.AFromB ? "A" : "B", OwnPlaces(seen, d, symmetric), text))],
        };
    }

    private static IEnumerable<ViewLoop> Loops(Silhouette silhouette, LineRole role) =>
        ((IEnumerable<Contour>)[silhouette.Outer, .. silhouette.Holes]).Select(c => new ViewLoop(role, c));

    private static IEnumerable<HatchedRegion> Hatched(OverlayRegion region, LineRole role, double angle) =>
        region.Pieces.Where(p => p.MeanWidth >= LeastHatched).Select(p => new HatchedRegion(p.Loops) { Role = role, Angle = angle });

    /// <summary>Lines that begin at one corner would be taken for each other: where there are two sides, each has its own.</summary>
    private static ImmutableArray<(Point2D At, Point2D Nearest)> OwnPlaces(ViewOverlay seen, Deviation d, bool symmetric)
    {
        ImmutableArray<(Point2D At, Point2D Nearest)> all = [.. Places(d, symmetric)];
        return all.Length < 2 || !MeetOnOneSide(seen) ? all : [all.First(p => p.At.X > 0 == (d == seen.AFromB))];
    }

    private static bool MeetOnOneSide(ViewOverlay seen)
    {
        Point2D[] a = [seen.AFromB.At, seen.AFromB.Nearest], b = [seen.BFromA.At, seen.BFromA.Nearest];
        return a.Any(p => b.Any(q => new Point2D(Math.Abs(p.X), p.Y).DistanceTo(new Point2D(Math.Abs(q.X), q.Y)) < LeastApart));
    }

    private static bool IsTheSame(Deviation one, Deviation other) =>
        one.Shown == other.Shown && one.At.DistanceTo(other.Nearest) < SamePlace && one.Nearest.DistanceTo(other.At) < SamePlace;

    private static IEnumerable<(Point2D At, Point2D Nearest)> Places(Deviation d, bool symmetric)
    {
        yield return (d.At, d.Nearest);
        if (symmetric && Math.Abs(d.At.X) > LeastShown)
            yield return (new(-d.At.X, d.At.Y), new(-d.Nearest.X, d.Nearest.Y));
    }

    private static LeaderNote Note(string view, Deviation deviation, string letter, ImmutableArray<(Point2D At, Point2D Nearest)> places, DimensionText text)
    {
        // From where neither has metal, so that the arrow comes across no outline.
        ImmutableArray<LineEdge> spans = [.. places.Select(p => deviation.Outside ? new LineEdge(p.At, p.Nearest) : new LineEdge(p.Nearest, p.At))];
        return new(
            view + ".distance." + letter,
            deviation.Distance.Millimetres,
            Label.Of(text.Number(deviation.Shown), letter + (deviation.Outside ? " OUTSIDE" : " INSIDE")),
            [.. spans.Select(s => s.Start)])
        {
            Lines = spans,
            Outward = [.. spans.Select(s => (s.Start - s.End).Unit())],
        };
    }
}
