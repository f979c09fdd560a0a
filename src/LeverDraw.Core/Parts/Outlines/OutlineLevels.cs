using System.Collections.Immutable;
using LeverDraw.Geometry;

namespace LeverDraw.Parts.Outlines;

/// <summary>An outline prepared for many horizontal chords: their total, their first moment, and the length of outline per height.</summary>
internal sealed class OutlineLevels
{
    private readonly ChordScanner _chords;
    private readonly ImmutableArray<MonotonePiece> _pieces;
    private readonly List<(double Level, double Length, bool MaterialAbove)> _flats = [];

    public OutlineLevels(Contour contour)
    {
        _chords = ChordScanner.Horizontal(contour);
        List<MonotonePiece> pieces = [];
        MonotonePiece.Collect(contour, pieces);
        _pieces = [.. pieces];
        foreach (Edge edge in contour.Edges)
        {
            if (edge is LineEdge line && Coincidence.Same(line.From.Y, line.To.Y))
                _flats.Add((line.From.Y, line.Length, line.To.X > line.From.X));
        }
    }

    /// <summary>Heights where the outline has a vertex, or an arc's highest or lowest point.</summary>
    public IEnumerable<double> Breaks => _pieces.SelectMany(p => new[] { p.LowY, p.HighY });

    public IEnumerable<double> Flats => _flats.Select(f => f.Level);

    /// <summary>Total length of the chords at a height and its moment about the vertical axis.</summary>
    public (double Length, double Moment) ChordsAt(double y)
    {
        Span<Interval> room = stackalloc Interval[_chords.MaxIntervals];
        double length = 0, moment = 0;
        foreach (Interval chord in room[.._chords.At(y, room)])
        {
            length += chord.Length;
            moment += chord.Length * (chord.From + chord.To) / 2;
        }

        return (length, moment);
    }

    /// <summary>Length of outline per unit of height, all pieces crossing the height together.</summary>
    public double SlantAt(double y)
    {
        double sum = 0;
        foreach (ref readonly MonotonePiece piece in _pieces.AsSpan())
        {
            if (y <= piece.LowY || y >= piece.HighY)
                continue;
            double up = y - piece.CentreY, rise = piece.HighY - piece.LowY, run = piece.HighX - piece.LowX;
            sum += piece.Side == 0
                ? Math.Sqrt((run * run) + (rise * rise)) / rise
                : piece.Radius / Math.Sqrt((piece.Radius - up) * (piece.Radius + up));
        }

        return sum;
    }

    /// <summary>Length of level edges at a height with material above (or below) them.</summary>
    public double FlatAt(double y, bool materialAbove) =>
        _flats.Where(f => f.MaterialAbove == materialAbove && Coincidence.Same(f.Level, y)).Sum(f => f.Length);
}
