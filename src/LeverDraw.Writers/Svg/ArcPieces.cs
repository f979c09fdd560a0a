using LeverDraw.Geometry;

namespace LeverDraw.Writers.Svg;

/// <summary>An arc in pieces that an SVG reader takes up surely.</summary>
internal readonly struct ArcPieces(Point2D centre, double radius, double start, double sweep, bool isFullCircle)
{
    /// <summary>An arc's centre is found by the reader from its rounded ends, ever less surely towards half a turn (there 0.0001 mm shifts it by 0.03 mm). In pieces up to 150° it stays within 0.0002 mm.</summary>
    private const double LargestSweep = 150 * Math.PI / 180;

    public int Count { get; } = Math.Max(1, (int)Math.Ceiling((Math.Abs(sweep) / LargestSweep) - Coincidence.Angle));

    public double Radius => radius;

    /// <summary>The flags of SVG's arc: never the large one; counter-clockwise on paper is the negative direction when y points down.</summary>
    public ReadOnlySpan<byte> Flags => sweep > 0 ? " 0 0 0 "u8 : " 0 0 1 "u8;

    /// <param name="piece">From 1 on.</param>
    public Point2D EndOf(int piece)
    {
        double turned = piece < Count ? start + (sweep * ((double)piece / Count)) : isFullCircle ? start : start + sweep;
        return centre + (Vector2D.FromAngle(turned) * radius);
    }
}
