using LeverDraw.Diagnostics;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Lookups;

/// <summary>A taper pin: an inch one by its number, a metric one by its small end in millimetres.</summary>
public static class TaperPinLookup
{
    private static readonly LookupInput _pin = new("PIN", "Inch pin by number (3/0, 2), metric pin by small end with its unit (\"3 mm\")");
    private static readonly LookupInput _length = new("--length", "Length of the pin", Needed: false);
    private static readonly LookupInput _edge = new("--edge", "From the hole's axis to the nearest edge of the lug, for the wall left by the next oversize", Needed: false);

    public static Lookup Entry { get; } = new(
        "taper-pin", "Taper pin: ends, limits, drill, reamer, step drills, next oversize, lengths", "taper-pin 3/0 --length \"3/4 in\"", [_pin, _length, _edge], Find);

    private static Checked<LookupAnswer> Find(LookupRequest request)
    {
        string name = request.Text(_pin) ?? "";
        Length? length = request.Size(_length);
        Length? edge = request.Size(_edge);
        TextResult<Length> asSize = LengthText.Parse(name, LengthUnit.Inch);
        bool metric = asSize is { Ok: true, StatesUnit: true };
        List<LookupRow> rows = [];
        if (metric && request.Take(MetricTaperPins.WithSmallEnd(asSize.Value), out MetricTaperPin? metricPin))
            rows.AddRange(MetricTaperPinRows.Of(request, metricPin, length, edge));
        else if (!metric && request.Take(InchTaperPins.Numbered(name), out InchTaperPin? inchPin))
            rows.AddRange(InchTaperPinRows.Of(request, inchPin, length, edge));
        string kind = metric ? "Metric taper pin, 1:50, small end " : "Inch taper pin, 1:48, No. ";
        return request.Answer(() => new LookupAnswer(kind + name + (length is { } l ? ", " + ZoneRows.Both(l) + " long" : ""), [.. rows]));
    }
}
