using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>One published least wall that still fills.</summary>
public sealed record LeastSection(string Metal, string Process, Length From, Length To, string Kind);

/// <summary>Least wall thickness by metal and process.</summary>
public static class LeastSections
{
    public static StandardSource Source { get; } = new(
        "Least section", "Guides", "", "", Certainty.Mixed, "two weak sources for aluminium and grey iron; one or memory for the rest");

    public static ImmutableArray<LeastSection> All { get; } =
    [
        new("grey iron", "green sand", Mm(4), Mm(6), "design guidelines, weak"),
        new("grey iron", "sand", Mm(3), Mm(3), "constants file, weak"),
        new("grey iron", "sand (handbooks)", Mm(3.2), Mm(4.8), "from memory"),
        new("ductile iron", "green sand", Mm(5), Mm(7), "design guidelines, weak"),
        new("malleable iron", "sand (handbooks)", Mm(3.2), Mm(3.2), "from memory"),
        new("carbon steel", "green sand", Mm(5), Mm(6), "design guidelines, weak"),
        new("brass and bronze", "green sand", Mm(3), Mm(4), "design guidelines, weak"),
        new("bronze", "sand", Mm(2), Mm(2), "constants file, weak"),
        new("brass and bronze", "sand (handbooks)", Mm(2.4), Mm(2.4), "from memory"),
        new("aluminium", "green sand", Mm(3), Mm(3), "design guidelines, weak"),
        new("aluminium", "sand", Mm(3), Mm(4.8), "moulding guide"),
        new("aluminium", "sand", Mm(2.5), Mm(2.5), "constants file, weak"),
        new("all metals", "investment", Mm(1.5), Mm(2.5), "from memory"),
        new("all metals", "gravity die", Mm(3), Mm(4), "from memory"),
    ];

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
