using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>A reamer for inch taper pins, 1:48, with the diameters at the two ends of its flutes.</summary>
public sealed record TaperPinReamer(string Number, Length SmallEnd, Length LargeEnd, Length FluteLength)
{
    /// <summary>True when the flutes hold both diameters, so one pass finishes such a hole.</summary>
    public bool Covers(Length smallest, Length largest) => smallest >= SmallEnd && largest <= LargeEnd;
}

/// <summary>The standard taper-pin reamers of the inch series, smallest first.</summary>
public static class TaperPinReamers
{
    public static StandardSource Source { get; } = new(
        "Reamers for inch taper pins", "ASME B94.2", "", "", Certainty.Thin,
        "from memory; the two diameters and the flute length agree with 1:48 in every row; one source gives the 5/0 large end as 0.0984 in");

    /// <summary>Number; small end, large end, flute length in inches.</summary>
    public static ImmutableArray<TaperPinReamer> All { get; } =
    [
        Reamer("7/0", 0.0497, 0.0666, 0.8125),
        Reamer("6/0", 0.0611, 0.0806, 0.9375),
        Reamer("5/0", 0.0719, 0.0966, 1.1875),
        Reamer("4/0", 0.0869, 0.1142, 1.3125),
        Reamer("3/0", 0.1029, 0.1302, 1.3125),
        Reamer("2/0", 0.1137, 0.1462, 1.5625),
        Reamer("0", 0.1287, 0.1638, 1.6875),
        Reamer("1", 0.1447, 0.1798, 1.6875),
        Reamer("2", 0.1605, 0.2008, 1.9375),
        Reamer("3", 0.1813, 0.2294, 2.3125),
        Reamer("4", 0.2071, 0.2604, 2.5625),
        Reamer("5", 0.2409, 0.2994, 2.8125),
        Reamer("6", 0.2773, 0.3540, 3.6875),
        Reamer("7", 0.3297, 0.4220, 4.4375),
        Reamer("8", 0.3971, 0.5050, 5.1875),
        Reamer("9", 0.4805, 0.6066, 6.0625),
        Reamer("10", 0.5799, 0.7216, 6.8125),
    ];

    public static Answer<TaperPinReamer> Numbered(string number) =>
        Answer<TaperPinReamer>.First(
            All,
            reamer => string.Equals(reamer.Number, number, StringComparison.Ordinal),
            () => "the inch taper-pin reamers are numbered 7/0 to 2/0 and 0 to 10, there is no \"" + number + "\"");

    private static TaperPinReamer Reamer(string number, double smallEnd, double largeEnd, double fluteLength) =>
        new(number, Length.FromInches(smallEnd), Length.FromInches(largeEnd), Length.FromInches(fluteLength));
}
