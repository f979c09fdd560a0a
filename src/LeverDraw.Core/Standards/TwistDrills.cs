using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>The three ways inch drills are named.</summary>
public enum DrillSeries
{
    Number,
    Letter,
    Fraction,
}

/// <summary>A twist drill of the inch series: <c>#47</c>, <c>F</c>, <c>7/64</c>.</summary>
public sealed record TwistDrill(string Name, Length Diameter, DrillSeries Series);

/// <summary>Inch twist drills: numbers #1 to #80, letters A to Z, fractions 1/64 to 1 in by 64ths.</summary>
public static class TwistDrills
{
    public static StandardSource Source { get; } = new(
        "Inch twist drills: numbers, letters, fractions", "ASME B94.11M", "", "", Certainty.Solid,
        "fractions exact; numbers and letters written from memory, then compared with public tables: three agree on every letter, two on every number but #57, which one leaves out; document number from memory");

    /// <summary>Diameters of #1 to #80, inch.</summary>
    private static readonly ImmutableArray<double> _numbers =
    [
        0.2280, 0.2210, 0.2130, 0.2090, 0.2055, 0.2040, 0.2010, 0.1990, 0.1960, 0.1935,
        0.1910, 0.1890, 0.1850, 0.1820, 0.1800, 0.1770, 0.1730, 0.1695, 0.1660, 0.1610,
        0.1590, 0.1570, 0.1540, 0.1520, 0.1495, 0.1470, 0.1440, 0.1405, 0.1360, 0.1285,
        0.1200, 0.1160, 0.1130, 0.1110, 0.1100, 0.1065, 0.1040, 0.1015, 0.0995, 0.0980,
        0.0960, 0.0935, 0.0890, 0.0860, 0.0820, 0.0810, 0.0785, 0.0760, 0.0730, 0.0700,
        0.0670, 0.0635, 0.0595, 0.0550, 0.0520, 0.0465, 0.0430, 0.0420, 0.0410, 0.0400,
        0.0390, 0.0380, 0.0370, 0.0360, 0.0350, 0.0330, 0.0320, 0.0310, 0.0292, 0.0280,
        0.0260, 0.0250, 0.0240, 0.0225, 0.0210, 0.0200, 0.0180, 0.0160, 0.0145, 0.0135,
    ];

    /// <summary>Diameters of A to Z, inch.</summary>
    private static readonly ImmutableArray<double> _letters =
    [
        0.234, 0.238, 0.242, 0.246, 0.250, 0.257, 0.261, 0.266, 0.272, 0.277, 0.281, 0.290, 0.295,
        0.302, 0.316, 0.323, 0.332, 0.339, 0.348, 0.358, 0.368, 0.377, 0.386, 0.397, 0.404, 0.413,
    ];

    /// <summary>All drills, smallest first; of two equal ones (E and 1/4) the fraction comes last.</summary>
    public static ImmutableArray<TwistDrill> All { get; } = Build();

    public static Answer<TwistDrill> Named(string name) =>
        Answer<TwistDrill>.First(
            All,
            drill => string.Equals(drill.Name, name, StringComparison.Ordinal),
            () => "the drills are #1 to #80, A to Z and fractions from 1/64 to 1 in, there is no \"" + name + "\"");

    /// <summary>The largest drill not above a diameter; a nanometre short counts as equal.</summary>
    public static Answer<TwistDrill> NearestNotAbove(Length diameter)
    {
        double mm = SizeSteps.ToBorder(diameter);
        if (mm <= SizeSteps.ToBorder(All[^1].Diameter))
        {
            for (int i = All.Length - 1; i >= 0; i--)
            {
                if (SizeSteps.ToBorder(All[i].Diameter) <= mm)
                    return Answer<TwistDrill>.Given(All[i]);
            }
        }
        return Answer<TwistDrill>.Refused("the drills run from #80 (0.0135 in) to 1 in");
    }

    /// <summary>The largest drill of one series not above a diameter; null below its smallest.</summary>
    public static TwistDrill? NotAbove(Length diameter, DrillSeries series) =>
        All.LastOrDefault(d => d.Series == series && SizeSteps.ToBorder(d.Diameter) <= SizeSteps.ToBorder(diameter));

    /// <summary>The smallest drill of one series not below a diameter; null above its largest.</summary>
    public static TwistDrill? NotBelow(Length diameter, DrillSeries series) =>
        All.FirstOrDefault(d => d.Series == series && SizeSteps.ToBorder(d.Diameter) >= SizeSteps.ToBorder(diameter));

    private static ImmutableArray<TwistDrill> Build()
    {
        IEnumerable<TwistDrill> numbers = _numbers.Select((inch, i) =>
            new TwistDrill(string.Create(CultureInfo.InvariantCulture, $"#{i + 1}"), Length.FromInches(inch), DrillSeries.Number));
        IEnumerable<TwistDrill> letters = _letters.Select((inch, i) =>
            new TwistDrill(((char)('A' + i)).ToString(), Length.FromInches(inch), DrillSeries.Letter));
        IEnumerable<TwistDrill> fractions = Enumerable.Range(1, 64).Select(i =>
            new TwistDrill(FractionName(i), Length.FromInches(i / 64.0), DrillSeries.Fraction));
        return [.. numbers.Concat(letters).Concat(fractions).OrderBy(d => d.Diameter)];
    }

    private static string FractionName(int sixtyFourths)
    {
        int over = 64;
        while (sixtyFourths % 2 == 0 && over > 1)
        {
            sixtyFourths /= 2;
            over /= 2;
        }
        return over == 1 ? "1" : string.Create(CultureInfo.InvariantCulture, $"{sixtyFourths}/{over}");
    }
}
