using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>The view's own ink, for collision tests, in the block's paper millimetres. A plain grid keeps the tests short.</summary>
public sealed class ViewField
{
    private const double CellSize = 6;

    private readonly Stroke[] _strokes;
    private readonly List<int>[] _cells;
    private readonly Box2D _box;
    private readonly int _columns;
    private readonly int _rows;
    private readonly int[] _seen;
    private readonly List<int> _near = [];
    private int _stamp;

    public ViewField(IEnumerable<Stroke> strokes)
    {
        _strokes = [.. strokes];
        _box = _strokes.Aggregate(Box2D.Empty, (b, s) => b.Union(s.Bounds));
        if (_box.IsEmpty)
            _box = new Box2D(0, 0, 0, 0);
        _columns = (int)(_box.Width / CellSize) + 1;
        _rows = (int)(_box.Height / CellSize) + 1;
        _cells = new List<int>[_columns * _rows];
        _seen = new int[_strokes.Length];
        for (int i = 0; i < _strokes.Length; i++)
        {
            (int c0, int r0, int c1, int r1) = CellsOf(_strokes[i].Bounds);
            for (int r = r0; r <= r1; r++)
            {
                for (int c = c0; c <= c1; c++)
                    (_cells[(r * _columns) + c] ??= []).Add(i);
            }
        }
    }

    public Box2D Bounds => _box;

    /// <summary>What a candidate costs among the view's own ink.</summary>
    public double CostOf(Candidate candidate)
    {
        double cost = 0;
        foreach (OrientedBox text in candidate.Texts)
        {
            if (StrikesText(text))
                cost += PlacingCosts.Broken;
        }

        if (cost > 0)
            return cost;
        foreach (Stroke stroke in candidate.Strokes)
            cost += CostOf(stroke);
        return cost;
    }

    private bool StrikesText(in OrientedBox text)
    {
        foreach (int i in Near(text.Bounds))
        {
            if (text.Meets(_strokes[i].A, _strokes[i].B))
                return true;
        }

        return false;
    }

    private double CostOf(in Stroke stroke)
    {
        double cost = 0;
        foreach (int i in Near(stroke.Bounds))
        {
            ref readonly Stroke other = ref _strokes[i];
            if (!stroke.IsNear(other, 0.5))
                continue;
            if (other.Kind != StrokeKind.Light && stroke.Crosses(other))
                cost += PlacingCosts.CrossingFeature(stroke.Kind);
            else if ((other.Kind != StrokeKind.Light || stroke.Kind is StrokeKind.DimensionLine) && stroke.RunsAlong(other, 0.4))
                return cost + PlacingCosts.AlongFeature;
        }

        return cost;
    }

    /// <summary>Indices of the strokes in the cells that a box touches, each once. The buffer is reused by the next call.</summary>
    private List<int> Near(Box2D box)
    {
        _near.Clear();
        if (!box.Overlaps(_box.Inflated(1e-6)))
            return _near;
        int stamp = ++_stamp;
        (int c0, int r0, int c1, int r1) = CellsOf(box);
        for (int r = r0; r <= r1; r++)
        {
            for (int c = c0; c <= c1; c++)
            {
                List<int>? cell = _cells[(r * _columns) + c];
                if (cell is null)
                    continue;
                foreach (int i in cell)
                {
                    if (_seen[i] == stamp)
                        continue;
                    _seen[i] = stamp;
                    _near.Add(i);
                }
            }
        }

        return _near;
    }

    private (int C0, int R0, int C1, int R1) CellsOf(Box2D box) => (
        Math.Clamp((int)((box.MinX - _box.MinX) / CellSize), 0, _columns - 1),
        Math.Clamp((int)((box.MinY - _box.MinY) / CellSize), 0, _rows - 1),
        Math.Clamp((int)((box.MaxX - _box.MinX) / CellSize), 0, _columns - 1),
        Math.Clamp((int)((box.MaxY - _box.MinY) / CellSize), 0, _rows - 1));
}
