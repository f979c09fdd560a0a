using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Lookups;

/// <summary>Limits of a metric pin's length, and the next length of the series when it is none.</summary>
internal static class MetricLengthRows
{
    public static IEnumerable<LookupRow> Of(LookupRequest request, Length length)
    {
        if (!request.Take(MetricPinLengths.PlusMinus(length), out Length plusMinus))
            yield break;
        yield return LookupRow.From(MetricPinLengths.Source, "length", LookupValue.Limits(new SizeLimits(length - plusMinus, length + plusMinus)));
        if (MetricPinLengths.AtLeast(length) is { IsGiven: true } next && (next.Value - length).Millimetres > 1e-6)
            yield return LookupRow.From(MetricPinLengths.Source, "next listed length", LookupValue.Size(next.Value), "the one asked for is not in the series");
    }
}
