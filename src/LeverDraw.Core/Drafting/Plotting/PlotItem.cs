using System.Collections.Immutable;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Plotting;

/// <summary>One piece of ink on the paper: paper millimetres, origin at the sheet's lower left corner, y up.</summary>
/// <param name="Owner">The id of the <see cref="PlotDimension"/> it belongs to, or null.</param>
/// <param name="View">The id of the <see cref="PlotView"/> it belongs to, or null for frame, title block, notes.</param>
public abstract record PlotItem(LineRole Role, string? Owner, string? View);

/// <summary>A line or an arc, stroked with the role's pen.</summary>
public sealed record PlotStroke(LineRole Role, Edge Edge, string? Owner = null, string? View = null)
    : PlotItem(Role, Owner, View);

/// <summary>A closed loop, stroked as one path. Its true-size twin is in <see cref="PlotView.Outlines"/> when the role is <see cref="LineRole.Outline"/>.</summary>
public sealed record PlotLoop(LineRole Role, Contour Contour, string? Owner = null, string? View = null)
    : PlotItem(Role, Owner, View);

/// <summary>A filled polygon without a stroke: an arrowhead, a dot, a datum triangle.</summary>
public sealed record PlotFill(LineRole Role, ImmutableArray<Point2D> Corners, string? Owner = null, string? View = null)
    : PlotItem(Role, Owner, View);

/// <summary>Section lining of a region: the finished lines, and the region with its angle and spacing for writers that have hatching of their own.</summary>
/// <param name="Region">Outer loop counter-clockwise, holes clockwise, on paper.</param>
/// <param name="Angle">Of the lines, radians.</param>
/// <param name="Spacing">Between lines, paper millimetres.</param>
public sealed record PlotHatch(LineRole Role, ImmutableArray<Contour> Region, double Angle, double Spacing, ImmutableArray<LineEdge> Lines, string? Owner = null, string? View = null)
    : PlotItem(Role, Owner, View);

/// <summary>A line of lettering. <paramref name="Anchor"/> is the left end of the baseline.</summary>
/// <param name="Text">The string it shows, in plain characters.</param>
/// <param name="Height">Of the capitals, paper millimetres.</param>
/// <param name="Angle">Reading direction, radians counter-clockwise.</param>
/// <param name="Width">Along the reading direction, paper millimetres, from the first to the last stroke's edge.</param>
/// <param name="Glyphs">The pen strokes, from our own letter table; no font is needed.</param>
public sealed record PlotText(LineRole Role, string Text, Point2D Anchor, double Height, double Angle, double Width, ImmutableArray<PlotGlyph> Glyphs, string? Owner = null, string? View = null)
    : PlotItem(Role, Owner, View)
{
    /// <summary>Set when deviations stand one above the other: the width of the same string with all its characters side by side, for writers that have no such stack.</summary>
    public double? LevelWidth { get; init; }

    /// <summary>Round the capitals, whichever way the line reads; what reaches below the baseline sticks out.</summary>
    public Box2D Box
    {
        get
        {
            Vector2D reading = Vector2D.FromAngle(Angle), along = reading * Width, up = reading.Left * Height;
            return Box2D.Of([Anchor, Anchor + along, Anchor + along + up, Anchor + up]);
        }
    }
}

/// <summary>One letter placed on the baseline: the shape's coordinates are multiplied by <paramref name="Scale"/>, then moved by the offset (text-local millimetres, x along the baseline).</summary>
public sealed record PlotGlyph(PlotGlyphShape Shape, double OffsetX, double OffsetY, double Scale);

/// <summary>A letter's strokes for a capital height of 1; shared between all places that show it.</summary>
/// <param name="Strokes">Each stroke is a chain of edges drawn without lifting the pen. A dot is a chain of one very short line.</param>
public sealed record PlotGlyphShape(string Character, ImmutableArray<ImmutableArray<Edge>> Strokes);
