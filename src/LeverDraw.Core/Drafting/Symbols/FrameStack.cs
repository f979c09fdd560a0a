using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Symbols;

/// <summary>Feature-control frames one under the other, left edges in line, and the datum letter that may hang under the last (ISO 1101, ISO 5459; proportions of reference 10i, from memory).</summary>
internal sealed class FrameStack
{
    private readonly ImmutableArray<ControlFrame> _frames;
    private readonly DraftingStyle _style;
    private readonly double[][] _widths;
    private readonly double _row;

    /// <param name="datum">Letter hanging under the last frame, or under a reference line when there is none; null for none.</param>
    /// <param name="lineLength">Length of that reference line.</param>
    public FrameStack(ImmutableArray<ControlFrame> frames, string? datum, DraftingStyle style, double lineLength = 0)
    {
        _frames = frames;
        _style = style;
        _row = SymbolPen.Sizes(style).FrameHeight.Millimetres;
        _widths = [.. frames.Select(f => f.Compartments.Select((text, i) => CompartmentWidth(text, i == 0)).ToArray())];
        Datum = datum is null ? null : new DatumIndicator(datum, style);
        Width = Math.Max(_widths.Length == 0 ? 0 : _widths.Max(w => w.Sum()), datum is null || !frames.IsEmpty ? 0 : lineLength);
        Height = _row * frames.Length;
    }

    public double Width { get; }

    /// <summary>Of the frames; the hanging datum reaches <see cref="DatumIndicator.Reach"/> further down.</summary>
    public double Height { get; }

    public bool IsEmpty => _frames.IsEmpty && Datum is null;

    private DatumIndicator? Datum { get; }

    /// <summary>Where the datum hangs: under the middle of the first compartment.</summary>
    private Point2D DatumFoot => new(_row / 2, -Height);

    private static Vector2D Down => new(0, -1);

    /// <summary>Adds the boxes of the frames and of the datum that hangs from them.</summary>
    /// <param name="topLeft">Upper left corner in reading direction.</param>
    public void AddTo(PlaceShape shape, Point2D topLeft, double angle, double clearance)
    {
        Transform2D place = SymbolPen.At(topLeft, angle);
        if (!_frames.IsEmpty)
            shape.AddText(OrientedBox.FromCorner(place.Apply(new Point2D(0, -Height)), Width, Height, angle).Inflated(clearance));
        if (Datum is not null)
            shape.AddText(Hanging(topLeft, angle, clearance));
    }

    /// <summary>The box of the datum that hangs; there must be one.</summary>
    public OrientedBox Hanging(Point2D topLeft, double angle, double clearance)
    {
        Transform2D place = SymbolPen.At(topLeft, angle);
        return Datum!.Box(place.Apply(DatumFoot), place.Apply(Down), angle, clearance);
    }

    public IEnumerable<PlotItem> Ink(Point2D topLeft, double angle, string? owner, string? view)
    {
        Transform2D place = SymbolPen.At(topLeft, angle);
        var pen = new SymbolPen(place, LineRole.Symbol, owner, view);
        double h = _style.LetteringHeight;
        for (int row = 0; row < _frames.Length; row++)
        {
            double top = -row * _row;
            double width = _widths[row].Sum();
            if (row == 0)
                yield return pen.Line(0, top, width, top);
            else if (_widths[row - 1].Sum() is var above && width > above)
                yield return pen.Line(above, top, width, top);
            yield return pen.Line(0, top - _row, width, top - _row);
            yield return pen.Line(0, top, 0, top - _row);
            double x = 0;
            for (int i = 0; i < _widths[row].Length; i++)
            {
                string text = _frames[row].Compartments[i];
                double spare = _widths[row][i] - StrokeLettering.WidthOf(text, h, stackFractions: false);
                yield return pen.Text(text, new Point2D(x + (spare / 2), top - ((_row + h) / 2)), h);
                x += _widths[row][i];
                yield return pen.Line(x, top, x, top - _row);
            }
        }

        if (Datum is not { } datum)
            yield break;
        if (_frames.IsEmpty)
            yield return pen.Line(0, 0, Width, 0);
        foreach (PlotItem item in datum.Ink(place.Apply(DatumFoot), place.Apply(Down), angle, owner, view))
            yield return item;
    }

    /// <summary>The sign's about square; the others half a letter height round their text.</summary>
    private double CompartmentWidth(string text, bool isSign)
    {
        double h = _style.LetteringHeight;
        double fitted = StrokeLettering.WidthOf(text, h, stackFractions: false) + (isSign ? 0.6 * h : h);
        return Math.Max(_row, fitted);
    }
}
