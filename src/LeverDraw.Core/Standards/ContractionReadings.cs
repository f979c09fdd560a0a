using System.Collections.Immutable;

namespace LeverDraw.Standards;

/// <summary>One published contraction.</summary>
/// <param name="AsGiven">In the source's own unit.</param>
/// <param name="Lowest">mm per m, rounded to 0.01, as is <paramref name="Highest"/>.</param>
/// <param name="Kind">What kind of publication it is.</param>
public sealed record ContractionReading(string Metal, string AsGiven, double Lowest, double Highest, string Kind);

/// <summary>The single readings behind <see cref="Contractions"/>; some may share an ancestor.</summary>
public static class ContractionReadings
{
    public static StandardSource Source { get; } = new(
        "Contraction, reading by reading", "Textbooks and foundry pages", "", "", Certainty.Mixed,
        "each row is one publication; rows from memory say so; the calculator page words its figures as volume but they are linear; the course notes contradict themselves on steel, brass, aluminium and magnesium");

    public static ImmutableArray<ContractionReading> All { get; } =
    [
        new("cast iron", "3/32 in/ft", 7.81, 7.81, "metal-working textbook"),
        new("steel", "3/16 in/ft", 15.62, 15.62, "metal-working textbook"),
        new("brass", "3/16 in/ft", 15.62, 15.62, "metal-working textbook"),
        new("yellow brass", "7/32 in/ft", 18.23, 18.23, "metal-working textbook"),
        new("bronze", "5/32 in/ft", 13.02, 13.02, "metal-working textbook"),
        new("aluminium", "7/32 in/ft", 18.23, 18.23, "metal-working textbook"),
        new("zinc", "7/32 in/ft", 18.23, 18.23, "metal-working textbook"),
        new("lead", "7/32 in/ft", 18.23, 18.23, "metal-working textbook"),
        new("tin", "3/16 in/ft", 15.62, 15.62, "metal-working textbook"),
        new("cast iron", "1/8 in/ft", 10.42, 10.42, "shop-practice textbook"),
        new("brass", "3/16 in/ft", 15.62, 15.62, "shop-practice textbook"),
        new("softer metals", "1/4 in/ft", 20.83, 20.83, "shop-practice textbook"),
        new("cast iron", "1/8 in/ft", 10.42, 10.42, "mechanical-engineering textbook"),
        new("brass", "3/16 in/ft", 15.62, 15.62, "mechanical-engineering textbook"),
        new("gunmetal", "1/6 in/ft", 13.89, 13.89, "mechanical-engineering textbook"),
        new("steel", "3/16 in/ft", 15.62, 15.62, "mechanical-engineering textbook"),
        new("aluminium", "17/64 in/ft", 22.14, 22.14, "mechanical-engineering textbook"),
        new("aluminium", "5/32 in/ft", 13.02, 13.02, "patternmaking pages"),
        new("brass", "3/16 in/ft", 15.62, 15.62, "patternmaking pages"),
        new("bronze", "3/16 in/ft", 15.62, 15.62, "patternmaking pages"),
        new("aluminium bronze", "7/32 in/ft", 18.23, 18.23, "patternmaking pages"),
        new("manganese bronze", "7/32 in/ft", 18.23, 18.23, "patternmaking pages"),
        new("cast iron", "1/10 to 1/8 in/ft", 8.33, 10.42, "patternmaking pages"),
        new("copper", "3/16 in/ft", 15.62, 15.62, "patternmaking pages"),
        new("lead", "5/16 in/ft", 26.04, 26.04, "patternmaking pages"),
        new("nickel-copper alloy", "1/4 in/ft", 20.83, 20.83, "patternmaking pages"),
        new("magnesium", "1/8 to 5/32 in/ft", 10.42, 13.02, "patternmaking pages"),
        new("steel", "1/4 in/ft", 20.83, 20.83, "patternmaking pages"),
        new("tin", "1/4 in/ft", 20.83, 20.83, "patternmaking pages"),
        new("zinc", "5/16 in/ft", 26.04, 26.04, "patternmaking pages"),
        new("cast iron", "1/8 in/ft", 10.42, 10.42, "shrink-rule page"),
        new("brass", "3/16 in/ft", 15.62, 15.62, "shrink-rule page"),
        new("aluminium", "3/16 in/ft", 15.62, 15.62, "shrink-rule page"),
        new("copper", "3/16 in/ft", 15.62, 15.62, "shrink-rule page"),
        new("steel", "1/4 in/ft", 20.83, 20.83, "shrink-rule page"),
        new("lead", "5/16 in/ft", 26.04, 26.04, "shrink-rule page"),
        new("zinc", "5/16 in/ft", 26.04, 26.04, "shrink-rule page"),
        new("tin", "1/12 in/ft", 6.94, 6.94, "shrink-rule page"),
        new("grey iron", "1 %", 10.00, 10.00, "calculator page"),
        new("steel", "2 %", 20.00, 20.00, "calculator page"),
        new("malleable iron", "1.6 %", 16.00, 16.00, "calculator page"),
        new("bronze", "1.5 %", 15.00, 15.00, "calculator page"),
        new("gunmetal", "1.5 %", 15.00, 15.00, "calculator page"),
        new("brass", "1.5 %", 15.00, 15.00, "calculator page"),
        new("copper", "1 %", 10.00, 10.00, "calculator page"),
        new("zinc", "1.5 %", 15.00, 15.00, "calculator page"),
        new("aluminium", "1.25 %", 12.50, 12.50, "calculator page"),
        new("grey iron", "0.7 to 1.05 %", 7.00, 10.50, "foundry page"),
        new("malleable iron", "1.5 %", 15.00, 15.00, "foundry page"),
        new("steel", "2 %", 20.00, 20.00, "foundry page"),
        new("aluminium", "1.3 to 1.6 %", 13.00, 16.00, "foundry page"),
        new("brass", "1.4 %", 14.00, 14.00, "foundry page"),
        new("bronze", "1.05 to 2.1 %", 10.50, 21.00, "foundry page"),
        new("grey iron", "10.5 mm/m", 10.50, 10.50, "course notes"),
        new("steel", "20 to 21 mm/m", 20.00, 21.00, "course notes"),
        new("brass", "16 mm/m", 16.00, 16.00, "course notes"),
        new("aluminium", "16 mm/m", 16.00, 16.00, "course notes"),
        new("magnesium", "18 mm/m", 18.00, 18.00, "course notes"),
        new("ductile iron", "0.8 %", 8.00, 8.00, "course notes"),
        new("grey iron", "0.8 to 1.0 %", 8.00, 10.00, "design guidelines, weak"),
        new("ductile iron", "1.0 to 1.2 %", 10.00, 12.00, "design guidelines, weak"),
        new("steel", "2.0 to 2.5 %", 20.00, 25.00, "design guidelines, weak"),
        new("aluminium", "1.3 to 1.6 %", 13.00, 16.00, "design guidelines, weak"),
        new("brass and bronze", "1.3 to 1.6 %", 13.00, 16.00, "design guidelines, weak"),
        new("aluminium bronze", "2.1 %", 21.00, 21.00, "design guidelines, weak"),
        new("cast iron", "1:96", 10.42, 10.42, "contraction-rule page"),
        new("aluminium", "1:75", 13.33, 13.33, "contraction-rule page"),
        new("grey iron", "10 mm/m", 10.00, 10.00, "materials page"),
        new("steel", "2.0 %", 20.00, 20.00, "formula list"),
        new("aluminium", "1.7 %", 17.00, 17.00, "formula list"),
        new("cast iron", "1.0 %", 10.00, 10.00, "formula list"),
        new("copper", "1.6 %", 16.00, 16.00, "formula list"),
        new("magnesium", "2.1 %", 21.00, 21.00, "worked exercise"),
        new("cast iron", "1/10 to 1/8 in/ft", 8.33, 10.42, "Victorian workshop text"),
        new("malleable iron", "1/16 to 3/16 in/ft", 5.21, 15.62, "from memory"),
        new("ductile iron", "0 to 1/8 in/ft", 0.00, 10.42, "from memory"),
        new("silicon bronze and brass", "3/16 to 1/4 in/ft", 15.62, 20.83, "from memory"),
    ];

    /// <summary>The readings that stand behind a row of <see cref="Contractions"/>; those from memory come along but are not in its range.</summary>
    public static IEnumerable<ContractionReading> Behind(string metal)
    {
        ImmutableArray<string> names = metal switch
        {
            "grey iron" => ["cast iron", "grey iron"],
            "carbon steel" => ["steel"],
            "brass" => ["brass", "yellow brass", "brass and bronze", "silicon bronze and brass"],
            "tin bronze / gunmetal" => ["bronze", "gunmetal", "brass and bronze"],
            _ => [metal],
        };
        return All.Where(reading => names.Contains(reading.Metal));
    }
}
