using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>The raised mark seen edgewise: how far the letters stand out of their face, over the length of the lettering.</summary>
internal static class MarkProud
{
    /// <summary>On the arm's back, in the side view.</summary>
    public static IEnumerable<ViewEdge> OnArm(Lever lever, RaisedMark mark)
    {
        Interval levels = LevelsOnArm(lever, mark);
        double height = mark.Height.Millimetres;
        Edge face = lever.Side.ArmFaceLeft;
        (Point2D upper, Vector2D upperOut) = At(face, levels.To);
        (Point2D lower, Vector2D lowerOut) = At(face, levels.From);
        Point2D top = upper + (upperOut * height), bottom = lower + (lowerOut * height);
        Edge crest = face is ArcEdge arc ? ArcEdge.Between(arc.Centre, top, bottom, arc.Sweep > 0) : new LineEdge(top, bottom);
        foreach (Edge edge in new[] { new LineEdge(upper, top), crest, new LineEdge(bottom, lower) })
            yield return new ViewEdge(LineRole.Edge, edge);
    }

    /// <summary>The heights z between which a mark stands on the arm's back; null where none does.</summary>
    public static Interval? OnArmBetween(Lever lever) => lever.Mark is { Place: LeverFields.ArmBack } mark ? LevelsOnArm(lever, mark) : null;

    private static Interval LevelsOnArm(Lever lever, RaisedMark mark)
    {
        double middle = MarkSeat.On(mark, lever.Fork, lever.Side, lever.Hole).Middle.Y, half = StrokeLettering.WidthOf(mark.Text, mark.LetterHeight.Millimetres) / 2;
        return new Interval(middle - half, middle + half);
    }

    /// <summary>On the head's right face, in the fork view.</summary>
    public static IEnumerable<ViewEdge> OnHead(Lever lever, RaisedMark mark)
    {
        MarkSeat seat = MarkSeat.On(mark, lever.Fork, lever.Side, lever.Hole);
        double half = mark.LetterHeight.Millimetres / 2, x = seat.Face, out_ = x + mark.Height.Millimetres;
        Point2D[] corners = [new(x, seat.Middle.Y - half), new(out_, seat.Middle.Y - half), new(out_, seat.Middle.Y + half), new(x, seat.Middle.Y + half)];
        for (int i = 1; i < corners.Length; i++)
            yield return new ViewEdge(LineRole.Edge, new LineEdge(corners[i - 1], corners[i]));
    }

    /// <summary>The face's point at a height, and the way out of the metal there; the face travels down with the metal on its left.</summary>
    private static (Point2D Point, Vector2D Out) At(Edge face, double z)
    {
        if (face is LineEdge line)
        {
            Vector2D along = (line.To - line.From).Unit();
            return (Point2D.Lerp(line.From, line.To, (z - line.From.Y) / (line.To.Y - line.From.Y)), -along.Left);
        }

        var arc = (ArcEdge)face;
        double rise = z - arc.Centre.Y, reach = Math.Sqrt(Math.Max(0, (arc.Radius - rise) * (arc.Radius + rise)));
        bool metalInside = arc.Sweep > 0;
        var point = new Point2D(arc.Centre.X + (metalInside ? -reach : reach), z);
        Vector2D from = (point - arc.Centre).Unit();
        return (point, metalInside ? from : -from);
    }
}
