using System.Collections.Immutable;

namespace LeverDraw.Standards;

/// <summary>One published range of draft, degrees per side.</summary>
/// <param name="OverMm">Feature height in mm, 0 when the source gives none.</param>
/// <param name="UpToMm">Positive infinity when the source gives none.</param>
public sealed record DraftRange(string Feature, string Surface, double OverMm, double UpToMm, double LeastDegrees, double MostDegrees, string Kind);

/// <summary>Published ranges of draft. They conflict; the user picks a house rule.</summary>
public static class DraftRanges
{
    public static StandardSource Source { get; } = new(
        "Draft, range by range", "Foundry guides and course notes", "", "", Certainty.Mixed,
        "1 to 3 degrees in general: three sources; the rest one each; values given as a slope are turned into degrees");

    public static ImmutableArray<DraftRange> All { get; } =
    [
        new("sand casting", "outside", 0, double.PositiveInfinity, 1, 3, "iron foundry guide"),
        new("sand casting", "inside pocket in drag", 0, double.PositiveInfinity, 1, 5, "iron foundry guide"),
        new("sand casting", "inside pocket in cope (hanging sand)", 0, double.PositiveInfinity, 3, 7, "iron foundry guide"),
        new("core box, oil sand", "all", 0, double.PositiveInfinity, 2, 5, "iron foundry guide"),
        new("core box, shell", "all", 0, double.PositiveInfinity, 0.5, 3, "iron foundry guide"),
        new("sand casting, general", "outside", 0, double.PositiveInfinity, 1.5, 3, "design guidelines, weak"),
        new("sand casting, general", "inside / cores", 0, double.PositiveInfinity, 2, 5, "design guidelines, weak"),
        new("sand casting", "outside", 0, 10, 1.0, 1.5, "design guidelines, weak"),
        new("sand casting", "outside", 10, 30, 1.5, 2.0, "design guidelines, weak"),
        new("sand casting", "outside", 30, 50, 2.0, 2.5, "design guidelines, weak"),
        new("sand casting", "outside", 50, 100, 2.5, 3.0, "design guidelines, weak"),
        new("pattern, typical", "outside", 0, double.PositiveInfinity, 1.5, 1.5, "course notes"),
        new("pattern, small and precise", "outside", 0, double.PositiveInfinity, 0.298, 0.298, "course notes"),
        new("pattern, rough", "outside", 0, double.PositiveInfinity, 1.193, 1.79, "course notes"),
        new("pattern, old practice", "outside", 0, double.PositiveInfinity, 0.298, 4.764, "Victorian workshop text"),
        new("general taper statement", "outside", 0, double.PositiveInfinity, 0.573, 0.573, "textbook page"),
    ];
}
