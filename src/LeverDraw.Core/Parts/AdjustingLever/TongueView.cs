using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>The tongue square to its mid-line: its true width. A partial view, open above the shoulders, which are wider and would be seen from there.</summary>
internal static class TongueView
{
    /// <summary>Of the tongue that is shown however high the shoulders stand, millimetres.</summary>
    private const double Least = 0.5;

    public static ViewGeometry Of(Lever lever)
    {
        SideFeatures side = lever.Side;
        double half = lever.Fork.TongueSide.Start.X, tip = Along(side, side.NoseTip), foot = Math.Min(tip - Least, Foot(lever));
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

    /// <summary>Where the first of the shoulders or of the head's fillets is seen beside the tongue.</summary>
    private static double Foot(Lever lever)
    {
        SideFeatures side = lever.Side;
        double foot = Math.Max(Along(side, side.FlankUpper.End), Along(side, side.HeadFilletFlankLower.End)), level = lever.Fork.TongueSide.Box.MinY;
        foreach (Interval chord in ContourChords.HorizontalAt(lever.SideProfile, level))
            foot = Math.Max(foot, Math.Max(Along(side, new Point2D(chord.From, level)), Along(side, new Point2D(chord.To, level))));
        return foot;
    }

    private static double Along(SideFeatures side, Point2D p) => (p - Point2D.Origin).Dot(side.Tongue.Along);
}
