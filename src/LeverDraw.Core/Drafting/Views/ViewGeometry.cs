using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Views;

/// <summary>What is seen in a view, in the view's own millimetres, before anything is said about it. A part hands it to drafting.</summary>
public sealed record ViewGeometry
{
    /// <summary>Closed visible outlines, holes included.</summary>
    public ImmutableArray<PlotOutline> Outlines { get; init; } = [];

    /// <summary>Visible edges inside the outline, hidden edges, and centre lines from end to end of the feature (without overshoot).</summary>
    public ImmutableArray<ViewEdge> Edges { get; init; } = [];

    /// <summary>Cut faces.</summary>
    public ImmutableArray<HatchedRegion> Hatching { get; init; } = [];
}
