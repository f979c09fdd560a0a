using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Drafting.Dimensions;

/// <summary>Numbers in notes, callouts and tables: always in every unit of the sheet.</summary>
public sealed partial class DimensionText
{
    /// <summary>Of an inch clearance, grip or drill, which three decimals would blur.</summary>
    private const int FineInchDecimals = 4;

    /// <summary>A length in the sheet's units inside a sentence: <c>0.4 mm</c>, <c>.016 in</c>, <c>0.4 mm [.016 in]</c>.</summary>
    public string InSentence(Length size) => InEachUnit(unit => Plain(size, unit) + Name(unit));

    /// <summary>Both ends of a range inside a sentence: <c>0.5 TO 1.6 mm [.020 TO .063 in]</c>.</summary>
    public string InSentence(Length least, Length most) => InEachUnit(unit => Plain(least, unit) + " TO " + Plain(most, unit) + Name(unit));

    /// <summary>The same where neither end may be passed: inches are rounded inwards, <c>.020 TO .062 in</c>.</summary>
    public string Within(Length least, Length most) => InEachUnit(unit => Plain(AtLeast(least, unit), unit) + " TO " + Plain(NoMore(most, unit), unit) + Name(unit));

    /// <summary>The number alone: <c>0.4</c>, <c>.016</c>, <c>0.4 [.016]</c>.</summary>
    public string Number(Length size) => InEachUnit(unit => Plain(size, unit));

    /// <summary>A clearance, grip or drill: <c>0.08</c>, <c>.0031</c>.</summary>
    public string Fine(Length size) => InEachUnit(unit => FinePlain(size, unit));

    /// <summary>As <see cref="Fine"/>, with its unit: <c>0.08 mm</c>, <c>.0031 in</c>.</summary>
    public string FineInSentence(Length size) => InEachUnit(unit => FinePlain(size, unit) + Name(unit));

    /// <summary>Both ends of a range of clearances or grips: <c>0.01 TO 0.033 mm</c>, <c>.0004 TO .0013 in</c>.</summary>
    public string FineRange(Length least, Length most) => InEachUnit(unit => FinePlain(least, unit) + " TO " + FinePlain(most, unit) + Name(unit));

    /// <summary>Limits of a check, lower first, each rounded inwards, inches after millimetres within these: <c>3.156 / 3.173</c>.</summary>
    public string Limits(SizeLimits limits) => InEachUnit(unit => ShownSize.Inwards((unit == First ? null : LimitsFor(unit, ShownSize.Inwards(limits, First))) ?? limits, unit).LimitsInLine);

    /// <summary>The limits as <see cref="Limits"/> letters them in the first unit.</summary>
    public SizeLimits Shown(SizeLimits limits) => ShownSize.Inwards(limits, First).Limits;

    /// <summary>A deviation to either side: <c>±0.1</c>, <c>±.0039</c>; inches never wider.</summary>
    public string PlusMinus(Length half) => "±" + AtMost(half);

    /// <summary>The most that something may be: <c>0.1</c>, <c>.0039</c>; inches never more.</summary>
    public string AtMost(Length most) => InEachUnit(unit => unit == LengthUnit.Millimetre ? Plain(most, unit) : InchesAtMost(most, InchDecimals).Text);

    /// <summary>As <see cref="AtMost"/>, of a clearance or grip: one inch decimal more than these have, so that a grip that is less does not read as equal.</summary>
    public string FineAtMost(Length most) => InEachUnit(unit => unit == LengthUnit.Millimetre ? Plain(most, unit) : InchesAtMost(most, FineInchDecimals + 1).Text);

    /// <summary>The least and the greatest that a clearance can be, as <see cref="FineRange"/> but rounded outwards: neither is promised better than it is.</summary>
    public string Extremes(SizeLimits clearance) => InEachUnit(unit => Outwards(clearance.Min, unit, up: false) + " TO " + Outwards(clearance.Max, unit, up: true) + Name(unit));

    /// <summary>The sign of edges that are broken by a least and a most, in every unit of the sheet; inches rounded inwards.</summary>
    public EdgeSign BrokenEdge(Length least, Length most) => new(
        InEachUnit(unit => "−" + Plain(AtLeast(least, unit), unit)),
        InEachUnit(unit => "−" + Plain(NoMore(most, unit), unit)));

    /// <summary>The numbers of one column, all with as many decimals, by unit one above the other. Millimetres without trailing zeros that none of them needs.</summary>
    /// <param name="inchDecimals">Of every inch number.</param>
    /// <param name="mostMillimetreDecimals">At most.</param>
    /// <param name="rounding">Which side is careful; to nearest when not said.</param>
    public ImmutableArray<string> Column(IReadOnlyCollection<Length> sizes, int inchDecimals, int mostMillimetreDecimals = MillimetreDecimals, MidpointRounding rounding = MidpointRounding.AwayFromZero)
    {
        string[] first = InColumn(First);
        return Second is { } other ? [.. first.Zip(InColumn(other), (a, b) => a + "\n[" + b + "]")] : [.. first];

        string[] InColumn(LengthUnit unit)
        {
            int decimals = unit == LengthUnit.Inch ? inchDecimals : mostMillimetreDecimals;
            // To 1e-9 first: a last-bit error of a double is no part of a size.
            decimal[] numbers = [.. sizes.Select(s => decimal.Round(decimal.Round((decimal)(unit == LengthUnit.Inch ? s.Inches : s.Millimetres), 9), decimals, rounding))];
            while (unit == LengthUnit.Millimetre && decimals > 0 && Array.TrueForAll(numbers, n => decimal.Round(n, decimals - 1) == n))
                decimals--;
            string format = (unit == LengthUnit.Inch ? "#." : "0.") + new string('0', decimals);
            return [.. numbers.Select(n => n.ToString(format, CultureInfo.InvariantCulture))];
        }
    }

    /// <summary>Inches rounded down, with the fewest decimals that keep nine tenths of it.</summary>
    private static (decimal Value, string Text) InchesAtMost(Length most, int leastDecimals)
    {
        SizeLimits limits = new(-most, most);
        Answer<InchLimits> kept = InchRounding.FewestDecimals(limits, leastDecimals);
        InchLimits shown = kept.IsGiven ? kept.Value : InchRounding.Limits(limits, InchRounding.MostDecimals).Value;
        return (shown.MaxInches, shown.MaxInches.ToString("#." + new string('0', shown.Decimals), CultureInfo.InvariantCulture));
    }

    private static Length AtLeast(Length least, LengthUnit unit) => unit == LengthUnit.Inch ? Cut(least, unit, 1e3, up: true) : least;

    private static Length NoMore(Length most, LengthUnit unit) => unit == LengthUnit.Inch ? Cut(most, unit, 1e3, up: false) : most;

    private string Outwards(Length size, LengthUnit unit, bool up) => FinePlain(Cut(size, unit, unit == LengthUnit.Millimetre ? 1e3 : 1e4, up), unit);

    /// <summary>Rounded one way to so many parts of a unit.</summary>
    private static Length Cut(Length size, LengthUnit unit, double parts, bool up)
    {
        double number = (unit == LengthUnit.Millimetre ? size.Millimetres : size.Inches) * parts;
        double cut = (up ? Math.Ceiling(number - 1e-6) : Math.Floor(number + 1e-6)) / parts;
        return unit == LengthUnit.Millimetre ? Length.FromMillimetres(cut) : Length.FromInches(cut);
    }

    private string FinePlain(Length size, LengthUnit unit) => unit == LengthUnit.Millimetre
        ? Plain(size, unit)
        : LengthText.InchDecimal(size, FineInchDecimals, leadingZero: false);

    private string InEachUnit(Func<LengthUnit, string> text) =>
        Second is { } other ? text(First) + " [" + text(other) + "]" : text(First);
}
