using LeverDraw.Drafting.Annotations;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>What two placed annotations cost each other besides, while a drawn view settles: what breaks no rule and is no reason to reduce a scale, but makes a reader look twice. The same both ways round.</summary>
internal static class PairBlemish
{
    /// <summary>The back of an arrowhead is what a place knows of it: its length follows.</summary>
    private const double Slimness = DraftingStyle.ArrowSlimness;

    /// <summary>Between boxes of lettering, in heights of the lower of the two: with the clearance inside the boxes some two heights of the letters.</summary>
    private const double RowGap = 0.75;

    /// <summary>Share of the lower box's height over which the two stand side by side, from which they are in one row.</summary>
    private const double OneRow = 0.4;

    /// <summary>So much of an arrowhead, from its back, counts as gone through: at its tip it touches other lines.</summary>
    private const double Body = 0.7;

    /// <summary>From an arrowhead's back, in its lengths, to where another's leader is clear of its tip.</summary>
    private const double Beyond = 1.2;

    /// <summary>Nearer than this, end to end, a leader's shoulder and a dimension line in one line read as one, millimetres.</summary>
    private const double CarriesOn = 8;

    public static double Between(Candidate a, Candidate b) => Between(a.Texts, a.Strokes, a.Heads, a.Bounds, b);

    public static double Between(PlaceShape a, Candidate b) => Between(a.Texts, a.Strokes, a.Heads, a.Bounds, b);

    private static double Between(ReadOnlySpan<OrientedBox> texts, ReadOnlySpan<Stroke> strokes, ReadOnlySpan<Stroke> heads, Box2D bounds, Candidate b)
    {
        const double Farthest = 8;
        if (!bounds.Inflated(Farthest).Overlaps(b.Bounds))
            return 0;
        double cost = 0;
        foreach (ref readonly OrientedBox text in texts)
        {
            foreach (ref readonly OrientedBox other in b.Texts.AsSpan())
                cost = Math.Max(cost, PlacingCosts.ReadOn * Nearness(text, other));
        }

        foreach (ref readonly Stroke head in heads)
        {
            foreach (ref readonly Stroke other in b.Heads.AsSpan())
            {
                if (Meet(head, other))
                    cost += PlacingCosts.HeadsMeet;
            }
        }

        if (Underlines(strokes, b.Texts) || Underlines(b.Strokes, texts))
            cost += PlacingCosts.Underlined;
        if (IsAt(strokes, b.Strokes, b.Texts) || IsAt(b.Strokes, strokes, texts))
            cost += PlacingCosts.LetterAtLine;
        return cost + (Through(heads, b.Strokes, IsLeader(strokes)) + Through(b.Heads, strokes, IsLeader(b.Strokes)) + Lines(strokes, b));
    }

    /// <summary>A letter or sign that stands by itself so near to the end of another's line that this seems to point at it.</summary>
    private static bool IsAt(ReadOnlySpan<Stroke> lines, ReadOnlySpan<Stroke> its, ReadOnlySpan<OrientedBox> letter)
    {
        const double Near = 2;
        if (letter.Length != 1 || !its.IsEmpty)
            return false;
        OrientedBox round = letter[0].Inflated(Near);
        foreach (ref readonly Stroke line in lines)
        {
            if (round.Meets(line.A, line.B))
                return true;
        }

        return false;
    }

    /// <summary>Its arrowhead points at the part itself: a dimension's stands on extension lines anyway.</summary>
    public static bool IsLeader(ReadOnlySpan<Stroke> lines) => !lines.IsEmpty && lines[0].Kind == StrokeKind.Leader;

    /// <summary>A leader's shoulder close over or under another's lettering, a sign or a frame, and along half of it: it seems to belong to it.</summary>
    private static bool Underlines(ReadOnlySpan<Stroke> lines, ReadOnlySpan<OrientedBox> texts)
    {
        const double Close = 1;
        foreach (ref readonly Stroke line in lines)
        {
            if (line.Kind != StrokeKind.Leader || line.A.Y != line.B.Y)
                continue;
            foreach (ref readonly OrientedBox text in texts)
            {
                Box2D box = text.Bounds;
                double shared = Math.Min(line.Bounds.MaxX, box.MaxX) - Math.Max(line.Bounds.MinX, box.MinX);
                if (shared > Math.Min(box.Width, line.Bounds.Width) / 2 && line.A.Y > box.MinY - Close && line.A.Y < box.MaxY + Close)
                    return true;
            }
        }

        return false;
    }

    /// <summary>Arrowheads that a leader or a dimension line goes through, and those of leaders on an extension line.</summary>
    private static double Through(ReadOnlySpan<Stroke> heads, ReadOnlySpan<Stroke> lines, bool ofLeader)
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
                bool through = axis.IsNear(line, half + (reach - front).Length) && Distance(back, reach, line.A, line.B) < half;
                double atTip = extension ? PlacingCosts.TipAtLine(line.DistanceTo(Arrowhead.Tip(head)), StrokeKind.Feature) : 0;
                if (!through && atTip == 0)
                    continue;
                cost += atTip + (!through ? 0 : extension ? PlacingCosts.HeadOnExtension : PlacingCosts.ThroughHead);
                break;
            }
        }

        return cost;
    }

    /// <summary>Leaders that cross a dimension line, only just touch it, or whose shoulder carries it on; dimension lines and cutting planes' ends in one line with an extension line: each once.</summary>
    private static double Lines(ReadOnlySpan<Stroke> strokes, Candidate b)
    {
        const double InOneLine = 0.4;
        bool touches = false, grazes = false, onMark = false, goesOn = false, crosses = false, carriesOn = false;
        foreach (ref readonly Stroke s in strokes)
        {
            if (!s.Bounds.Inflated(CarriesOn).Overlaps(b.Bounds))
                continue;
            foreach (ref readonly Stroke t in b.Strokes.AsSpan())
            {
                if (!s.IsNear(t, CarriesOn))
                    continue;
                switch (s.Kind, t.Kind)
                {
                    case (StrokeKind.DimensionLine, StrokeKind.ExtensionLine):
                        goesOn |= s.RunsAlong(t, InOneLine);
                        break;
                    case (StrokeKind.ExtensionLine, StrokeKind.DimensionLine):
                        goesOn |= t.RunsAlong(s, InOneLine);
                        break;
                    case (StrokeKind.Mark, StrokeKind.ExtensionLine) or (StrokeKind.ExtensionLine, StrokeKind.Mark):
                        onMark |= s.RunsAlong(t, InOneLine);
                        break;
                    case (StrokeKind.Leader, StrokeKind.ExtensionLine):
                        grazes |= Grazes(s, t);
                        break;
                    case (StrokeKind.ExtensionLine, StrokeKind.Leader):
                        grazes |= Grazes(t, s);
                        break;
                    case (StrokeKind.Leader, StrokeKind.Leader) or (StrokeKind.Leader, StrokeKind.Mark) or (StrokeKind.Mark, StrokeKind.Leader):
                        touches |= !s.Crosses(t) && Distance(s.A, s.B, t.A, t.B) < PlacingCosts.Touching;
                        break;
                    case (StrokeKind.Leader, StrokeKind.DimensionLine) or (StrokeKind.DimensionLine, StrokeKind.Leader):
                        carriesOn |= Continues(s, t);
                        if (s.Crosses(t))
                            crosses = true;
                        else
                            touches |= Distance(s.A, s.B, t.A, t.B) < PlacingCosts.Touching;
                        break;
                }
            }
        }

        return (touches ? PlacingCosts.Touches : grazes ? PlacingCosts.Grazes : 0) + (goesOn ? PlacingCosts.OnExtension : 0) + (crosses ? PlacingCosts.SeenAcross : 0) + (carriesOn ? PlacingCosts.CarriedOn : 0) + (onMark ? PlacingCosts.MarkOnExtension : 0);
    }

    /// <summary>A leader or its shoulder that touches an extension line, or crosses it where it bends or ends.</summary>
    private static bool Grazes(in Stroke leader, in Stroke extension) =>
        leader.Crosses(extension) ? leader.FromEnd(extension) < PlacingCosts.Touching : Distance(leader.A, leader.B, extension.A, extension.B) < PlacingCosts.Touching;

    /// <summary>Two lines in one line, end near end.</summary>
    private static bool Continues(in Stroke a, in Stroke b)
    {
        Vector2D along = (a.B - a.A).Unit();
        Vector2D from = b.A - a.A, to = b.B - a.A;
        return Math.Abs(along.Cross(from)) < PlacingCosts.Touching && Math.Abs(along.Cross(to)) < PlacingCosts.Touching;
    }

    /// <summary>How nearly one piece of lettering reads on into another: 0 where they are not in one row or far enough apart, 1 where they touch.</summary>
    private static double Nearness(in OrientedBox a, in OrientedBox b)
    {
        double low = 2 * Math.Min(a.HalfHeight, b.HalfHeight), gap = RowGap * low;
        Vector2D between = b.Centre - a.Centre, along = a.Along;
        double reach = a.HalfLength + b.HalfLength + gap;
        if (Math.Abs(between.X) > reach + low || Math.Abs(between.Y) > reach + low || Math.Abs(along.Cross(b.Along)) > 0.02)
            return 0;
        double beside = a.HalfHeight + b.HalfHeight - Math.Abs(along.Cross(between));
        double apart = Math.Abs(along.Dot(between)) - a.HalfLength - b.HalfLength;
        return beside < OneRow * low || apart >= gap ? 0 : 1 - (Math.Max(0, apart) / gap);
    }

    /// <summary>Point to point in one line they are two dimensions in a row, which share an extension line: common practice, no source.</summary>
    private static bool Meet(in Stroke a, in Stroke b)
    {
        Vector2D pointA = Arrowhead.Pointing(a), pointB = Arrowhead.Pointing(b);
        Point2D backA = Point2D.Lerp(a.A, a.B, 0.5), backB = Point2D.Lerp(b.A, b.B, 0.5);
        double length = pointA.Length, apart = (PlacingCosts.HeadsApart + (1 / Slimness)) * length;
        if ((backA - backB).Length > (2 * length) + apart)
            return false;
        Point2D tipA = backA + pointA, tipB = backB + pointB;
        if (tipA.DistanceTo(tipB) < 0.1 * length && pointA.Dot(pointB) < -0.98 * length * length)
            return false;
        return Distance(tipA, backA, tipB, backB) < apart;
    }

    private static double Distance(Point2D a, Point2D b, Point2D c, Point2D d)
    {
        Vector2D u = b - a, v = d - c;
        double turn = u.Cross(v);
        if (turn != 0)
        {
            double s = (c - a).Cross(v) / turn, t = (c - a).Cross(u) / turn;
            if (s is >= 0 and <= 1 && t is >= 0 and <= 1)
                return 0;
        }

        return Math.Min(Math.Min(FromPoint(a, c, d), FromPoint(b, c, d)), Math.Min(FromPoint(c, a, b), FromPoint(d, a, b)));
    }

    private static double FromPoint(Point2D p, Point2D a, Point2D b)
    {
        Vector2D along = b - a;
        double share = Math.Clamp((p - a).Dot(along) / along.Dot(along), 0, 1);
        return p.DistanceTo(a + (along * share));
    }
}
