using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

public enum CastingSeries
{
    /// <summary>Single castings and short series.</summary>
    Short,

    /// <summary>Long series, with the process settled.</summary>
    Long,

    NotSaid,
}

/// <summary>The casting tolerance grades a process is expected to hold.</summary>
/// <param name="FinestGrade">DCTG, as is <paramref name="CoarsestGrade"/>.</param>
public sealed record CastingGradeBand(
    string Metal, string Process, CastingSeries Series, int FinestGrade, int CoarsestGrade, Certainty Certainty);

/// <summary>Casting tolerance grades by metal and process.</summary>
public static class CastingGradesByProcess
{
    public static StandardSource Source { get; } = new(
        "Casting tolerance grades by process", "ISO/CD 8062-2 (draft); ISO 8062-4:2017", "", "annex A; annex B", Certainty.Mixed,
        "two sources for short-run clay-bonded sand, one for the rest; permanent mould and two investment rows from memory; each row has its own grade");

    public static ImmutableArray<CastingGradeBand> All { get; } =
    [
        new("grey iron", "sand, hand moulded, clay bonded", CastingSeries.Short, 13, 15, Certainty.Solid),
        new("grey iron", "sand, hand moulded, chemically bonded", CastingSeries.Short, 11, 14, Certainty.Thin),
        new("ductile (SG) iron", "sand, hand moulded, clay bonded", CastingSeries.Short, 13, 15, Certainty.Solid),
        new("ductile (SG) iron", "sand, hand moulded, chemically bonded", CastingSeries.Short, 11, 14, Certainty.Thin),
        new("malleable iron", "sand, hand moulded, clay bonded", CastingSeries.Short, 13, 15, Certainty.Thin),
        new("malleable iron", "sand, hand moulded, chemically bonded", CastingSeries.Short, 11, 14, Certainty.Thin),
        new("copper alloys", "sand, hand moulded, clay bonded", CastingSeries.Short, 13, 15, Certainty.Solid),
        new("copper alloys", "sand, hand moulded, chemically bonded", CastingSeries.Short, 10, 13, Certainty.Thin),
        new("light alloys", "sand, hand moulded, clay bonded", CastingSeries.Short, 11, 13, Certainty.Solid),
        new("light alloys", "sand, hand moulded, chemically bonded", CastingSeries.Short, 10, 13, Certainty.Thin),
        new("steel", "sand, hand moulded, clay bonded", CastingSeries.Short, 13, 15, Certainty.Thin),
        new("steel", "sand, hand moulded, chemically bonded", CastingSeries.Short, 12, 14, Certainty.Thin),
        new("grey iron", "sand, hand moulded", CastingSeries.Long, 11, 14, Certainty.Thin),
        new("ductile (SG) iron", "sand, hand moulded", CastingSeries.Long, 11, 14, Certainty.Thin),
        new("copper alloys", "sand, hand moulded", CastingSeries.Long, 10, 13, Certainty.Thin),
        new("light alloys", "sand, hand moulded", CastingSeries.Long, 9, 12, Certainty.Thin),
        new("grey iron", "sand, machine moulded and shell", CastingSeries.Long, 8, 12, Certainty.Thin),
        new("copper alloys", "sand, machine moulded and shell", CastingSeries.Long, 8, 10, Certainty.Thin),
        new("all metals", "investment casting", CastingSeries.Long, 4, 9, Certainty.Thin),
        new("steel", "investment casting", CastingSeries.Long, 5, 7, Certainty.Thin),
        new("steel", "sand", CastingSeries.Long, 10, 12, Certainty.Thin),
        new("steel", "sand", CastingSeries.Short, 11, 13, Certainty.Thin),
        new("grey iron", "permanent mould", CastingSeries.Long, 8, 10, Certainty.FromMemory),
        new("ductile (SG) iron", "permanent mould", CastingSeries.Long, 8, 10, Certainty.FromMemory),
        new("malleable iron", "permanent mould", CastingSeries.Long, 8, 10, Certainty.FromMemory),
        new("copper alloys", "permanent mould", CastingSeries.Long, 8, 10, Certainty.FromMemory),
        new("light alloys", "permanent mould", CastingSeries.Long, 7, 9, Certainty.FromMemory),
        new("grey iron", "investment casting, silica sol", CastingSeries.NotSaid, 4, 6, Certainty.FromMemory),
        new("grey iron", "investment casting, water glass", CastingSeries.NotSaid, 7, 9, Certainty.FromMemory),
    ];

    /// <summary>Every band held for a metal.</summary>
    public static ImmutableArray<CastingGradeBand> For(string metal) =>
        [.. All.Where(band => string.Equals(band.Metal, metal, StringComparison.OrdinalIgnoreCase))];

    /// <summary>How many grades finer to expect on a small size in a short series: 3 up to 10 mm, 2 up to 16, 1 up to 25, else 0 (one source, informative).</summary>
    public static int GradesFinerWhenSmall(Length nominal) => SizeSteps.ToBorder(nominal) switch
    {
        <= 10 => 3,
        <= 16 => 2,
        <= 25 => 1,
        _ => 0,
    };
}
