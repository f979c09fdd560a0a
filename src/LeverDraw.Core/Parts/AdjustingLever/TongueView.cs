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
        return new ViewGeometry
        {
            Edges =
            [
                new(LineRole.Edge, new LineEdge(new(half, foot), new(half, tip))),
                new(LineRole.Edge, new LineEdge(new(half, tip), new(-half, tip))),
                new(LineRole.Edge, new LineEdge(new(-half, tip), new(-half, foot))),
                new(LineRole.Centre, new LineEdge(new(0, foot), new(0, tip))),
            ],
        };
    }

    private static double Along(SideFeatures side, Point2D p) => (p - Point2D.Origin).Dot(side.Tongue.Along);
}
