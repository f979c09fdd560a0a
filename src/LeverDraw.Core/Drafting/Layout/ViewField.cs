using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>The view's own ink, for collision tests, in the block's paper millimetres. A plain grid keeps the tests short. Holds no state of a question: any number of threads may ask.</summary>
public sealed partial class ViewField
{
    private const double CellSize = 6;

    private readonly Stroke[] _strokes;
    private readonly (int Column, int Row)[] _firstCells;
    private readonly int[] _starts;
    private readonly int[] _members;
    private readonly Box2D _box;
    private readonly Box2D _reach;
    private readonly int _columns;
    private readonly int _rows;

    public ViewField(IEnumerable<Stroke> strokes)
    {
        _strokes = [.. strokes];
        _box = Box2D.Empty;
        foreach (Stroke stroke in _strokes)
            _box = _box.Union(stroke.Bounds);
        if (_box.IsEmpty)
            _box = new Box2D(0, 0, 0, 0);
        _reach = _box.Inflated(1e-6);
        _columns = (int)(_box.Width / CellSize) + 1;
        _rows = (int)(_box.Height / CellSize) + 1;
        _firstCells = new (int, int)[_strokes.Length];
        _starts = new int[(_columns * _rows) + 1];
        for (int i = 0; i < _strokes.Length; i++)
        {
            (int c0, int r0, int c1, int r1) = CellsOf(_strokes[i].Bounds);
            _firstCells[i] = (c0, r0);
            for (int r = r0; r <= r1; r++)
            {
                for (int c = c0; c <= c1; c++)
                    _starts[(r * _columns) + c + 1]++;
            }
        }

        for (int i = 1; i < _starts.Length; i++)
            _starts[i] += _starts[i - 1];
        _members = new int[_starts[^1]];
        int[] next = [.. _starts];
        for (int i = 0; i < _strokes.Length; i++)
        {
            (int c0, int r0, int c1, int r1) = CellsOf(_strokes[i].Bounds);
            for (int r = r0; r <= r1; r++)
            {
                for (int c = c0; c <= c1; c++)
                    _members[next[(r * _columns) + c]++] = i;
            }
        }
    }

    public Box2D Bounds => _box;

    /// <summary>What a candidate costs among the view's own ink.</summary>
    public double CostOf(Candidate candidate)
    {
        double lettering = CostOf(candidate.Texts);
        return lettering >= PlacingCosts.Broken ? lettering : CostOf(candidate.Strokes, lettering);
    }

    /// <summary>What lettering costs among the view's own ink: the price of a broken rule, or that of standing close to outlines.</summary>
    internal double CostOf(ReadOnlySpan<OrientedBox> texts)
    {
        double cost = 0;
        foreach (ref readonly OrientedBox text in texts)
        {
            double own = CostOf(text);
            if (own >= PlacingCosts.Broken)
                return own;
            cost += own;
        }

        return cost;
    }

    /// <summary>What lines cost among the view's own ink, added to what their lettering does.</summary>
    internal double CostOf(ReadOnlySpan<Stroke> strokes, double lettering)
    {
        double cost = lettering;
        foreach (ref readonly Stroke stroke in strokes)
            cost += CostOf(stroke);
        return cost;
    }

    /// <summary>The least that lines cost, whatever they are lengthened by.</summary>
    internal double LeastOf(ReadOnlySpan<Stroke> strokes)
    {
        double cost = 0;
        foreach (ref readonly Stroke stroke in strokes)
        {
            // One that runs along a line is asked for nothing else; a longer one might first be found to do that.
            cost += Math.Min(CostOf(stroke, crossingsOnly: true), PlacingCosts.AlongFeature);
        }

        return cost;
    }

    private double CostOf(in OrientedBox text)
    {
        OrientedBox round = text.Inflated(PlacingCosts.ComfortableDistance);
        if (!round.Bounds.Overlaps(_reach))
            return 0;
        double cost = 0;
        (int c0, int r0, int c1, int r1) = CellsOf(round.Bounds);
        for (int r = r0; r <= r1; r++)
        {
            for (int c = c0; c <= c1; c++)
            {
                foreach (int i in Cell(c, r))
                {
                    ref readonly Stroke stroke = ref _strokes[i];
                    if (text.Meets(stroke.A, stroke.B))
                        return PlacingCosts.Broken;
                    if (cost == 0 && stroke.Kind == StrokeKind.Feature && round.Meets(stroke.A, stroke.B))
                        cost = PlacingCosts.CloseToFeature;
                }
            }
        }

        return cost;
    }

    private double CostOf(in Stroke stroke, bool crossingsOnly = false)
    {
        // A level or upright line's box has no area: it is asked for with a hair round it.
        bool leader = stroke.Kind == StrokeKind.Leader;
        Box2D near = stroke.Bounds.Inflated(leader ? PlacingCosts.BesideLight : 1e-6);
        if (!near.Overlaps(_reach))
            return 0;
        double cost = 0;
        (int c0, int r0, int c1, int r1) = CellsOf(near);
        for (int r = r0; r <= r1; r++)
        {
            for (int c = c0; c <= c1; c++)
            {
                foreach (int i in Cell(c, r))
                {
                    // One that stands in several of the cells counts in the first of them.
                    if (c != Math.Max(c0, _firstCells[i].Column) || r != Math.Max(r0, _firstCells[i].Row))
                        continue;
                    ref readonly Stroke other = ref _strokes[i];
                    if (!stroke.IsNear(other, leader ? PlacingCosts.BesideLight : 0.5))
                        continue;
                    bool light = other.Kind is StrokeKind.Light or StrokeKind.Lining;
                    if (!light && stroke.Crosses(other))
                        cost += PlacingCosts.CrossingFeature(stroke.Kind);
                    else if (leader && !crossingsOnly && stroke.LiesBeside(other, light ? PlacingCosts.BesideLight : PlacingCosts.BesideFeature))
                        return cost + PlacingCosts.AlongFeature;
                    else if (!crossingsOnly && (!light || stroke.Kind is StrokeKind.DimensionLine) && stroke.RunsAlong(other, 0.4))
                        return cost + PlacingCosts.AlongFeature;
                    else if (other.Kind == StrokeKind.Lining && stroke.Crosses(other))
                        cost += PlacingCosts.CrossingLining(stroke.Kind);
                }
            }
        }

        return cost;
    }

    private ReadOnlySpan<int> Cell(int column, int row)
    {
        int cell = (row * _columns) + column;
        return _members.AsSpan(_starts[cell], _starts[cell + 1] - _starts[cell]);
    }

    private (int C0, int R0, int C1, int R1) CellsOf(Box2D box) => (
        Math.Clamp((int)((box.MinX - _box.MinX) / CellSize), 0, _columns - 1),
        Math.Clamp((int)((box.MinY - _box.MinY) / CellSize), 0, _rows - 1),
        Math.Clamp((int)((box.MaxX - _box.MinX) / CellSize), 0, _columns - 1),
        Math.Clamp((int)((box.MaxY - _box.MinY) / CellSize), 0, _rows - 1));
}
