using System.Collections.Immutable;

namespace LeverDraw.Geometry;

/// <summary>Evenly spaced parallel lines filling a region.</summary>
public static class HatchLines
{
    /// <summary>The lines' pieces inside the region and outside the boxes, line by line. One line passes through the origin, so regions hatched alike line up.</summary>
    /// <param name="region">Outlines and holes; inside is by the even-odd rule.</param>
    /// <param name="angle">Radians from +x.</param>
    /// <param name="spacing">Millimetres square to the lines, above zero.</param>
    /// <param name="keepOut">Boxes to leave white, for lettering.</param>
    public static ImmutableArray<LineEdge> Across(ImmutableArray<Contour> region, double angle, double spacing, ImmutableArray<Box2D> keepOut = default)
    {
        if (!(spacing > 0))
            throw new ArgumentOutOfRangeException(nameof(spacing), "Hatch lines need a spacing above zero.");
        if (region.IsDefaultOrEmpty)
            return [];
        Vector2D along = Vector2D.FromAngle(angle);
        Transform2D frame = ChordScanner.Frame(Point2D.Origin, along);
        Box2D reach = region.Aggregate(Box2D.Empty, (box, c) => box.Union(c.Transformed(frame).Box));
        ChordScanner scanner = ChordScanner.Along(Point2D.Origin, along, region.AsSpan());
        Interval[] room = new Interval[scanner.MaxIntervals];
        ImmutableArray<LineEdge>.Builder lines = ImmutableArray.CreateBuilder<LineEdge>();
        List<Interval> kept = [];
        for (double k = Math.Ceiling(reach.MinY / spacing); k * spacing <= reach.MaxY; k++)
        {
            Point2D on = Point2D.Origin + (along.Left * (k * spacing));
            kept.Clear();
            foreach (Interval chord in room.AsSpan(0, scanner.At(k * spacing, room)))
                kept.Add(chord);
            if (!keepOut.IsDefault)
            {
                foreach (Box2D box in keepOut)
                    Subtract(kept, StretchIn(box, on, along));
            }

            foreach (Interval piece in kept)
                lines.Add(new LineEdge(on + (along * piece.From), on + (along * piece.To)));
        }

        return lines.DrainToImmutable();
    }

    private static void Subtract(List<Interval> from, Interval taken)
    {
        if (taken.Length <= 0)
            return;
        for (int i = from.Count - 1; i >= 0; i--)
        {
            Interval had = from[i];
            if (taken.To <= had.From || taken.From >= had.To)
                continue;
            from.RemoveAt(i);
            if (had.To - taken.To > Coincidence.Distance)
                from.Insert(i, new Interval(taken.To, had.To));
            if (taken.From - had.From > Coincidence.Distance)
                from.Insert(i, new Interval(had.From, taken.From));
        }
    }

    // A box is what two strips share; From > To when the line misses it.
    private static Interval StretchIn(Box2D box, Point2D on, Vector2D along)
    {
        Interval x = Strip(box.MinX - on.X, box.MaxX - on.X, along.X), y = Strip(box.MinY - on.Y, box.MaxY - on.Y, along.Y);
        return new Interval(Math.Max(x.From, y.From), Math.Min(x.To, y.To));
    }

    private static Interval Strip(double low, double high, double rate)
    {
        if (rate == 0)
            return low < 0 && high > 0 ? new(double.NegativeInfinity, double.PositiveInfinity) : new(0, -1);
        double a = low / rate, b = high / rate;
        return new Interval(Math.Min(a, b), Math.Max(a, b));
    }
}
