using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>The tongue square to its mid-line: its true width and length. A partial view, open where the tongue leaves the head's fillet.</summary>
internal static class TongueView
{
    public static ViewGeometry Of(Lever lever)
    {
        SideFeatures side = lever.Side;
        double half = lever.Fork.TongueSide.Start.X, foot = Along(side, side.FlankUpper.End), tip = Along(side, side.NoseTip);
        List<Edge> right = [];
        // The corner's round runs square to the arms, so here it shows foreshortened the other way, and only below the level of the tip.
        if (lever.Fork.TongueCorner is { } corner)
            ArcFit.Add(right, t => new Point2D(corner.PointAt(t).X, Reach(lever, corner.PointAt(t).Y)), 0, 1);
        double shoulder = right.Count > 0 ? right[0].Start.Y : tip;
        double top = right.Count > 0 ? right[^1].End.X : half;
        right.Insert(0, new LineEdge(new(half, foot), new(half, shoulder)));
        if (top > Coincidence.Distance)
            right.Add(new LineEdge(new(top, tip), new(0, tip)));
        return new ViewGeometry
        {
            Edges =
            [
                .. right.SelectMany(e => new[] { e, e.Transformed(Transform2D.MirrorX) }).Select(e => new ViewEdge(LineRole.Edge, e)),
                new(LineRole.Centre, new LineEdge(new(0, foot), new(0, tip))),
            ],
        };
    }

    private static double Along(SideFeatures side, Point2D p) => (p - Point2D.Origin).Dot(side.Tongue.Along);

    /// <summary>How far out along the mid-line the side profile reaches below a height.</summary>
    private static double Reach(Lever lever, double height)
    {
        Transform2D upright = Transform2D.Turn((Math.PI / 2) - lever.Side.Tongue.Along.Angle);
        return ContourClip.PiecesLeftOf(lever.SideProfile, new(0, height), new(-1, 0)).Max(e => e.Transformed(upright).Box.MaxY);
    }
}
