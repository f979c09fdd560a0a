using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>A label measured: how much room its lines take, and how to ink them from a corner.</summary>
public sealed class LabelBox
{
    /// <summary>How far brackets and descenders reach beyond baseline and capitals, in heights; a test compares it with the letters' own ink.</summary>
    internal const double BracketsStandOut = 0.25;

    private readonly double _pitch;
    private readonly double _height;
    private readonly double _pad;
    private readonly double[] _widths;

    public LabelBox(Label label, DraftingStyle style)
    {
        Label = label;
        _height = style.LetteringHeight;
        // Deviations one above the other stand out further than brackets: more room between lines, above and below.
        double more = label.Lines.Any(StrokeLettering.HasStack) ? StrokeLettering.StackStandsOut - BracketsStandOut : 0;
        _pitch = _height * (1.6 + (2 * more));
        _pad = _height * ((label.Boxed ? 0.4 : 0) + more);
        _widths = [.. label.Lines.Select(line => StrokeLettering.WidthOf(line, _height, stackTolerances: true))];
        Width = _widths.Max() + (label.Boxed ? _height : 0);
        Height = _height + (_pitch * (label.Lines.Length - 1)) + (2 * _pad);
    }

    public Label Label { get; }

    public double Width { get; }

    /// <summary>From the last line's baseline (or the box's lower side) to the first line's top.</summary>
    public double Height { get; }

    /// <summary>Lines one above the other in the box whose lower left corner is given.</summary>
    /// <param name="align">Where shorter lines stand: 0 left, 0.5 in the middle, 1 right.</param>
    public IEnumerable<PlotItem> Ink(Point2D corner, double angle, LineRole role, string owner, string view, double align = 0.5)
    {
        Vector2D u = Vector2D.FromAngle(angle);
        for (int i = 0; i < _widths.Length; i++)
        {
            double up = _pad + (_pitch * (_widths.Length - 1 - i));
            Point2D anchor = corner + (u * ((Width - _widths[i]) * align)) + (u.Left * up);
            yield return StrokeLettering.Compose(Label.Lines[i], anchor, _height, angle, owner, view, stackTolerances: true);
        }

        if (!Label.Boxed)
            yield break;
        Point2D[] corners = [corner, corner + (u * Width), corner + (u * Width) + (u.Left * Height), corner + (u.Left * Height)];
        for (int i = 0; i < 4; i++)
            yield return new PlotStroke(role, new LineEdge(corners[i], corners[(i + 1) % 4]), owner, view);
    }

    /// <summary>The room it takes, with the clearance all round; brackets, which stand out above and below the capitals, are inside.</summary>
    public OrientedBox Box(Point2D corner, double angle, double clearance)
    {
        Vector2D u = Vector2D.FromAngle(angle);
        double out_ = BracketsStandOut * _height;
        return OrientedBox.FromCorner(corner - (u.Left * out_), Width, Height + (2 * out_), angle).Inflated(clearance);
    }
}
