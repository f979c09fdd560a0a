using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Lookups;

/// <summary>Deviations and limits of one tolerance zone.</summary>
public static class ZoneLookup
{
    private static readonly LookupInput _size = new("SIZE", "Nominal size, in mm or with its unit: 3.06, \"9/64 in\"");
    private static readonly LookupInput _zone = new("ZONE", "Capital letter for a hole, small for a shaft, and grade: H8, f7, js6");

    public static Lookup Entry { get; } = new("zone", "Deviations and limits of a tolerance zone", "zone 3.06 H8", [_size, _zone], Find);

    private static Checked<LookupAnswer> Find(LookupRequest request)
    {
        Length? size = request.Size(_size);
        LimitDeviations deviations = default;
        _ = request.Take(ToleranceZone.Parse(request.Text(_zone) ?? ""), out ToleranceZone zone)
            && size is not null && request.Take(Iso286.Deviations(zone, size.Value), out deviations);
        return request.Answer(() => Answer(size!.Value, zone, deviations));
    }

    private static LookupAnswer Answer(Length nominal, ToleranceZone zone, LimitDeviations deviations)
    {
        Certainty howSure = ZoneRows.HowSure(zone, nominal);
        ImmutableArray<StandardSource> sources = ZoneRows.Sources(zone);
        return new LookupAnswer(zone.Text + " (" + ZoneRows.Feature(zone) + ") on " + ZoneRows.Both(nominal),
        [
            ZoneRows.Limits(ZoneRows.Feature(zone), zone, nominal, deviations.About(nominal)),
            new("upper deviation", LookupValue.Size(deviations.Upper), howSure, sources, ""),
            new("lower deviation", LookupValue.Size(deviations.Lower), howSure, sources, ""),
            new("tolerance", LookupValue.Size(deviations.Width), Certainty.Solid, [Iso286Grades.Source], "the width of the grade"),
        ]);
    }
}
