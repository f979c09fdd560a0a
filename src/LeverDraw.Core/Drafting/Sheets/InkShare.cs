using System.Collections.Immutable;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Sheets;

/// <summary>How much of the usable field, that beside the title block, a finished sheet's ink takes: squares of a grid with ink nearer than the least gap between blocks, or inside an outline, over all squares (docs/adr/0006-layout.md).</summary>
internal sealed class InkShare
{
    /// <summary>Side of a grid square, millimetres.</summary>
    private const double Pitch = 5;

    /// <summary>Between points of a line that are asked about, millimetres.</summary>
    private const double Step = 1;

    /// <summary>White so near to ink is not free, millimetres: blocks keep that distance.</summary>
    private const double Reach = 5;

    private readonly Box2D _field;
    private readonly int _columns;
    private readonly int _rows;
    private readonly bool[] _taken;

    private InkShare(Box2D field)
    {
        _field = field;
        _columns = (int)(field.Width / Pitch);
        _rows = (int)(field.Height / Pitch);
        _taken = new bool[_columns * _rows];
    }

    /// <returns>0 to 1.</returns>
    public static double Of(ImmutableArray<PlotItem> items, Box2D field, Box2D title)
    {
        var share = new InkShare(field);
        Box2D within = field.Inflated(-Pitch);
        foreach (PlotItem item in items)
        {
            switch (item)
            {
                case PlotText text:
                    share.Mark(Box2D.Of(InkBox.Corners(text)));
                    break;
                case PlotFill fill:
                    share.Mark(Box2D.Of(fill.Corners));
                    break;
                case PlotLoop loop:
                    share.MarkOutline(loop.Contour);
                    break;
                case PlotStroke stroke when stroke.Role != LineRole.Frame || within.Contains(stroke.Edge.Box):
                    share.Mark(stroke.Edge);
                    break;
            }
        }

        int inTitle = share.Empty(title);
        return share._taken.Count(t => t) / (double)(share._taken.Length - inTitle);
    }

    /// <returns>How many squares have their middle in the title block: they are no part of the usable field.</returns>
    private int Empty(Box2D title)
    {
        (int c0, int c1) = Span(title.MinX - _field.MinX, title.MaxX - _field.MinX, _columns);
        (int r0, int r1) = Span(title.MinY - _field.MinY, title.MaxY - _field.MinY, _rows);
        for (int r = r0; r < r1; r++)
            _taken.AsSpan((r * _columns) + c0, c1 - c0).Clear();
        return (c1 - c0) * (r1 - r0);
    }

    private void Mark(Edge edge)
    {
        // One box takes what its points would, one by one.
        if (edge is LineEdge line && (line.From.X == line.To.X || line.From.Y == line.To.Y))
        {
            Mark(line.Box);
            return;
        }

        int steps = Math.Max(1, (int)Math.Ceiling(edge.Length / Step));
        for (int i = 0; i <= steps; i++)
        {
            Mark(Box2D.Of(edge.PointAt((double)i / steps)));
        }
    }

    private void Mark(Box2D ink)
    {
        (int c0, int c1) = Span(ink.MinX - Reach - _field.MinX, ink.MaxX + Reach - _field.MinX, _columns);
        (int r0, int r1) = Span(ink.MinY - Reach - _field.MinY, ink.MaxY + Reach - _field.MinY, _rows);
        for (int r = r0; r < r1; r++)
            _taken.AsSpan((r * _columns) + c0, Math.Max(0, c1 - c0)).Fill(true);
    }

    /// <summary>The squares whose middles lie between two distances from the field's edge.</summary>
    private static (int First, int End) Span(double from, double to, int count) =>
        (Math.Clamp((int)Math.Floor((from / Pitch) + 0.5), 0, count), Math.Clamp((int)Math.Floor((to / Pitch) + 0.5), 0, count));

    private void MarkOutline(Contour outline)
    {
        foreach (Edge edge in outline.Edges)
            Mark(edge);
        ChordScanner inside = ChordScanner.Horizontal(outline);
        Box2D box = outline.Box;
        (int c0, int c1) = Span(box.MinX - _field.MinX, box.MaxX - _field.MinX, _columns);
        (int r0, int r1) = Span(box.MinY - _field.MinY, box.MaxY - _field.MinY, _rows);
        for (int r = r0; r < r1; r++)
        {
            for (int c = c0; c < c1; c++)
                _taken[(r * _columns) + c] |= inside.Contains(new Point2D(_field.MinX + ((c + 0.5) * Pitch), _field.MinY + ((r + 0.5) * Pitch)));
        }
    }
}
