using System.Globalization;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Tolerancing;

/// <summary>Limits in inches with a fixed number of decimals, lying inside the millimetre limits they came from.</summary>
public readonly record struct InchLimits(decimal MinInches, decimal MaxInches, int Decimals)
{
    public Length Min => Length.FromInches((double)MinInches);

    public Length Max => Length.FromInches((double)MaxInches);
}

/// <summary>Turns limits into inches without ever widening them: the upper limit is rounded down and the lower one up, for hole and shaft alike.</summary>
public static class InchRounding
{
    public const int MostDecimals = 6;

    /// <param name="decimals">0 to 6.</param>
    /// <returns>A refusal when no number with so many decimals lies between the limits.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number of decimals is not 0 to 6.</exception>
    public static Answer<InchLimits> Limits(SizeLimits limits, int decimals)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(decimals);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(decimals, MostDecimals);
        decimal min = decimal.Round(Inches(limits.Min), decimals, MidpointRounding.ToPositiveInfinity);
        decimal max = decimal.Round(Inches(limits.Max), decimals, MidpointRounding.ToNegativeInfinity);
        return min <= max
            ? Answer<InchLimits>.Given(new InchLimits(min, max, decimals))
            : Answer<InchLimits>.Refused(string.Create(
                CultureInfo.InvariantCulture,
                $"no inch size with {decimals} decimals lies between {limits.Min.Millimetres:0.######} and {limits.Max.Millimetres:0.######} mm; use more decimals"));
    }

    /// <summary>The limits with the fewest decimals, from <paramref name="least"/> on, that keep at least nine tenths of the tolerance; refused when six do not.</summary>
    /// <remarks>The nine tenths are our own choice: rounding inwards with few decimals can eat most of a fine tolerance.</remarks>
    public static Answer<InchLimits> FewestDecimals(SizeLimits limits, int least)
    {
        for (int decimals = least; decimals <= MostDecimals; decimals++)
        {
            Answer<InchLimits> answer = Limits(limits, decimals);
            if (answer.IsGiven && (answer.Value.Max - answer.Value.Min).Millimetres >= 0.9 * limits.Width.Millimetres - 1e-9)
                return answer;
        }
        return Answer<InchLimits>.Refused("the limits are too close for inch sizes with six decimals");
    }

    /// <remarks>Rounded to 1e-9 mm first, so that 6.35 mm with a last-bit error is still 0.25 in.</remarks>
    private static decimal Inches(Length length) =>
        Math.Round((decimal)length.Millimetres, 9, MidpointRounding.ToEven) / (decimal)Length.MillimetresPerInch;
}
