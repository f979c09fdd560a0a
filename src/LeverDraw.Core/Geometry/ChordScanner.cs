using System.Collections.Immutable;

namespace LeverDraw.Geometry;

/// <summary>An outline, with any holes, made ready for many parallel chords: build it once per direction, then ask for each height.</summary>
/// <remarks>Inside is by the even-odd rule. Where the line touches a vertex or runs along an edge, the answer joins the chords just above and just below it,
/// so a rectangle's own lower and upper edge are both full chords, and a lone tangent or corner point is none.</remarks>
public sealed class ChordScanner
{
    private readonly MonotonePiece[] _pieces;

    private ChordScanner(MonotonePiece[] pieces) => _pieces = pieces;

    /// <summary>Room that is enough for any answer of <see cref="At(double, Span{Interval})"/>.</summary>
    public int MaxIntervals => _pieces.Length;

    /// <summary>For lines along +x at heights y.</summary>
    public static ChordScanner Horizontal(params ReadOnlySpan<Contour> contours)
    {
        List<MonotonePiece> pieces = [];
        foreach (Contour contour in contours)
            MonotonePiece.Collect(contour, pieces);
        return new ChordScanner([.. pieces]);
    }

    /// <summary>For lines along <paramref name="direction"/>. A height is the distance to the left of the line through <paramref name="origin"/>, a chord's ends are distances along it from there.</summary>
    public static ChordScanner Along(Point2D origin, Vector2D direction, params ReadOnlySpan<Contour> contours)
    {
        Transform2D turn = Frame(origin, direction);
        List<MonotonePiece> pieces = [];
        foreach (Contour contour in contours)
            MonotonePiece.Collect(contour.Transformed(turn), pieces);
        return new ChordScanner([.. pieces]);
    }

    /// <summary>Writes the chords at a height in ascending order and returns how many; they are disjoint and longer than <see cref="Coincidence.Distance"/>.</summary>
    public int At(double y, Span<Interval> into)
    {
        Span<double> above = _pieces.Length <= 128 ? stackalloc double[_pieces.Length] : new double[_pieces.Length];
        int count = Crossings(y, true, above, out bool vertex);
        int found = Pair(above[..count], into, 0);
        if (vertex)
        {
            count = Crossings(y, false, above, out _);
            found = Pair(above[..count], into, found);
            into[..found].Sort(static (a, b) => a.From.CompareTo(b.From));
        }

        return Join(into[..found]);
    }

    public ImmutableArray<Interval> At(double y)
    {
        Span<Interval> room = _pieces.Length <= 64 ? stackalloc Interval[_pieces.Length] : new Interval[_pieces.Length];
        return [.. room[..At(y, room)]];
    }

    /// <summary>The total of the chords at a height, millimetres.</summary>
    public double LengthAt(double y)
    {
        Span<Interval> room = _pieces.Length <= 64 ? stackalloc Interval[_pieces.Length] : new Interval[_pieces.Length];
        double sum = 0;
        foreach (Interval chord in room[..At(y, room)])
            sum += chord.Length;
        return sum;
    }

    /// <summary>True inside by the even-odd rule; on the edge either answer may come.</summary>
    public bool Contains(Point2D p)
    {
        bool inside = false;
        foreach (ref readonly MonotonePiece piece in _pieces.AsSpan())
        {
            if (piece.LowY <= p.Y && p.Y < piece.HighY && piece.XAt(p.Y) > p.X)
                inside = !inside;
        }

        return inside;
    }

    internal static Transform2D Frame(Point2D origin, Vector2D direction) =>
        Transform2D.Move(-origin.X, -origin.Y).Then(Transform2D.Turn(-direction.Angle));

    /// <summary>The sorted crossings of the line a hair above, or below, the height; a vertex within <see cref="Coincidence.Distance"/> counts as on it.</summary>
    private int Crossings(double y, bool above, Span<double> into, out bool vertex)
    {
        vertex = false;
        int count = 0;
        double level = above ? y + Coincidence.Distance : y - Coincidence.Distance;
        foreach (ref readonly MonotonePiece piece in _pieces.AsSpan())
        {
            vertex |= Coincidence.Same(piece.LowY, y) || Coincidence.Same(piece.HighY, y);
            if (piece.LowY > level || piece.HighY <= level)
                continue;
            double x = piece.XAt(y);
            int at = count++;
            for (; at > 0 && into[at - 1] > x; at--)
                into[at] = into[at - 1];
            into[at] = x;
        }

        return count;
    }

    private static int Pair(Span<double> crossings, Span<Interval> into, int found)
    {
        for (int i = 0; i + 1 < crossings.Length; i += 2)
        {
            if (crossings[i + 1] - crossings[i] > Coincidence.Distance)
                into[found++] = new Interval(crossings[i], crossings[i + 1]);
        }

        return found;
    }

    private static int Join(Span<Interval> sorted)
    {
        int kept = 0;
        foreach (Interval next in sorted)
        {
            if (kept > 0 && next.From <= sorted[kept - 1].To + Coincidence.Distance)
                sorted[kept - 1] = new Interval(sorted[kept - 1].From, Math.Max(sorted[kept - 1].To, next.To));
            else
                sorted[kept++] = next;
        }

        return kept;
    }
}
