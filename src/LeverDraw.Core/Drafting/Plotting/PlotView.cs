using System.Collections.Immutable;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Plotting;

/// <summary>A view's place on the sheet, and its outlines at true size for writers that work in model units.</summary>
/// <param name="ToPaper">From the view's own millimetres to paper; its scale is the drawing scale (2 for 2:1).</param>
/// <param name="IsMain">True for views at the sheet's main scale.</param>
public sealed record PlotView(string Id, string Title, Transform2D ToPaper, bool IsMain, ImmutableArray<PlotOutline> Outlines);

/// <summary>A closed outline at true size in the view's own millimetres, such as <c>side-profile</c> or <c>pivot-hole</c>.</summary>
/// <param name="Centre">For a hole: where its centre is, else null.</param>
public sealed record PlotOutline(string Name, Contour Contour, Point2D? Centre = null);
