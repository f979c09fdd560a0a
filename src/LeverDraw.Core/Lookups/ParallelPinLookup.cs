using LeverDraw.Diagnostics;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Lookups;

/// <summary>A metric parallel pin.</summary>
public static class ParallelPinLookup
{
    private static readonly LookupInput _diameter = new("DIAMETER", "Nominal diameter: 3");
    private static readonly LookupInput _length = new("--length", "Nominal length", Needed: false);

    public static Lookup Entry { get; } = new(
        "parallel-pin", "Metric parallel pin: limits, chamfer, limits of a length", "parallel-pin 3 --length 20", [_diameter, _length], Find);

    private static Checked<LookupAnswer> Find(LookupRequest request)
    {
        Length? diameter = request.Size(_diameter);
        Length? length = request.Size(_length);
        List<LookupRow> rows = [];
        if (diameter is { } d && request.Take(ParallelPins.WithDiameter(d), out ParallelPin? pin))
        {
            foreach (ToleranceZone zone in (ToleranceZone[])[ToleranceZone.Shaft(DeviationLetter.M, 6), ToleranceZone.Shaft(DeviationLetter.H, 8)])
            {
                if (request.Take(Iso286.Limits(zone, pin.Diameter), out SizeLimits limits))
                    rows.Add(new("diameter, " + zone.Text, LookupValue.Limits(limits), Certainty.Solid, [ParallelPins.Source, .. ZoneRows.Sources(zone)], ""));
            }

            rows.Add(LookupRow.From(ParallelPins.Source, Certainty.FromMemory, "chamfer, about", LookupValue.Size(pin.Chamfer)));
        }

        if (length is { } l)
            rows.AddRange(MetricLengthRows.Of(request, l));
        return request.Answer(() => new LookupAnswer("Parallel pin " + LengthText.Millimetres(diameter!.Value, 4) + " mm", [.. rows]));
    }
}
