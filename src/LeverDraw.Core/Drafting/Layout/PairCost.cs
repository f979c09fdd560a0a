using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>What two placed annotations cost each other: broken rules where lettering is met, prices for crossings. The same both ways round.</summary>
internal static class PairCost
{
    public static double Between(Candidate a, Candidate b) =>
        a.Bounds.Overlaps(b.Bounds) ? Between(a.Texts, a.Strokes, a.Heads, b) : 0;

    public static double Between(PlaceShape a, Candidate b) =>
        a.Bounds.Overlaps(b.Bounds) ? Between(a.Texts, a.Strokes, a.Heads, b) : 0;

    /// <summary>What a place costs whose lettering is known to meet nothing of the other.</summary>
    public static double OfLines(PlaceShape a, Candidate b) =>
        a.Bounds.Overlaps(b.Bounds) ? Between([], a.Strokes, a.Heads, b) : 0;

    /// <summary>The least that lines cost, whatever they are lengthened by.</summary>
    public static double Least(PlaceShape lines, Candidate other)
    {
        if (!lines.Bounds.Overlaps(other.Bounds))
            return 0;
        double cost = 0;
        foreach (ref readonly OrientedBox text in other.Texts.AsSpan())
            cost += Strikes(lines.Strokes, text) + Strikes(lines.Heads, text);
        foreach (ref readonly Stroke s in lines.Strokes)
        {
            foreach (ref readonly Stroke t in other.Strokes.AsSpan())
            {
                if (s.IsNear(t, 0) && s.Crosses(t))
                    cost += PlacingCosts.CrossingOther(s.Kind, t.Kind);
            }
        }

        return cost;
    }

    /// <summary>True when lettering meets any ink of another annotation.</summary>
    public static bool Strikes(ReadOnlySpan<OrientedBox> texts, Candidate other)
    {
        foreach (ref readonly OrientedBox text in texts)
        {
            if (!text.Bounds.Overlaps(other.Bounds))
                continue;
            foreach (ref readonly OrientedBox its in other.Texts.AsSpan())
            {
                if (text.Overlaps(its))
                    return true;
            }

            if (Strikes(other.Strokes, text) + Strikes(other.Heads, text) > 0)
                return true;
        }

        return false;
    }

    private static double Between(ReadOnlySpan<OrientedBox> texts, ReadOnlySpan<Stroke> strokes, ReadOnlySpan<Stroke> heads, Candidate b)
    {
        double cost = 0;
        foreach (ref readonly OrientedBox text in texts)
        {
            if (!text.Bounds.Overlaps(b.Bounds))
                continue;
            foreach (ref readonly OrientedBox other in b.Texts.AsSpan())
            {
                if (text.Overlaps(other))
                    cost += PlacingCosts.Broken;
            }

            cost += Strikes(b.Strokes, text) + Strikes(b.Heads, text);
        }

        foreach (ref readonly OrientedBox text in b.Texts.AsSpan())
            cost += Strikes(strokes, text) + Strikes(heads, text);

        foreach (ref readonly Stroke s in strokes)
        {
            if (!s.Bounds.Inflated(1).Overlaps(b.Bounds))
                continue;
            foreach (ref readonly Stroke t in b.Strokes.AsSpan())
            {
                if (!s.IsNear(t, 1))
                    continue;
                if (s.Crosses(t))
                    cost += PlacingCosts.CrossingOther(s.Kind, t.Kind);
                else if (MayNotRunAlong(s.Kind, t.Kind) && s.RunsAlong(t, 0.8))
                    cost += PlacingCosts.AlongOther;
                else if (LeaderBesideExtension(s.Kind, t.Kind) && s.LiesBeside(t, PlacingCosts.BesideFeature))
                    cost += PlacingCosts.BesideExtension;
            }
        }

        return cost;
    }

    private static double Strikes(ReadOnlySpan<Stroke> strokes, in OrientedBox text)
    {
        double cost = 0;
        foreach (ref readonly Stroke stroke in strokes)
        {
            if (text.Meets(stroke.A, stroke.B))
                cost += PlacingCosts.Broken;
        }

        return cost;
    }

    private static bool LeaderBesideExtension(StrokeKind a, StrokeKind b) =>
        (a, b) is (StrokeKind.Leader, StrokeKind.ExtensionLine) or (StrokeKind.ExtensionLine, StrokeKind.Leader);

    /// <summary>Extension lines may share a line with others; anything else may not.</summary>
    private static bool MayNotRunAlong(StrokeKind a, StrokeKind b) =>
        a == StrokeKind.Mark || b == StrokeKind.Mark || (a != StrokeKind.ExtensionLine && b != StrokeKind.ExtensionLine);
}
