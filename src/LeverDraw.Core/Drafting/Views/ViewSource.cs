using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Views;

/// <summary>A view as meaning: what is seen and what is said about it, in the view's own millimetres. Scale and place come later.</summary>
/// <param name="Id">Unique on the sheet, such as <c>side</c>.</param>
/// <param name="Title">Shown as a caption (such as <c>A–A</c>), or null for a main view.</param>
public sealed record ViewSource(string Id, string? Title)
{
    /// <summary>Closed visible outlines; they also go out at true size to writers that cut along them.</summary>
    public ImmutableArray<PlotOutline> Outlines { get; init; } = [];

    /// <summary>Closed lines that are no outline to cut along, such as one variant laid over another.</summary>
    public ImmutableArray<ViewLoop> Loops { get; init; } = [];

    /// <summary>Other lines with their roles. Centre lines are given from end to end of the feature: the overshoot is drafting's.</summary>
    public ImmutableArray<ViewEdge> Edges { get; init; } = [];

    public ImmutableArray<HatchedRegion> Hatching { get; init; } = [];

    public ImmutableArray<Annotation> Annotations { get; init; } = [];

    /// <summary>Turn (and mirror) of the view on the sheet; scale 1, no shift.</summary>
    public Transform2D Orientation { get; init; } = Transform2D.Identity;

    /// <summary>How far the view stands turned from the position in which its arrow sees it, radians, counter-clockwise; its caption says so.</summary>
    public double Turned { get; init; }

    /// <summary>True for a view at the sheet's main scale; others may be enlarged.</summary>
    public bool IsMain { get; init; } = true;

    /// <summary>A part of another view, shown again because it is too small there: it is worth its place only enlarged.</summary>
    public bool IsDetail { get; init; }

    /// <summary>One of a series, such as a movement's positions: it stands after the view before it in reading order.</summary>
    public bool Continues { get; init; }

    /// <summary>The least scale at which its small sizes can be told apart; zero where any will do.</summary>
    public double ReadableFrom { get; init; }
}

public sealed record ViewEdge(LineRole Role, Edge Edge);

/// <summary>A closed line, drawn in one stroke so that its dashes run on through its corners.</summary>
public sealed record ViewLoop(LineRole Role, Contour Contour);

/// <summary>A cut face, or an area that is told apart. Outer loop counter-clockwise, holes clockwise.</summary>
public sealed record HatchedRegion(ImmutableArray<Contour> Loops)
{
    /// <summary>Of the lines on paper, radians: neighbouring parts are hatched different ways (ISO 128-3).</summary>
    public double Angle { get; init; } = Math.PI / 4;

    /// <summary>Of the style's usual spacing.</summary>
    public double Spacing { get; init; } = 1;

    /// <summary>Whose colour the lines take.</summary>
    public LineRole Role { get; init; } = LineRole.Hatch;
}
