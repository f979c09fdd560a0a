using LeverDraw.Drafting.Annotations;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>Arrowheads that meet, that another's line goes through, or at whose tip another's line begins.</summary>
internal static class HeadBlemish
{
    /// <summary>The back of an arrowhead is what a place knows of it: its length follows.</summary>
    private const double Slimness = DraftingStyle.ArrowSlimness;

    /// <summary>So much of an arrowhead, from its back, counts as gone through: at its tip it touches other lines.</summary>
    private const double Body = 0.7;

    /// <summary>From an arrowhead's back, in its lengths, to where another's leader is clear of its tip.</summary>
    private const double Beyond = 1.2;

    /// <summary>Its arrowhead points at the part itself: a dimension's stands on extension lines anyway.</summary>
    public static bool IsLeader(ReadOnlySpan<Stroke> lines) => !lines.IsEmpty && lines[0].Kind == StrokeKind.Leader;

    /// <summary>Arrowheads that a leader or a dimension line goes through, and those of leaders on an extension line.</summary>
    public static double Through(ReadOnlySpan<Stroke> heads, ReadOnlySpan<Stroke> lines, bool ofLeader)
    {
        double cost = 0;
        foreach (ref readonly Stroke head in heads)
        {
            double half = (head.A - head.B).Length / 2;
            Point2D back = Point2D.Lerp(head.A, head.B, 0.5), front = back + (Arrowhead.Pointing(head) * Body);
            var axis = new Stroke(back, front, StrokeKind.DimensionLine);
            foreach (ref readonly Stroke line in lines)
            {
                bool extension = ofLeader && line.Kind == StrokeKind.ExtensionLine;
                if (!(extension || line.Kind is StrokeKind.Leader or StrokeKind.DimensionLine))
                    continue;
                // Another's leader keeps off the tip too: there it would seem to point at the same.
                Point2D reach = line.Kind == StrokeKind.Leader ? back + (Arrowhead.Pointing(head) * Beyond) : front;
                bool through = axis.IsNear(line, half + (reach - front).Length) && Stroke.Distance(back, reach, line.A, line.B) < half;
                double atTip = extension ? PlacingCosts.TipAtLine(line.DistanceTo(Arrowhead.Tip(head)), StrokeKind.Feature) : 0;
                if (!through && atTip == 0)
                    continue;
                cost += atTip + (!through ? 0 : extension ? PlacingCosts.HeadOnExtension : PlacingCosts.ThroughHead);
                break;
            }
        }

        return cost;
    }

    /// <summary>Point to point in one line they are two dimensions in a row, which share an extension line: common practice, no source.</summary>
    public static bool Meet(in Stroke a, in Stroke b)
    {
        Vector2D pointA = Arrowhead.Pointing(a), pointB = Arrowhead.Pointing(b);
        Point2D backA = Point2D.Lerp(a.A, a.B, 0.5), backB = Point2D.Lerp(b.A, b.B, 0.5);
        double length = pointA.Length, apart = (PlacingCosts.HeadsApart + (1 / Slimness)) * length;
        if ((backA - backB).Length > (2 * length) + apart)
            return false;
        Point2D tipA = backA + pointA, tipB = backB + pointB;
        if (tipA.DistanceTo(tipB) < 0.1 * length && pointA.Dot(pointB) < -0.98 * length * length)
            return false;
        return Stroke.Distance(tipA, backA, tipB, backB) < apart;
    }
}
