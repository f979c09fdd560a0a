using System.Globalization;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Units;

namespace LeverDraw.Mechanism;

/// <summary>Lengths of a report in the units asked for: to a thousandth of a millimetre, to a ten-thousandth of an inch; with both, the second in square brackets.</summary>
public sealed class LengthWords(ShownUnits units)
{
    private const int MillimetreDecimals = 3, InchDecimals = 4;

    /// <summary>Such as <c>mm [in]</c>.</summary>
    public string Units => units.Words();

    /// <summary>What the cost of a little more play is told for: a tenth of a millimetre, or five thousandths of an inch.</summary>
    public Length Little => units.MillimetresFirst() ? Length.FromMillimetres(0.1) : Length.FromInches(0.005);

    /// <summary><see cref="Little"/> in its own unit.</summary>
    public string LittleInWords => LengthText.WithUnit(Little, units.First(), InchDecimals);

    /// <summary><c>0.45 mm</c>, <c>0.0177 in</c>, <c>0.45 mm [0.0177 in]</c>.</summary>
    public string InSentence(Length length) => InEachUnit(unit => LengthText.WithUnit(length, unit, DecimalsOf(unit)));

    /// <summary>The number alone, with all its decimals, for columns: <c>0.450</c>.</summary>
    public string Number(Length length, int fewer = 0) => InEachUnit(unit =>
    {
        double number = unit == LengthUnit.Inch ? length.Inches : length.Millimetres;
        int decimals = DecimalsOf(unit) - fewer;
        return (Math.Round(number, decimals, MidpointRounding.AwayFromZero) + 0.0).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    });

    private static int DecimalsOf(LengthUnit unit) => unit == LengthUnit.Inch ? InchDecimals : MillimetreDecimals;

    private string InEachUnit(Func<LengthUnit, string> text) =>
        text(units.First()) + (units.Second() is { } second ? " [" + text(second) + "]" : "");
}
