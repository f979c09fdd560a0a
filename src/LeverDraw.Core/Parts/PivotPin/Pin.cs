using System.Collections.Immutable;
using LeverDraw.Geometry;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts.PivotPin;

/// <summary>A pivot pin as finished: a cone or cylinder with two ends of one form.</summary>
/// <remarks>Frame: x along the axis from the middle toward the large end, r outward. End diameters hold in the end planes, over the whole length, as both series state them; an end form takes its piece off inside that.</remarks>
/// <param name="Series">As <see cref="PinFields.Series"/>.</param>
/// <param name="Designation">How the series names it: a number, or the small end's diameter by the length.</param>
/// <param name="NamedSize">The size the series names, with the profile's tolerance if it states one.</param>
/// <param name="NamedByLargeEnd">True for inch and free pins.</param>
/// <param name="Gauge">Diameter at the gauge plane.</param>
/// <param name="GaugePlane">From the large end.</param>
/// <param name="LargeBase">Where the large end's form begins; <paramref name="SmallBase"/> likewise. On the outline, r above zero.</param>
/// <param name="CrownRadius">Null unless the ends are crowned.</param>
/// <param name="Outline">In (x, r), both halves, counter-clockwise from the lower end of the large end's form.</param>
public sealed record Pin(
    string Series,
    string Designation,
    SizeValue NamedSize,
    bool NamedByLargeEnd,
    Taper Taper,
    SizeValue Length,
    Length LargeEnd,
    Length SmallEnd,
    Length Gauge,
    Length GaugePlane,
    string Ends,
    Length? CrownRadius,
    Length? Chamfer,
    Point2D LargeBase,
    Point2D SmallBase,
    bool LargeEndRight,
    Length StandOutLeast,
    Length StandOutMost,
    Contour Outline)
{
    /// <summary>From the pin's axis to the nearest edge of the lug; null when the profile does not say.</summary>
    public Length? LugEdgeDistance { get; init; }

    /// <summary>Ra of the side; zero when it is left unsaid.</summary>
    public Length SideRoughness { get; init; }

    /// <summary>Ra of the ends and their forms; zero when it is left unsaid.</summary>
    public Length EndRoughness { get; init; }

    /// <summary>The size at the gauge plane, where the pin is checked: the named end's tolerance moved along the taper, or the named size itself where the plane lies at its end.</summary>
    public SizeValue GaugeSize =>
        Math.Abs((Gauge - NamedSize.Nominal).Millimetres) < Coincidence.Distance ? NamedSize
        : StatedLimits.Of(NamedSize) is { } limits ? new(Gauge, new DeviationTolerance(limits.Max - NamedSize.Nominal, limits.Min - NamedSize.Nominal))
        : new(Gauge);

    /// <summary>0 where the gauge plane is the large end, 1 where it is the small one, null between them.</summary>
    public int? GaugedAt => GaugePlane.Millimetres < Coincidence.Distance ? 0 : (Length.Nominal - GaugePlane).Millimetres < Coincidence.Distance ? 1 : null;

    public Length Middle => (LargeEnd + SmallEnd) / 2;

    /// <summary>The diameter at a distance from the large end.</summary>
    public Length DiameterAt(Length fromLargeEnd) => LargeEnd - (fromLargeEnd * Taper.Rate);

    public ImmutableArray<Edge> OutlineEdges => Outline.Edges;
}
