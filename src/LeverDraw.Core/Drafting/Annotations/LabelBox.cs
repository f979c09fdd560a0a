using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>A label measured: how much room its lines and symbols take, and how to ink them from a corner.</summary>
public sealed class LabelBox
{
    /// <summary>How far brackets and descenders reach beyond baseline and capitals, in heights; a test compares it with the letters' own ink.</summary>
    internal const double BracketsStandOut = 0.25;

    /// <summary>By how much more than lettering a frame keeps off a line along its lower side, millimetres: its own pen and the line's take that much of the clearance, and it would seem to stand on the line.</summary>
    private const double FrameStandsOff = 0.4;

    /// <summary>Between lettering and the frame under it, and before a texture sign, in heights.</summary>
    private const double SymbolGap = 0.5;

    /// <summary>More room between two lines with stacked deviations, in heights: they would read as one stack of four.</summary>
    private const double StackGap = 0.1;

    private readonly double _pitch;
    private readonly double _height;
    private readonly double _pad;
    private readonly double[] _widths;
    private readonly TextureShape? _texture;
    private readonly FrameStack _stack;
    private readonly bool _onLine;
    private readonly double _linesWidth;
    private readonly double _beforeBox;

    /// <param name="onLine">The label stands on a dimension line: a texture sign then stands on it too, after all lines, and not after the first.</param>
    public LabelBox(Label label, DraftingStyle style, bool onLine = false)
    {
        _onLine = onLine;
        Label = label;
        _height = style.LetteringHeight;
        // Deviations one above the other stand out further than brackets: more room between lines, above and below.
        double more = label.Lines.Any(StrokeLettering.HasStack) ? StrokeLettering.StackStandsOut - BracketsStandOut : 0;
        _pitch = _height * (1.6 + (more > 0 ? (2 * more) + StackGap : 0));
        _pad = _height * ((label.Boxed ? 0.4 : 0) + more);
        _texture = label.Texture is { } sign ? new TextureShape(sign, style) : null;
        _widths = [.. label.Lines.Select((_, i) => StrokeLettering.WidthOf(Words(i), _height, stackTolerances: true) + (i == 0 && !onLine ? TextureRoom : 0))];
        _beforeBox = label.BoxedFrom == 0 ? 0 : StrokeLettering.WidthOf(SignBeforeBox, _height, stackTolerances: true) + (SymbolGap * _height);
        _linesWidth = _widths.Length == 0 ? 0 : _beforeBox + _widths.Max() + (label.Boxed ? _height : 0);
        double lines = _linesWidth + (onLine ? TextureRoom : 0);
        LinesHeight = _widths.Length == 0 ? 0 : _height + (_pitch * (_widths.Length - 1)) + (2 * _pad);
        _stack = new FrameStack(label.Frames, label.Datum, style, lines);
        Width = Math.Max(lines, _stack.Width);
        Height = LinesHeight + UnderLines;
    }

    public Label Label { get; }

    public double Width { get; }

    /// <summary>From the last line's baseline, the box's or the last frame's lower side to the first line's top. A hanging datum reaches below it, a texture sign above.</summary>
    public double Height { get; }

    /// <summary>The share of <see cref="Height"/> that the lettering takes.</summary>
    public double LinesHeight { get; }

    /// <summary>The lettering stands beside nothing but its own line: one line, no box, no frames.</summary>
    internal bool IsOneLine => _widths.Length == 1 && !Label.Boxed && _stack.IsEmpty;

    private string SignBeforeBox => Label.Lines[0][..Label.BoxedFrom].TrimEnd();

    private double TextureRoom => _texture is { } sign ? (SymbolGap * _height) + sign.Width : 0;

    private double UnderLines => _stack.IsEmpty ? 0 : _stack.Height + (_widths.Length == 0 ? 0 : SymbolGap * _height);

    /// <summary>Lines one above the other in the box whose lower left corner is given.</summary>
    /// <param name="align">Where shorter lines stand: 0 left, 0.5 in the middle, 1 right.</param>
    /// <param name="drop">How far below the first baseline a texture sign stands: on the line under the lettering, if there is one.</param>
    public IEnumerable<PlotItem> Ink(Point2D corner, double angle, LineRole role, string owner, string view, double align = 0.5, double drop = 0)
    {
        Vector2D u = Vector2D.FromAngle(angle);
        for (int i = 0; i < _widths.Length; i++)
            yield return StrokeLettering.Compose(Words(i), LineAt(i, corner, u, align), _height, angle, owner, view, stackTolerances: true);
        if (_beforeBox > 0)
            yield return StrokeLettering.Compose(SignBeforeBox, corner + (u.Left * Up(0)), _height, angle, owner, view, stackTolerances: true);
        if (_texture is { } texture)
        {
            foreach (PlotItem item in texture.Ink(TextureTip(texture, corner, u, align, drop), angle, owner, view))
                yield return item;
        }

        foreach (PlotItem item in _stack.Ink(StackAt(corner, u, align), angle, owner, view))
            yield return item;
        if (!Label.Boxed)
            yield break;
        Point2D foot = corner + (u.Left * UnderLines);
        Point2D[] corners = [foot + (u * _beforeBox), foot + (u * _linesWidth), foot + (u * _linesWidth) + (u.Left * LinesHeight), foot + (u * _beforeBox) + (u.Left * LinesHeight)];
        for (int i = 0; i < 4; i++)
            yield return new PlotStroke(role, new LineEdge(corners[i], corners[(i + 1) % 4]), owner, view);
    }

    /// <summary>From the corner to the top of the brackets.</summary>
    internal double Top => Height + (_widths.Length == 0 ? 0 : BracketsStandOut * _height);

    /// <summary>The room the lettering and frames take, with the clearance all round; brackets, which stand out above and below the capitals, are inside.</summary>
    public OrientedBox Box(Point2D corner, double angle, double clearance) => Box(corner, angle, Vector2D.FromAngle(angle), clearance);

    /// <summary>Adds <see cref="Box(Point2D, double, double)"/>, and the room of what stands out of it: texture sign and hanging datum.</summary>
    /// <param name="u">The direction of <paramref name="angle"/>, length one.</param>
    internal void AddTo(PlaceShape shape, Point2D corner, double angle, Vector2D u, double clearance, double align = 0.5, double drop = 0)
    {
        shape.AddText(Box(corner, angle, u, clearance));
        if (_texture is { } texture)
            shape.AddText(texture.Box(TextureTip(texture, corner, u, align, drop), angle, clearance));
        if (Label.Datum is not null)
            shape.AddText(_stack.Hanging(StackAt(corner, u, align), angle, clearance));
    }

    private OrientedBox Box(Point2D corner, double angle, Vector2D u, double clearance)
    {
        double below = UnderLines > 0 ? FrameStandsOff : BracketsStandOut * _height;
        return OrientedBox.FromCorner(corner - (u.Left * below), Width, Top + below, angle, u, clearance);
    }

    /// <summary>A line without the sign that stands before its box.</summary>
    private string Words(int line) => line == 0 ? Label.Lines[0][Label.BoxedFrom..] : Label.Lines[line];

    /// <summary>From the corner to a line's baseline.</summary>
    private double Up(int line) => UnderLines + _pad + (_pitch * (_widths.Length - 1 - line));

    private Point2D LineAt(int line, Point2D corner, Vector2D u, double align)
    {
        double room = _onLine ? _linesWidth : Width;
        // In a frame the lettering keeps off both ends, whichever way it is aligned.
        double frame = Label.Boxed ? _height / 2 : 0;
        return corner + (u * (_beforeBox + frame + ((room - _beforeBox - _widths[line] - (2 * frame)) * align))) + (u.Left * Up(line));
    }

    private Point2D TextureTip(TextureShape texture, Point2D corner, Vector2D u, double align, double drop)
    {
        if (_onLine)
            return corner + (u * (Width - texture.Right)) - (u.Left * drop);
        Point2D line = _widths.Length == 0 ? corner : LineAt(0, corner, u, align);
        double before = _widths.Length == 0 ? 0 : _widths[0] - texture.Width;
        return line + (u * (before + texture.Left)) - (u.Left * drop);
    }

    private Point2D StackAt(Point2D corner, Vector2D u, double align) =>
        corner + (u * ((Width - _stack.Width) * align)) + (u.Left * _stack.Height);
}
