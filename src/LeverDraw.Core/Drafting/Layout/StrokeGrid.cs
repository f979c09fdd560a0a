using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>Strokes in the cells of a plain grid, so that only those near a box are asked about. It never changes: any number of threads may walk it.</summary>
internal sealed class StrokeGrid
{
    private const double CellSize = 6;

    private readonly Stroke[] _strokes;
    private readonly CellRange[] _ranges;
    private readonly int[] _starts;
    private readonly int[] _members;
    private readonly int _columns;
    private readonly int _rows;

    public StrokeGrid(IEnumerable<Stroke> strokes)
    {
        _strokes = [.. strokes];
        Bounds = Box2D.Empty;
        foreach (Stroke stroke in _strokes)
            Bounds = Bounds.Union(stroke.Bounds);
        if (Bounds.IsEmpty)
            Bounds = new Box2D(0, 0, 0, 0);
        _columns = (int)(Bounds.Width / CellSize) + 1;
        _rows = (int)(Bounds.Height / CellSize) + 1;
        _ranges = new CellRange[_strokes.Length];
        _starts = new int[(_columns * _rows) + 1];
        for (int i = 0; i < _strokes.Length; i++)
        {
            CellRange range = _ranges[i] = RangeOf(_strokes[i].Bounds);
            for (int r = range.Row; r <= range.LastRow; r++)
            {
                for (int c = range.Column; c <= range.LastColumn; c++)
                    _starts[(r * _columns) + c + 1]++;
            }
        }

        for (int i = 1; i < _starts.Length; i++)
            _starts[i] += _starts[i - 1];
        _members = new int[_starts[^1]];
        int[] next = [.. _starts];
        for (int i = 0; i < _strokes.Length; i++)
        {
            CellRange range = _ranges[i];
            for (int r = range.Row; r <= range.LastRow; r++)
            {
                for (int c = range.Column; c <= range.LastColumn; c++)
                    _members[next[(r * _columns) + c]++] = i;
            }
        }
    }

    public Box2D Bounds { get; }

    public ref readonly Stroke this[int stroke] => ref _strokes[stroke];

    /// <summary>The cells that a box touches.</summary>
    public Walk In(Box2D box) => new(this, RangeOf(box));

    private CellRange RangeOf(Box2D box) => new(ColumnOf(box.MinX), RowOf(box.MinY), ColumnOf(box.MaxX), RowOf(box.MaxY));

    private int ColumnOf(double x) => Math.Clamp((int)((x - Bounds.MinX) / CellSize), 0, _columns - 1);

    private int RowOf(double y) => Math.Clamp((int)((y - Bounds.MinY) / CellSize), 0, _rows - 1);

    private ReadOnlySpan<int> Cell(int column, int row)
    {
        int cell = (row * _columns) + column;
        return _members.AsSpan(_starts[cell], _starts[cell + 1] - _starts[cell]);
    }

    internal readonly record struct CellRange(int Column, int Row, int LastColumn, int LastRow);

    /// <summary>Goes through some cells, row by row.</summary>
    public struct Walk
    {
        private readonly StrokeGrid _grid;
        private readonly CellRange _range;
        private int _row, _column;

        internal Walk(StrokeGrid grid, CellRange range)
        {
            (_grid, _range) = (grid, range);
            (_row, _column) = (range.Row, range.Column - 1);
        }

        /// <summary>Numbers of the strokes in the present cell.</summary>
        public readonly ReadOnlySpan<int> Cell => _grid.Cell(_column, _row);

        /// <summary>Goes to the next cell; false where there is none.</summary>
        public bool Next()
        {
            if (++_column <= _range.LastColumn)
                return true;
            _column = _range.Column;
            return ++_row <= _range.LastRow;
        }

        /// <summary>A stroke that stands in several of the cells is met first in this one.</summary>
        public readonly bool MeetsFirst(int stroke)
        {
            ref readonly CellRange its = ref _grid._ranges[stroke];
            return _column == Math.Max(_range.Column, its.Column) && _row == Math.Max(_range.Row, its.Row);
        }
    }
}
