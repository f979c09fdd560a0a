using System.Collections.Immutable;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Plotting;

public enum PlotDimensionKind
{
    /// <summary>Points: first, second measured point, a point on the dimension line. <see cref="PlotDimension.Direction"/> is the measuring direction.</summary>
    Linear,

    /// <summary>Points: the far point, the near point (on the text's side) of the circle.</summary>
    Diameter,

    /// <summary>Points: centre, point on the arc.</summary>
    Radius,

    /// <summary>Points: vertex, a point on the first ray, a point on the second ray (counter-clockwise from the first), a point on the dimension arc.</summary>
    Angle,

    /// <summary>One of several on one line, end to end; points and direction as <see cref="Linear"/>.</summary>
    Chain,

    /// <summary>One of several from the same datum in even tiers; points and direction as <see cref="Linear"/>.</summary>
    Baseline,

    /// <summary>A distance from a zero mark. Points: the zero, the measured point, the end of its extension line. Direction as <see cref="Linear"/>.</summary>
    Ordinate,

    /// <summary>Points: the arc's centre, start and end (counter-clockwise), a point on the dimension arc. A DXF has no entity for it that old readers know: plain ink.</summary>
    ArcLength,

    /// <summary>Points: where the arrow touches. A taper's ratio or a hole note: no measured value of its own in a DXF.</summary>
    Note,
}

/// <summary>What a dimension says, beside its ink: the same for all writers.</summary>
/// <param name="Id">Unique on the sheet; the owner of its ink.</param>
/// <param name="Name">The field's full name, such as <c>arms.thickness</c>.</param>
/// <param name="View">The view it measures in.</param>
/// <param name="Points">On paper, as <see cref="PlotDimensionKind"/> says.</param>
/// <param name="Direction">Measuring direction on paper for <see cref="PlotDimensionKind.Linear"/>, radians; else 0.</param>
/// <param name="Value">The true value: millimetres, or radians for an angle; for a note the size it states, or 0.</param>
/// <param name="Text">The whole text, all lines, joined by a line feed.</param>
/// <param name="TextMiddle">Middle of the lettering, on paper.</param>
/// <param name="Decimals">Decimals shown of the value in the sheet's first unit.</param>
public sealed record PlotDimension(
    string Id,
    string Name,
    PlotDimensionKind Kind,
    string View,
    ImmutableArray<Point2D> Points,
    double Direction,
    double Value,
    string Text,
    Point2D TextMiddle,
    int Decimals);
