using System.Globalization;
using LeverDraw.Profiles;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Drafting.Dimensions;

/// <summary>
/// The numbers of a toleranced size as they are lettered: nominal and both limits, exact decimals in one unit.
/// The limits shown never lie outside the true ones: each is rounded inwards. A nominal size that lies within its limits is shown within the limits shown, with a decimal or two more where need be in a fit or an inch size,
/// or rounded inwards like the limits (a hole's nominal size is its least one).
/// </summary>
/// <param name="Decimals">Of the nominal size.</param>
/// <param name="LimitDecimals">Of the limits.</param>
internal readonly record struct ShownSize(LengthUnit Unit, decimal Nominal, int Decimals, decimal Min, decimal Max, int LimitDecimals)
{
    /// <summary>Of an inch size, at least.</summary>
    private const int InchDecimals = 4;

    /// <summary>Of an inch nominal size, at most, for the sake of lying within its limits: a quarter of a micrometre.</summary>
    private const int MostInchDecimals = 5;

    /// <summary>Of a nominal size in millimetres, at most: no shop works to a tenth of a micrometre. The limits of one taken over from inches are rounded inwards.</summary>
    private const int MillimetreDecimals = 3;

    /// <summary>Of limits in millimetres, at least: micrometres.</summary>
    private const int MillimetreLimitDecimals = 3;

    private const int MostMillimetreLimitDecimals = 6;

    /// <param name="size">With a tolerance of its own, one that exists.</param>
    /// <param name="within">Limits that those shown must not leave, if not the size's own: those shown beside in another unit.</param>
    public static ShownSize Of(SizeValue size, LengthUnit unit, SizeLimits? within = null)
    {
        SizeLimits limits = within ?? StatedLimits.Of(size) ?? throw new ArgumentException("The size has no limits of its own.", nameof(size));
        return unit == LengthUnit.Inch ? InInches(size, limits) : InMillimetres(size, limits, saidAgain: within is null);
    }

    /// <summary>The limits as they are read.</summary>
    public SizeLimits Limits => Unit == LengthUnit.Inch
        ? new SizeLimits(Length.FromInches((double)Min), Length.FromInches((double)Max))
        : new SizeLimits(Length.FromMillimetres((double)Min), Length.FromMillimetres((double)Max));

    public string NominalText => Nominal.ToString(Format(Decimals), CultureInfo.InvariantCulture);

    /// <summary>The lower limit first: <c>3.060 / 3.074</c>.</summary>
    public string LimitsInLine => LimitText(Min) + " / " + LimitText(Max);

    /// <summary>The upper limit first; lettering sets them one above the other.</summary>
    public string LimitsStacked => LimitText(Max) + "/" + LimitText(Min);

    /// <summary><c>±0.05</c>, <c>0/−0.1</c>: together with the nominal size shown they give exactly the limits shown.</summary>
    public string DeviationsText
    {
        get
        {
            (decimal upper, decimal lower) = (Max - Nominal, Min - Nominal);
            return upper == -lower ? "±" + DeviationText(upper) : Signed(upper) + "/" + Signed(lower);
        }
    }

    private string LimitText(decimal limit) =>
        limit.ToString(Unit == LengthUnit.Inch ? Format(LimitDecimals) : "0." + new string('0', LimitDecimals), CultureInfo.InvariantCulture);

    private string Signed(decimal deviation) =>
        deviation == 0 ? "0" : (deviation > 0 ? "+" : "−") + DeviationText(Math.Abs(deviation));

    private string DeviationText(decimal deviation) =>
        deviation.ToString(Format(Math.Max(Decimals, LimitDecimals)), CultureInfo.InvariantCulture);

    /// <summary>Millimetres without trailing zeros, inches with fixed decimals and no leading zero.</summary>
    private string Format(int decimals) => Unit == LengthUnit.Inch ? "#." + new string('0', decimals) : "0." + new string('#', decimals);

    private static ShownSize InInches(SizeValue size, SizeLimits limits)
    {
        InchLimits fewest = InchRounding.FewestDecimals(limits, InchDecimals).Value;
        bool inside = size.Nominal.Millimetres >= limits.Min.Millimetres - 1e-9 && size.Nominal.Millimetres <= limits.Max.Millimetres + 1e-9;
        for (int most = fewest.Decimals; most <= Math.Max(MostInchDecimals, fewest.Decimals); most++)
        {
            InchLimits shown = InchRounding.Limits(limits, most).Value;
            // As many decimals as the limits: the reader compares them, or adds the deviations.
            decimal nominal = Rounded(size.Nominal, LengthUnit.Inch, most);
            // More of them only for a fit, or a size meant in inches: elsewhere the nominal size of a size in millimetres is as well rounded inwards like its limits.
            bool worthIt = most == fewest.Decimals || size.Tolerance is ZoneTolerance || Math.Abs((decimal)size.Nominal.Inches - nominal) < 1e-8m;
            if (worthIt && (!inside || (nominal >= shown.MinInches && nominal <= shown.MaxInches)))
                return new ShownSize(LengthUnit.Inch, nominal, most, shown.MinInches, shown.MaxInches, most);
        }

        decimal inwards = Math.Clamp(Rounded(size.Nominal, LengthUnit.Inch, fewest.Decimals), fewest.MinInches, fewest.MaxInches);
        return new ShownSize(LengthUnit.Inch, inwards, fewest.Decimals, fewest.MinInches, fewest.MaxInches, fewest.Decimals);
    }

    /// <summary>Limits with no nominal size: micrometres, or the fewest inch decimals that keep nine tenths of the tolerance.</summary>
    public static ShownSize Inwards(SizeLimits limits, LengthUnit unit)
    {
        if (unit == LengthUnit.Inch)
        {
            InchLimits inches = InchRounding.FewestDecimals(limits, InchDecimals).Value;
            return new ShownSize(unit, inches.MinInches, inches.Decimals, inches.MinInches, inches.MaxInches, inches.Decimals);
        }

        (decimal min, decimal max) = (Exact(limits.Min), Exact(limits.Max));
        int decimals = MillimetreLimitDecimals;
        while (decimals < MostMillimetreLimitDecimals && Up(min, decimals) > Down(max, decimals))
            decimals++;
        (decimal low, decimal high) = (Up(min, decimals), Down(max, decimals));
        return new ShownSize(unit, low, decimals, low, high, decimals);
    }

    private static ShownSize InMillimetres(SizeValue size, SizeLimits limits, bool saidAgain)
    {
        decimal nominal = Rounded(size.Nominal, LengthUnit.Millimetre, MillimetreDecimals);
        if (saidAgain && size.Tolerance is DeviationTolerance stated && Exact(size.Nominal) == nominal)
        {
            // What was typed in millimetres is said again, what was typed in inches to the micrometre: the limits follow from it.
            (decimal lower, decimal upper) = Micrometres(Exact(stated.Lower), Exact(stated.Upper));
            return new ShownSize(LengthUnit.Millimetre, nominal, DecimalsOf(nominal), nominal + lower, nominal + upper, Math.Max(MillimetreLimitDecimals, Math.Max(DecimalsOf(nominal + lower), DecimalsOf(nominal + upper))));
        }

        (decimal min, decimal max) = (Exact(limits.Min), Exact(limits.Max));
        int decimals = MillimetreLimitDecimals;
        while (decimals < MostMillimetreLimitDecimals && (decimal.Round(min, decimals) != min || decimal.Round(max, decimals) != max) && (decimals < MillimetreDecimals || Up(min, decimals) > Down(max, decimals)))
            decimals++;
        (decimal low, decimal high) = (Up(min, decimals), Down(max, decimals));
        if (Exact(size.Nominal) >= min && Exact(size.Nominal) <= max)
            nominal = Math.Clamp(nominal, low, high);
        return new ShownSize(LengthUnit.Millimetre, nominal, DecimalsOf(nominal), low, high, decimals);
    }

    /// <summary>Deviations rounded inwards to the micrometre, or finer where that would eat more than a tenth of the tolerance.</summary>
    private static (decimal Lower, decimal Upper) Micrometres(decimal lower, decimal upper)
    {
        int decimals = MillimetreLimitDecimals;
        while (decimals < MostMillimetreLimitDecimals && Down(upper, decimals) - Up(lower, decimals) < 0.9m * (upper - lower))
            decimals++;
        return (Up(lower, decimals), Down(upper, decimals));
    }

    private static decimal Up(decimal value, int decimals) => decimal.Round(value, decimals, MidpointRounding.ToPositiveInfinity);

    private static decimal Down(decimal value, int decimals) => decimal.Round(value, decimals, MidpointRounding.ToNegativeInfinity);

    /// <summary>Millimetres to 1e-9: a last-bit error of a double is no part of a size.</summary>
    private static decimal Exact(Length length) => Math.Round((decimal)length.Millimetres, 9, MidpointRounding.ToEven);

    private static decimal Rounded(Length length, LengthUnit unit, int decimals) =>
        decimal.Parse(LengthText.Number(length, unit, decimals), CultureInfo.InvariantCulture);

    /// <summary>Decimals without trailing zeros.</summary>
    private static int DecimalsOf(decimal value)
    {
        int decimals = 0;
        while (decimals < MostMillimetreLimitDecimals && decimal.Round(value, decimals) != value)
            decimals++;
        return decimals;
    }
}
