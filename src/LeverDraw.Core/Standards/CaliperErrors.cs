using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>Greatest permissible error of a caliper's outside jaws, over one range of measured length.</summary>
/// <param name="Coarse">Of a caliper read to 0.05 mm.</param>
/// <param name="Fine">Of a caliper read to 0.02 or 0.01 mm.</param>
public sealed record CaliperError(string Standard, Length Over, Length UpTo, Length Coarse, Length Fine);

/// <summary>What calipers may err by. ISO 13385-1 leaves the limits to maker and buyer, so these are typical only.</summary>
public static class CaliperErrors
{
    public static StandardSource Source { get; } = new(
        "Caliper, greatest permissible error", "JIS B 7507:2016 and DIN 862:2005", "", "", Certainty.FromMemory,
        "every value from memory; ISO 13385-1 leaves the limits to the maker if not agreed; use as typical");

    public static ImmutableArray<CaliperError> All { get; } =
    [
        Row("JIS B 7507", 0, 50, 0.05, 0.02),
        Row("JIS B 7507", 50, 100, 0.06, 0.03),
        Row("JIS B 7507", 100, 200, 0.07, 0.03),
        Row("JIS B 7507", 200, 300, 0.08, 0.04),
        Row("DIN 862", 0, 100, 0.05, 0.02),
        Row("DIN 862", 100, 200, 0.05, 0.03),
        Row("DIN 862", 200, 300, 0.05, 0.03),
    ];

    /// <summary>The larger of what the standards held here allow.</summary>
    public static Answer<CaliperError> At(Length measured) => Answer<CaliperError>.First(
        All.OrderByDescending(r => r.Fine).ThenByDescending(r => r.Coarse),
        r => measured >= r.Over && measured <= r.UpTo,
        () => "the caliper table goes from 0 to 300 mm");

    private static CaliperError Row(string standard, double over, double upTo, double coarse, double fine) =>
        new(standard, Length.FromMillimetres(over), Length.FromMillimetres(upTo), Length.FromMillimetres(coarse), Length.FromMillimetres(fine));
}
