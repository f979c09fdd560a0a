using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>A row that holds for sizes over one value, up to and including another, in millimetres.</summary>
internal interface ISizeStep
{
    double OverMm { get; }

    /// <summary>Positive infinity when the row has no upper end.</summary>
    double UpToMm { get; }
}

/// <summary>Finds the row of a size. A size on a border belongs to the row that ends there.</summary>
internal static class SizeSteps
{
    /// <summary>Sizes are compared after rounding to a nanometre, so 0.1 + 2.9 mm is not "over 3".</summary>
    public static double ToBorder(Length size) => Math.Round(size.Millimetres, 6, MidpointRounding.ToEven);

    /// <param name="lowerEndBelongs">True when the first row also holds at its lower end.</param>
    public static Answer<T> Find<T>(ImmutableArray<T> rows, Length size, string what, bool lowerEndBelongs = false)
        where T : class, ISizeStep
    {
        double mm = ToBorder(size);
        if (mm > rows[0].OverMm || (lowerEndBelongs && mm == rows[0].OverMm))
        {
            foreach (T row in rows)
            {
                if (mm <= row.UpToMm)
                    return Answer<T>.Given(row);
            }
        }
        return Answer<T>.Refused(Outside(what, mm, rows[0].OverMm, rows[^1].UpToMm, lowerEndBelongs));
    }

    private static string Outside(string what, double mm, double over, double upTo, bool lowerEndBelongs)
    {
        string range = string.Create(CultureInfo.InvariantCulture, $"{(lowerEndBelongs ? "from" : "over")} {over} mm");
        if (double.IsFinite(upTo))
            range += string.Create(CultureInfo.InvariantCulture, $" up to {upTo} mm");
        return string.Create(CultureInfo.InvariantCulture, $"{what} are given for sizes {range}, not for {mm} mm");
    }
}
