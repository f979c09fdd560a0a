namespace LeverDraw.Geometry;

/// <summary>Two straight lines.</summary>
internal static class LineLineIntersection
{
    /// <summary>The unbounded lines. Parallel within <see cref="Coincidence.Angle"/> counts as never meeting, unless they are one line.</summary>
    public static CarrierHits Carriers(LineEdge a, LineEdge b)
    {
        Vector2D u = a.TangentAt(0), v = b.TangentAt(0);
        double sine = u.Cross(v);
        double apart = u.Cross(b.From - a.From);
        if (Math.Abs(sine) <= Coincidence.Angle)
        {
            bool same = Math.Abs(apart) <= Coincidence.Distance && Math.Abs(u.Cross(b.To - a.From)) <= Coincidence.Distance;
            return same ? CarrierHits.Everything : CarrierHits.None;
        }

        return CarrierHits.CrossAt(b.From - (v * (apart / sine)));
    }

    /// <summary>The bounded lines, judged by the side each end lies on, so that lines at a very small angle are judged rightly too. Meetings at ends are the caller's.</summary>
    public static CarrierHits Bounded(LineEdge a, LineEdge b)
    {
        Vector2D u = a.TangentAt(0), v = b.TangentAt(0);
        double from = u.Cross(b.From - a.From), to = u.Cross(b.To - a.From);
        if (!OppositeSides(from, to) || !OppositeSides(v.Cross(a.From - b.From), v.Cross(a.To - b.From)))
            return CarrierHits.None;
        return CarrierHits.CrossAt(Point2D.Lerp(b.From, b.To, from / (from - to)));
    }

    private static bool OppositeSides(double a, double b) => (a < 0 && b > 0) || (a > 0 && b < 0);
}
