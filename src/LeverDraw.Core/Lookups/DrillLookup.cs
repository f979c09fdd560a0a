using LeverDraw.Diagnostics;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Lookups;

/// <summary>The drills next to a size, in each series.</summary>
public static class DrillLookup
{
    private static readonly LookupInput _size = new("SIZE", "A diameter, or the name of an inch drill: 0.109 in, 2.8, #47, F, 7/64");

    private static readonly (DrillSeries Series, string Name)[] _series =
        [(DrillSeries.Number, "number"), (DrillSeries.Letter, "letter"), (DrillSeries.Fraction, "fraction")];

    public static Lookup Entry { get; } = new(
        "drill", "Nearest number, letter, fraction and metric drills below and above a size", "drill 0.109 in", [_size], Find);

    private static Checked<LookupAnswer> Find(LookupRequest request)
    {
        Length? size = IsName(request.Text(_size) ?? "")
            ? request.Take(TwistDrills.Named(request.Text(_size)!), out TwistDrill? named) ? named.Diameter : null
            : request.Size(_size);
        // Outside the whole series the last drill would look like an answer.
        if (size is { } wanted)
            _ = request.Take(TwistDrills.NearestNotAbove(wanted), out _);
        return request.Answer(() => new LookupAnswer("Drills about " + ZoneRows.Both(size!.Value), [.. Rows(size.Value)]));
    }

    // "1" is a millimetre and not the one-inch drill; only what can be no size is a name.
    private static bool IsName(string text) =>
        text is ['#', ..] or [>= 'A' and <= 'Z'] || (text.Contains('/', StringComparison.Ordinal) && text.All(c => c == '/' || char.IsAsciiDigit(c)));

    private static IEnumerable<LookupRow> Rows(Length wanted)
    {
        foreach ((DrillSeries series, string name) in _series)
        {
            if (TwistDrills.NotAbove(wanted, series) is { } below)
                yield return Row(TwistDrills.Source, name, below.Name, below.Diameter, wanted);
            if (TwistDrills.NotBelow(wanted, series) is { } above && above.Diameter > wanted + _near)
                yield return Row(TwistDrills.Source, name, above.Name, above.Diameter, wanted);
        }

        if (MetricTwistDrills.NearestNotAbove(wanted) is { IsGiven: true } metricBelow)
            yield return Row(MetricTwistDrills.Source, "metric", "", metricBelow.Value, wanted);
        if (MetricTwistDrills.NearestNotBelow(wanted) is { IsGiven: true } metricAbove && metricAbove.Value > wanted + _near)
            yield return Row(MetricTwistDrills.Source, "metric", "", metricAbove.Value, wanted);
    }

    private static readonly Length _near = Length.FromMillimetres(1e-6);

    private static LookupRow Row(StandardSource source, string series, string name, Length diameter, Length wanted)
    {
        Length off = diameter - wanted;
        string note = Math.Abs(off.Millimetres) <= _near.Millimetres ? "the very size"
            : LengthText.Both(off.Millimetres < 0 ? -off : off, 4, 4) + (off.Millimetres < 0 ? " below" : " above");
        return LookupRow.From(source, (series + " " + name).TrimEnd(), LookupValue.Size(diameter), note);
    }
}
