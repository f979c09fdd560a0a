using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>Where the frames of a linear dimension stand.</summary>
internal enum FramePlace
{
    None,

    /// <summary>Under the dimension line, below its lettering.</summary>
    UnderText,

    /// <summary>At the end of the dimension line, in line with the arrow.</summary>
    AtEnd,
}

/// <summary>What a linear dimension carries beside its number, at one place: control frames, or a datum letter in line with an arrow.</summary>
/// <param name="End">+1: beyond the second measured point, −1: beyond the first; for a datum without frames or frames at the end; 0: frames under lettering in the middle.</param>
/// <param name="Away">Between the end of what stands on the dimension line and frames in line with it, millimetres.</param>
internal readonly record struct LinearExtra(FramePlace Frames, int End, double Away = 0)
{
    /// <summary>Length of the level piece between a slanting dimension line and its frames, millimetres.</summary>
    public const double Shoulder = 3;

    public static LinearExtra None => default;
}

/// <summary>The frames or datum of one candidate: its boxes and ink.</summary>
internal sealed class PlacedExtra(FrameStack? stack, Point2D topLeft, DatumIndicator? datum, Point2D foot, Vector2D outward, double angle, LineEdge? bend = null)
{
    /// <summary>From a slanting dimension line to the side of its level frames; null when the line itself meets them.</summary>
    public LineEdge? Bend => bend;

    public static PlacedExtra Nothing { get; } = new(null, default, null, default, default, 0);

    public void AddTo(PlaceShape shape, double clearance)
    {
        stack?.AddTo(shape, topLeft, angle, clearance);
        if (datum is not null)
            shape.AddText(datum.Box(foot, outward, angle, clearance));
    }

    public IEnumerable<PlotItem> Ink(string owner, string view) =>
        [
            .. bend is null ? (PlotItem[])[] : [new PlotStroke(LineRole.Dimension, bend, owner, view)],
            .. stack?.Ink(topLeft, angle, owner, view) ?? [], .. datum?.Ink(foot, outward, angle, owner, view) ?? [],
        ];
}
