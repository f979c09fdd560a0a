using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>Nominal lengths of metric pins and what they may be off.</summary>
public static class MetricPinLengths
{
    public static StandardSource Source { get; } = new(
        "Lengths of metric pins", "ISO 2338:1997; ISO 2339:1986", "", "", Certainty.Mixed,
        "limits of every length from one excerpt for ISO 2339, taken to hold for ISO 2338 from memory; over 200 mm in steps of 20 mm");

    /// <summary>Shortest first, mm.</summary>
    public static ImmutableArray<Length> All { get; } =
        [.. new double[]
        {
            2, 3, 4, 5, 6, 8, 10, 12, 14, 16, 18, 20,
            22, 24, 26, 28, 30, 32, 35, 40, 45, 50, 55, 60,
            65, 70, 75, 80, 85, 90, 95, 100, 120, 140, 160, 180,
            200,
        }.Select(Length.FromMillimetres)];

    /// <summary>Plus or minus on a length: 0.25 mm up to 10, 0.5 over 10 up to 50, 0.75 over 50.</summary>
    public static Answer<Length> PlusMinus(Length nominal)
    {
        double mm = SizeSteps.ToBorder(nominal);
        return mm < 2 || mm > 200
            ? Answer<Length>.Refused("pin lengths are given from 2 to 200 mm")
            : Answer<Length>.Given(Length.FromMillimetres(mm <= 10 ? 0.25 : mm <= 50 ? 0.5 : 0.75));
    }

    /// <summary>The shortest listed length not below <paramref name="wanted"/>.</summary>
    public static Answer<Length> AtLeast(Length wanted)
    {
        double mm = SizeSteps.ToBorder(wanted);
        foreach (Length length in All)
        {
            if (SizeSteps.ToBorder(length) >= mm)
                return Answer<Length>.Given(length);
        }
        return Answer<Length>.Refused("pin lengths are given from 2 to 200 mm");
    }
}
