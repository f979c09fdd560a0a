using LeverDraw.Drafting.Annotations;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>What a reader sees of one linear dimension at its place: where its span, its line and its number lie. Paper millimetres along and across <see cref="Along"/>.</summary>
/// <param name="Along">Of the dimension line, length one, to the right or upward; nothing for a place that is no linear dimension.</param>
/// <param name="From">Where the arrows' points are.</param>
/// <param name="Level">Of the dimension line, to the left of <see cref="Along"/>.</param>
/// <param name="Out">The side of what is measured on which the line stands: +1 to the left, −1 to the right, 0 without extension lines.</param>
/// <param name="Number">Middle of the number along the line.</param>
/// <param name="OnLeader">The number stands at the end of a leader from within the line; one at the end of the line itself, bent, reads like one straight beside it.</param>
internal readonly record struct DimensionSpan(Vector2D Along, double From, double To, double Level, int Out, double Number, bool OnLeader)
{
    public bool IsNone => Along == default;

    /// <summary>The number stands beside its own extension lines.</summary>
    public bool IsNumberedBeside => Number < From || Number > To;

    public static DimensionSpan Of(ReadOnlySpan<OrientedBox> texts, ReadOnlySpan<Stroke> strokes, ReadOnlySpan<Stroke> heads)
    {
        // A linear dimension begins with its line; one of angles has several, a run more arrowheads.
        if (heads.Length != 2 || texts.IsEmpty || strokes.IsEmpty || strokes[0].Kind != StrokeKind.DimensionLine || (strokes.Length > 1 && strokes[1].Kind == StrokeKind.DimensionLine))
            return default;
        Vector2D u = (strokes[0].B - strokes[0].A).Unit();
        if (u.X < -1e-9 || (u.X <= 1e-9 && u.Y < 0))
            u = -u;
        double a = u.Dot(Arrowhead.Tip(heads[0]) - Point2D.Origin), b = u.Dot(Arrowhead.Tip(heads[1]) - Point2D.Origin);
        int side = 0;
        bool onLeader = false;
        Stroke line = strokes[0];
        foreach (ref readonly Stroke s in strokes[1..])
        {
            onLeader |= s.Kind == StrokeKind.Leader && !IsEnd(s.A) && !IsEnd(s.B);
            if (s.Kind == StrokeKind.ExtensionLine && side == 0)
                side = Math.Sign(u.Cross(s.B - s.A));
        }

        return new DimensionSpan(u, Math.Min(a, b), Math.Max(a, b), u.Cross(strokes[0].A - Point2D.Origin), side, u.Dot(texts[0].Centre - Point2D.Origin), onLeader);

        bool IsEnd(Point2D point) => point.DistanceTo(line.A) < 1e-6 || point.DistanceTo(line.B) < 1e-6;
    }
}
