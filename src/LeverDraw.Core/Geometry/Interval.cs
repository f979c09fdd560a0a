namespace LeverDraw.Geometry;

/// <summary>A stretch of a line, by distances in millimetres from the line's point along its unit direction; <paramref name="From"/> ≤ <paramref name="To"/>.</summary>
public readonly record struct Interval(double From, double To)
{
    public double Length => To - From;

    public double Middle => (From + To) / 2;
}
