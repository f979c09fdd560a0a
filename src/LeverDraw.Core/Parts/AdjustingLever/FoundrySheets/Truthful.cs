using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;

namespace LeverDraw.Parts.AdjustingLever.FoundrySheets;

/// <summary>A pattern that contracts more one way than another has no true rounds: a radius that its arcs no longer have becomes a note with an about-sign.</summary>
internal static class Truthful
{
    private const double Same = 1e-6;

    public static ViewSource Of(ViewSource view) => view with { Annotations = [.. view.Annotations.Select(Of)] };

    private static Annotation Of(Annotation annotation) => annotation switch
    {
        RadiusDimension radius when radius.Arcs.Any(a => Math.Abs(a.Radius - radius.Value) > Same) => About(radius, radius.Arcs),
        DiameterDimension { Arcs.IsEmpty: false } diameter when diameter.Arcs.Any(a => Math.Abs(a.Radius - diameter.Radius) > Same || a.Centre.DistanceTo(diameter.Centre) > Same) => About(diameter, diameter.Arcs),
        _ => annotation,
    };

    private static LeaderNote About(Annotation round, ImmutableArray<ArcEdge> arcs) =>
        new(round.Name, round.Value, round.Label with { Lines = [.. round.Label.Lines.Select((line, i) => i == 0 ? "≈ " + line : line)] }, [.. arcs.Select(a => a.PointAt(0.5))]);
}
