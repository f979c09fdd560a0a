using LeverDraw.Diagnostics;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Lookups;

/// <summary>Required machining allowance per face.</summary>
public static class MachiningAllowanceLookup
{
    private static readonly LookupInput _size = new("SIZE", "Largest overall size of the finished part");
    private static readonly LookupInput _grade = new("GRADE", "A to H, J or K");

    public static Lookup Entry { get; } = new(
        "machining-allowance", "Required machining allowance (RMA) per face, by largest size and grade", "machining-allowance 70 G", [_size, _grade], Find);

    private static Checked<LookupAnswer> Find(LookupRequest request)
    {
        Length? size = request.Size(_size);
        string text = (request.Text(_grade) ?? "").ToUpperInvariant();
        if (text.StartsWith("RMAG", StringComparison.Ordinal))
            text = text["RMAG".Length..].Trim();
        Length allowance = default;
        if (text.Length != 1)
            _ = request.Take(Answer<Length>.Refused("the machining allowance grades are A to H, J and K, there is no \"" + text + "\""), out _);
        else if (size is { } largest)
            _ = request.Take(RequiredMachiningAllowances.PerFace(text[0], largest), out allowance);
        return request.Answer(() => new LookupAnswer("RMA grade " + text + " for a largest size of " + ZoneRows.Both(size!.Value),
        [
            LookupRow.From(
                RequiredMachiningAllowances.Source, HowSure(text[0], size.Value), "per machined face, least", LookupValue.Size(allowance),
                "one value for the whole casting; draft and casting tolerance not in it"),
        ]));
    }

    /// <summary>E to J two sources, A to D one; K up to 63 mm two that differ.</summary>
    private static Certainty HowSure(char grade, Length size) => grade switch
    {
        >= 'E' and <= 'J' => Certainty.Solid,
        'K' when size.Millimetres > 63 => Certainty.Solid,
        _ => Certainty.Thin,
    };
}
