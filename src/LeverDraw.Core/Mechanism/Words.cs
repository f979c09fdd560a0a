using System.Globalization;

namespace LeverDraw.Mechanism;

/// <summary>Numbers of this folder that are no lengths, in words.</summary>
internal static class Words
{
    public static string Turns(double turns) => turns.ToString("0.00", CultureInfo.InvariantCulture);

    public static string Percent(double share) => (share * 100).ToString("0", CultureInfo.InvariantCulture) + " %";
}
