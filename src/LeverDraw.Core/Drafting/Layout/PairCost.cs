namespace LeverDraw.Drafting.Layout;

/// <summary>What two placed annotations cost each other: broken rules where lettering is met, prices for crossings. The same both ways round.</summary>
internal static class PairCost
{
    public static double Between(Candidate a, Candidate b)
    {
        if (!a.Bounds.Overlaps(b.Bounds))
            return 0;
        double cost = 0;
        foreach (OrientedBox text in a.Texts)
        {
            foreach (OrientedBox other in b.Texts)
            {
                if (text.Overlaps(other))
                    cost += PlacingCosts.Broken;
            }

            cost += Strikes(b.Strokes, text) + Strikes(b.Heads, text);
        }

        foreach (OrientedBox text in b.Texts)
            cost += Strikes(a.Strokes, text) + Strikes(a.Heads, text);

        foreach (ref readonly Stroke s in a.Strokes.AsSpan())
        {
            foreach (ref readonly Stroke t in b.Strokes.AsSpan())
            {
                if (!s.IsNear(t, 1))
                    continue;
                if (s.Crosses(t))
                    cost += PlacingCosts.CrossingOther(s.Kind, t.Kind);
                else if (MayNotRunAlong(s.Kind, t.Kind) && s.RunsAlong(t, 0.8))
                    cost += PlacingCosts.AlongOther;
            }
        }

        return cost;
    }

    private static double Strikes(Stroke[] strokes, in OrientedBox text)
    {
        double cost = 0;
        foreach (ref readonly Stroke stroke in strokes.AsSpan())
        {
            if (text.Meets(stroke.A, stroke.B))
                cost += PlacingCosts.Broken;
        }

        return cost;
    }

    /// <summary>Extension lines may share a line with others; anything else may not.</summary>
    private static bool MayNotRunAlong(StrokeKind a, StrokeKind b) =>
        a == StrokeKind.Mark || b == StrokeKind.Mark || (a != StrokeKind.ExtensionLine && b != StrokeKind.ExtensionLine);
}
