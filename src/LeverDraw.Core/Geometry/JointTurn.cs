namespace LeverDraw.Geometry;

/// <summary>How travel turns from one edge into the next, radians, positive to the left.</summary>
internal static class JointTurn
{
    /// <summary>In [−π, π]. At a cusp, where the outgoing edge turns back, the bends of the two tell whether the way round is to the left or to the right.</summary>
    public static double Between(Edge incoming, Edge outgoing)
    {
        double turn = Between(incoming.TangentAt(1), outgoing.TangentAt(0));
        if (Math.PI - Math.Abs(turn) > Coincidence.Angle)
            return turn;
        return Curvature(outgoing) <= -Curvature(incoming) ? Math.Abs(turn) : -Math.Abs(turn);
    }

    public static double Between(Vector2D from, Vector2D to) => Math.Atan2(from.Cross(to), from.Dot(to));

    /// <summary>One over the radius, per millimetre, positive when bending to the left.</summary>
    public static double Curvature(Edge edge) => edge is ArcEdge arc ? Math.Sign(arc.Sweep) / arc.Radius : 0;
}
