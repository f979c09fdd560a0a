using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>A part of the side view inside a thin circle, shown again by itself at a larger scale.</summary>
/// <param name="Reach">Radius of the circle, millimetres of the part.</param>
internal readonly record struct CircledDetail(Point2D Centre, double Reach)
{
    /// <summary>The circle, in the side view and round the detail.</summary>
    public ViewEdge Circle => new(LineRole.Dimension, ArcEdge.FullCircle(Centre, Reach));

    /// <param name="extra">Lines beside the outline's own, which is cut off at the circle.</param>
    public ViewSource View(string id, string letter, SideFeatures side, IEnumerable<ViewEdge> extra, IEnumerable<Annotation> annotations) => new(id, letter)
    {
        Edges = [.. EdgeClip.ToCircle(side.Edges.Select(e => e.Edge), Centre, Reach).Select(e => new ViewEdge(LineRole.Edge, e)), .. extra, Circle],
        Annotations = [.. annotations],
        IsMain = false,
        IsDetail = true,
    };
}
