using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>How high the body reaches beside the head.</summary>
internal static class ShoulderHeight
{
    public static bool IsPiece(string name) => name is "shoulder-right" or "shoulder-fillet-right" or "shoulder-round-right";

    /// <summary>z of the shoulder at a distance x from the mid-plane; at or inside the head's side, the level where the shoulder starts; −∞ beyond the arms.</summary>
    public static double At(ForkFeatures fork, double x)
    {
        if (x <= fork.ShoulderStart.X)
            return fork.ShoulderStart.Y;
        foreach (NamedEdge piece in fork.Edges)
        {
            if (!IsPiece(piece.Name))
                continue;
            Box2D box = piece.Edge.Box;
            if (x < box.MinX - 1e-12 || x > box.MaxX + 1e-12)
                continue;
            if (piece.Edge is LineEdge line)
                return line.From.Y + ((line.To.Y - line.From.Y) * (x - line.From.X) / (line.To.X - line.From.X));
            ArcEdge arc = (ArcEdge)piece.Edge;
            double aside = x - arc.Centre.X, rise = Math.Sqrt(Math.Max(0, (arc.Radius - aside) * (arc.Radius + aside)));
            return arc.Sweep < 0 ? arc.Centre.Y - rise : arc.Centre.Y + rise;
        }

        return double.NegativeInfinity;
    }
}
