using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>The shape of one place while it is weighed: the boxes its lettering takes, the lines it draws, the backs of its arrowheads. One stands in for all places in turn, so that weighing leaves no garbage.</summary>
internal sealed class PlaceShape
{
    private OrientedBox[] _texts = new OrientedBox[8];
    private Stroke[] _strokes = new Stroke[32];
    private Stroke[] _heads = new Stroke[4];
    private int _textCount, _strokeCount, _headCount;
    private Box2D _bounds = Box2D.Empty;

    public ReadOnlySpan<OrientedBox> Texts => _texts.AsSpan(0, _textCount);

    public ReadOnlySpan<Stroke> Strokes => _strokes.AsSpan(0, _strokeCount);

    public ReadOnlySpan<Stroke> Heads => _heads.AsSpan(0, _headCount);

    /// <summary>Of all that has been added so far.</summary>
    public Box2D Bounds => _bounds;

    public void Clear()
    {
        (_textCount, _strokeCount, _headCount) = (0, 0, 0);
        _bounds = Box2D.Empty;
    }

    public void AddText(in OrientedBox text)
    {
        Add(ref _texts, ref _textCount, text);
        _bounds = _bounds.Union(text.Bounds);
    }

    public void AddStroke(in Stroke stroke)
    {
        Add(ref _strokes, ref _strokeCount, stroke);
        _bounds = _bounds.Union(stroke.Bounds);
    }

    public void AddHead(in Stroke head)
    {
        Add(ref _heads, ref _headCount, head);
        _bounds = _bounds.Union(head.Bounds);
    }

    private static void Add<T>(ref T[] items, ref int count, in T item)
    {
        if (count == items.Length)
            Array.Resize(ref items, 2 * count);
        items[count++] = item;
    }
}
