namespace LeverDraw.Geometry;

/// <summary>The largest circle inside an outline: where a casting's section is thickest.</summary>
/// <remarks>
/// Best-first search over squares: from a square's middle no point of it can be further from the outline than the middle is, plus half the square's diagonal.
/// Squares that cannot beat the best by <see cref="Error"/> are dropped. Distances are to the exact arcs.
/// </remarks>
public readonly record struct InscribedCircle(Point2D Centre, double Radius)
{
    /// <summary>By how much the radius may fall short of the largest, millimetres.</summary>
    public const double Error = 0.001;

    /// <param name="outline">Closed, without holes.</param>
    public static InscribedCircle Largest(Contour outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        ChordScanner inside = ChordScanner.Horizontal(outline);
        Box2D box = outline.Box;
        double half = Math.Max(box.Width, box.Height) / 2;
        var waiting = new PriorityQueue<(Point2D Middle, double Half), double>();
        InscribedCircle best = new(box.Centre, 0);
        Look(box.Centre, half);
        while (waiting.TryDequeue(out (Point2D Middle, double Half) square, out double least) && -least > best.Radius + Error)
        {
            double quarter = square.Half / 2;
            Look(square.Middle + new Vector2D(-quarter, -quarter), quarter);
            Look(square.Middle + new Vector2D(quarter, -quarter), quarter);
            Look(square.Middle + new Vector2D(-quarter, quarter), quarter);
            Look(square.Middle + new Vector2D(quarter, quarter), quarter);
        }

        return best;

        void Look(Point2D middle, double size)
        {
            double distance = ContourQueries.NearestPoint(outline, middle).Distance;
            double depth = inside.Contains(middle) ? distance : -distance;
            if (depth > best.Radius)
                best = new InscribedCircle(middle, depth);
            waiting.Enqueue((middle, size), -(depth + (size * Math.Sqrt(2))));
        }
    }
}
