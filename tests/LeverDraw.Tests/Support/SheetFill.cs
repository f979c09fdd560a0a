using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Support;

/// <summary>How much of a finished sheet's usable field, that beside the title block, is in use, and where its middle lies: by a grid over the ink, blind to how the ink was placed.</summary>
/// <remarks>
/// A grid square counts when its middle lies within <see cref="Reach"/> of any ink: white so near to ink is not free, since blocks keep that distance.
/// The inside of an outline counts, being part of the picture. Why this measure: docs/adr/0006-layout.md.
/// </remarks>
internal sealed class SheetFill
{
    /// <summary>Side of a grid square, millimetres.</summary>
    public const double Pitch = 5;

    /// <summary>The least gap between blocks, millimetres.</summary>
    public const double Reach = 5;

    private readonly bool[,] _taken;
    private readonly Box2D _field;

    /// <summary>Known by its lines; empty where there are none.</summary>
    private readonly Box2D _title;

    private SheetFill(Box2D field, Box2D title)
    {
        _field = field;
        _title = title;
        _taken = new bool[(int)(field.Width / Pitch), (int)(field.Height / Pitch)];
    }

    /// <summary>Taken squares over all squares, those of the title block left out of both.</summary>
    public double Share
    {
        get
        {
            ((double X, double Y) Middle, bool IsTaken)[] usable = [.. Squares().Where(s => !_title.Contains(new Point2D(_field.MinX + (s.Middle.X * _field.Width), _field.MinY + (s.Middle.Y * _field.Height))))];
            return usable.Count(s => s.IsTaken) / (double)usable.Length;
        }
    }

    /// <summary>Middle of the taken squares from the field's middle, in shares of the field's width and height.</summary>
    public (double X, double Y) OffCentre
    {
        get
        {
            (double X, double Y)[] taken = [.. Squares().Where(s => s.IsTaken).Select(s => s.Middle)];
            return (taken.Average(t => t.X) - 0.5, taken.Average(t => t.Y) - 0.5);
        }
    }

    public static SheetFill Of(PlotSheet sheet, Box2D field)
    {
        Box2D title = sheet.Items.OfType<PlotStroke>().Where(s => s.Role == LineRole.TitleBlock).Aggregate(Box2D.Empty, (box, s) => box.Union(s.Edge.Box));
        var fill = new SheetFill(field, title);
        foreach (PlotItem item in sheet.Items)
            fill.Add(item);
        return fill;
    }

    /// <summary>All squares' middles, in shares of the field.</summary>
    private IEnumerable<((double X, double Y) Middle, bool IsTaken)> Squares()
    {
        for (int c = 0; c < _taken.GetLength(0); c++)
        {
            for (int r = 0; r < _taken.GetLength(1); r++)
                yield return (((c + 0.5) / _taken.GetLength(0), (r + 0.5) / _taken.GetLength(1)), _taken[c, r]);
        }
    }

    private void Add(PlotItem item)
    {
        switch (item)
        {
            case PlotText or PlotFill:
                Mark(Legibility.BoxOf(item));
                break;
            case PlotHatch:
                break;
            case PlotLoop loop:
                foreach (Edge edge in loop.Contour.Edges)
                    Mark(edge);
                MarkInside([.. loop.Contour.Edges.SelectMany(e => Flattening.Of(e, 0.1))]);
                break;
            case PlotStroke { Role: LineRole.Frame } frame when !_field.Inflated(-Pitch).Contains(frame.Edge.Box):
                break;
            case PlotStroke stroke:
                Mark(stroke.Edge);
                break;
        }
    }

    private void Mark(Edge edge)
    {
        var points = Flattening.Of(edge, 0.1);
        for (int i = 0; i + 1 < points.Length; i++)
        {
            Vector2D along = points[i + 1] - points[i];
            int pieces = Math.Max(1, (int)Math.Ceiling(along.Length));
            for (int k = 0; k <= pieces; k++)
            {
                Point2D p = points[i] + (along * ((double)k / pieces));
                Mark(new Box2D(p.X, p.Y, p.X, p.Y));
            }
        }
    }

    private void Mark(Box2D ink)
    {
        int Index(double at) => (int)Math.Floor((at / Pitch) + 0.5);
        int c0 = Math.Max(0, Index(ink.MinX - Reach - _field.MinX)), c1 = Math.Min(_taken.GetLength(0), Index(ink.MaxX + Reach - _field.MinX)) - 1;
        int r0 = Math.Max(0, Index(ink.MinY - Reach - _field.MinY)), r1 = Math.Min(_taken.GetLength(1), Index(ink.MaxY + Reach - _field.MinY)) - 1;
        for (int c = c0; c <= c1; c++)
        {
            for (int r = r0; r <= r1; r++)
                _taken[c, r] = true;
        }
    }

    /// <summary>Squares whose middle is inside the polygon (even-odd rule).</summary>
    private void MarkInside(Point2D[] polygon)
    {
        for (int c = 0; c < _taken.GetLength(0); c++)
        {
            for (int r = 0; r < _taken.GetLength(1); r++)
            {
                var p = new Point2D(_field.MinX + ((c + 0.5) * Pitch), _field.MinY + ((r + 0.5) * Pitch));
                bool inside = false;
                for (int i = 0, j = polygon.Length - 1; i < polygon.Length; j = i++)
                {
                    Point2D a = polygon[i], b = polygon[j];
                    if (a.Y > p.Y != b.Y > p.Y && p.X < a.X + ((b.X - a.X) * (p.Y - a.Y) / (b.Y - a.Y)))
                        inside = !inside;
                }

                _taken[c, r] |= inside;
            }
        }
    }
}
