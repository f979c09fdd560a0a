using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Lookups;

/// <summary>What is told of a metric taper pin.</summary>
internal static class MetricTaperPinRows
{
    private static readonly ToleranceZone _zone = ToleranceZone.Shaft(DeviationLetter.H, 10);

    public static IEnumerable<LookupRow> Of(LookupRequest request, MetricTaperPin pin, Length? length, Length? edge)
    {
        if (request.Take(Iso286.Limits(_zone, pin.SmallEnd), out SizeLimits small))
            yield return new("small end, h10", LookupValue.Limits(small), Certainty.Solid, [MetricTaperPins.Source, .. ZoneRows.Sources(_zone)], "unless agreed otherwise");
        yield return Pin(Certainty.Mixed, "height of the rounded end, about", LookupValue.Size(pin.RoundedEnd));
        if (length is { } l)
        {
            foreach (LookupRow row in MetricLengthRows.Of(request, l))
                yield return row;
            yield return Pin(Certainty.Solid, "large end", LookupValue.Size(pin.LargeEnd(l)), "small end and length/50");
        }

        if (MetricTwistDrills.NearestNotAbove(pin.SmallEnd) is { IsGiven: true } metric)
            yield return LookupRow.From(MetricTwistDrills.Source, "metric drill, not above", LookupValue.Size(metric.Value));
        if (TwistDrills.NearestNotAbove(pin.SmallEnd) is { IsGiven: true } inch)
            yield return LookupRow.From(TwistDrills.Source, "inch drill " + inch.Value.Name + ", not above", LookupValue.Size(inch.Value.Diameter));
        yield return Pin(Certainty.FromMemory, "common lengths", LookupValue.Range(pin.CommonLengths.Shortest, pin.CommonLengths.Longest), "steps of the series");
        foreach (StandOffBeforeDriving row in TaperPinFitting.MetricStandOff.Where(row => row.SmallEnd == pin.SmallEnd))
            yield return LookupRow.From(TaperPinFitting.Source, "stands out before it is driven", LookupValue.Range(row.Least, row.Most));
        if (MetricTaperPins.Above(pin) is { IsGiven: true } next)
        {
            yield return Pin(Certainty.Mixed, "next oversize", LookupValue.Size(next.Value.SmallEnd), "small end");
            if (edge is { } distance)
            {
                Length hole = length is { } pinLength ? next.Value.LargeEnd(pinLength) : next.Value.SmallEnd;
                Length wall = distance - hole / 2;
                yield return LookupRow.From(
                    TaperPinFitting.Source, "wall left by it", LookupValue.Size(wall),
                    (wall >= hole * TaperPinFitting.LeastWallPerDiameter ? "at least" : "LESS than") + " half the hole's diameter (common practice)"
                    + (length is null ? ", at its small end" : ""));
            }
        }
    }

    private static LookupRow Pin(Certainty howSure, string name, LookupValue value, string note = "") =>
        LookupRow.From(MetricTaperPins.Source, howSure, name, value, note);
}
