using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Views;

/// <summary>A view drawn and annotated at one scale, in paper millimetres about the view's own origin: a rigid block, ready to be put on the sheet.</summary>
/// <param name="Bounds">Of all its ink, lettering's clearance included.</param>
/// <param name="Core">Of the view itself, without annotations.</param>
/// <param name="Unplaced">Names of annotations that found no clear place.</param>
public sealed record ViewBlock(
    ViewSource Source,
    double Scale,
    Box2D Bounds,
    Box2D Core,
    ImmutableArray<PlotItem> Items,
    ImmutableArray<PlotDimension> Dimensions,
    ImmutableArray<string> Unplaced);
