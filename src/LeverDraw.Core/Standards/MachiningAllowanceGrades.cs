using System.Collections.Immutable;

namespace LeverDraw.Standards;

/// <summary>The required-machining-allowance grades usual for a metal and process.</summary>
public sealed record MachiningAllowanceBand(string Metal, string Process, char FinestGrade, char CoarsestGrade, Certainty Certainty);

/// <summary>Machining allowance grades by metal and process.</summary>
public static class MachiningAllowanceGrades
{
    public static StandardSource Source { get; } = new(
        "Machining allowance grades by process", "ISO 8062-4:2017; GB/T 6414-1999", "", "annex C", Certainty.Mixed,
        "two sources for sand, one for the rest; for machine-moulded steel they differ by one grade; a steel handbook adds a least 6 mm on cope faces");

    public static ImmutableArray<MachiningAllowanceBand> All { get; } =
    [
        new("grey iron", "sand, hand moulded", 'F', 'H', Certainty.Solid),
        new("grey iron", "sand, machine moulded and shell", 'E', 'G', Certainty.Solid),
        new("grey iron", "permanent mould", 'D', 'F', Certainty.Thin),
        new("grey iron", "investment casting", 'E', 'E', Certainty.Thin),
        new("ductile (SG) iron", "sand, hand moulded", 'F', 'H', Certainty.Thin),
        new("ductile (SG) iron", "sand, machine moulded and shell", 'E', 'G', Certainty.Thin),
        new("ductile (SG) iron", "permanent mould", 'D', 'F', Certainty.Thin),
        new("ductile (SG) iron", "investment casting", 'E', 'E', Certainty.Thin),
        new("copper alloys", "sand, hand moulded", 'F', 'H', Certainty.Solid),
        new("copper alloys", "sand, machine moulded and shell", 'E', 'G', Certainty.Solid),
        new("copper alloys", "permanent mould", 'D', 'F', Certainty.Thin),
        new("copper alloys", "investment casting", 'E', 'E', Certainty.Thin),
        new("light alloys", "sand, hand moulded", 'F', 'H', Certainty.Thin),
        new("light alloys", "sand, machine moulded and shell", 'E', 'G', Certainty.Thin),
        new("light alloys", "permanent mould", 'D', 'F', Certainty.Thin),
        new("light alloys", "investment casting", 'E', 'E', Certainty.Thin),
        new("steel", "sand, hand moulded", 'G', 'K', Certainty.Solid),
        new("steel", "sand, machine moulded and shell", 'F', 'H', Certainty.Solid),
        new("steel", "investment casting", 'E', 'E', Certainty.Thin),
        new("zinc", "sand, hand moulded", 'F', 'H', Certainty.Thin),
        new("zinc", "sand, machine moulded and shell", 'E', 'G', Certainty.Thin),
        new("zinc", "permanent mould", 'D', 'F', Certainty.Thin),
    ];
}
