using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>Lengths from one value to another, both included.</summary>
public sealed record LengthRange(Length Shortest, Length Longest);

/// <summary>A taper pin of the inch series, 1:48, named by the diameter of its LARGE end.</summary>
/// <param name="Number">The series number: <c>7/0</c>, <c>2/0</c>, <c>0</c>, <c>1</c>.</param>
/// <param name="LargeEnd">Nominal diameter of the large end.</param>
/// <param name="StandardReamerLengths">Pin lengths the standard reamer covers; null when none is held.</param>
/// <param name="OtherLengths">Further lengths, for which a longer reamer is wanted.</param>
public sealed record InchTaperPin(string Number, Length LargeEnd, LengthRange? StandardReamerLengths, LengthRange OtherLengths)
{
    /// <summary>large − length/48.</summary>
    public Length SmallEnd(Length length) => LargeEnd - length * Taper.InchPins.Rate;
}

/// <summary>The inch taper pins, smallest first.</summary>
public static class InchTaperPins
{
    public static StandardSource Source { get; } = new(
        "Inch taper pins", "ASME B18.8.2", "", "", Certainty.Mixed,
        "large ends: two handbook copies to No. 4, one and a geometric progression above; class limits, crown and length tolerance from memory; No. 5: the copy prints standard-reamer lengths to 2 1/2 in, which the reamer does not hold, so 2 1/4 stands here");

    /// <summary>Commercial class at the large end, over and under the nominal diameter (from memory).</summary>
    public static Length CommercialOver { get; } = Length.FromInches(0.0013);

    public static Length CommercialUnder { get; } = Length.FromInches(0.0007);

    /// <summary>Precision class at the large end, over the nominal diameter; nothing under it (from memory).</summary>
    public static Length PrecisionOver { get; } = Length.FromInches(0.0010);

    /// <summary>The crown radius is the large-end diameter, give or take this (from memory).</summary>
    public static Length CrownRadiusPlusMinus { get; } = Length.FromInches(0.010);

    /// <summary>On the length, plus or minus (from memory).</summary>
    public static Length LengthPlusMinus { get; } = Length.FromInches(0.030);

    /// <summary>Number; large end; lengths with the standard reamer; other lengths, all in inches.</summary>
    public static ImmutableArray<InchTaperPin> All { get; } =
    [
        Pin("7/0", 0.0625, double.NaN, double.NaN, 0.25, 1),
        Pin("6/0", 0.0780, double.NaN, double.NaN, 0.25, 1.5),
        Pin("5/0", 0.0940, 0.25, 1, 1.25, 1.5),
        Pin("4/0", 0.1090, 0.25, 1, 1.25, 2),
        Pin("3/0", 0.1250, 0.25, 1, 1.25, 2),
        Pin("2/0", 0.1410, 0.5, 1.25, 1.5, 2.5),
        Pin("0", 0.1560, 0.5, 1.25, 1.5, 3),
        Pin("1", 0.1720, 0.75, 1.25, 1.5, 3),
        Pin("2", 0.1930, 0.75, 1.5, 1.75, 3),
        Pin("3", 0.2190, 0.75, 1.75, 2, 4),
        Pin("4", 0.2500, 0.75, 2, 2.25, 4),
        Pin("5", 0.2890, 1, 2.25, 2.5, 6),
        Pin("6", 0.3410, 1.25, 3, 3.25, 6),
        Pin("7", 0.4090, 1.25, 3.75, 4, 8),
        Pin("8", 0.4920, 1.25, 4.5, 4.75, 8),
        Pin("9", 0.5910, 1.25, 5.25, 5.5, 8),
        Pin("10", 0.7060, 1.5, 6, 6.25, 8),
        Pin("11", 0.8600, double.NaN, double.NaN, 2, 8),
        Pin("12", 1.0320, double.NaN, double.NaN, 2, 9),
        Pin("13", 1.2410, double.NaN, double.NaN, 3, 11),
        Pin("14", 1.5210, double.NaN, double.NaN, 3, 13),
    ];

    public static Answer<InchTaperPin> Numbered(string number) =>
        Answer<InchTaperPin>.First(
            All,
            pin => string.Equals(pin.Number, number, StringComparison.Ordinal),
            () => "the inch taper pins are numbered 7/0 to 2/0 and 0 to 14, there is no \"" + number + "\"");

    /// <summary>The next larger pin of the series.</summary>
    public static Answer<InchTaperPin> Above(InchTaperPin pin)
    {
        int at = All.IndexOf(pin);
        return at >= 0 && at + 1 < All.Length
            ? Answer<InchTaperPin>.Given(All[at + 1])
            : Answer<InchTaperPin>.Refused("the inch taper pins end at number 14");
    }

    private static InchTaperPin Pin(string number, double largeEnd, double shortest, double longest, double otherShortest, double otherLongest) =>
        new(number, Length.FromInches(largeEnd), Range(shortest, longest), Range(otherShortest, otherLongest)!);

    private static LengthRange? Range(double shortest, double longest) =>
        double.IsNaN(shortest) ? null : new LengthRange(Length.FromInches(shortest), Length.FromInches(longest));
}
