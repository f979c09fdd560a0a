using System.Globalization;
using LeverDraw.Units;

namespace LeverDraw.Mechanism;

/// <summary>Numbers of this folder in words.</summary>
internal static class Words
{
    /// <summary>Millimetres to the hundredth part of a tenth, with their unit.</summary>
    public static string Mm(Length length) => LengthText.WithUnit(length, LengthUnit.Millimetre, 3);

    public static string Turns(double turns) => turns.ToString("0.00", CultureInfo.InvariantCulture);

    public static string Percent(double share) => (share * 100).ToString("0", CultureInfo.InvariantCulture) + " %";
}
