using LeverDraw.Diagnostics;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Lookups;

/// <summary>Draft per side for a height along the draw, by every table held.</summary>
public static class DraftLookup
{
    private static readonly LookupInput _height = new("HEIGHT", "Height of the surface along the draw");

    private static readonly (DraftProcess Process, string Name)[] _processes =
    [
        (DraftProcess.SandHandMoulded, "outside, sand moulded by hand"),
        (DraftProcess.SandMachineOrShell, "outside, sand by machine or shell"),
        (DraftProcess.Investment, "outside, investment casting"),
    ];

    public static Lookup Entry { get; } = new("draft", "Draft per side for a height, by every table held", "draft 12", [_height], Find);

    private static Checked<LookupAnswer> Find(LookupRequest request)
    {
        Length? height = request.Size(_height);
        LookupRow[] rows = [];
        // The table that reaches highest sets the range.
        if (height is { } h && request.Take(DraftByPatternMaterial.Wood(h), out _))
            rows = [.. Rows(h)];
        return request.Answer(() => new LookupAnswer("Draft per side for a height of " + ZoneRows.Both(height!.Value), [.. rows]));
    }

    private static IEnumerable<LookupRow> Rows(Length height)
    {
        foreach ((DraftProcess process, string name) in _processes)
        {
            if (DraftByHeight.External(process, height) is { IsGiven: true } angle)
                yield return LookupRow.From(DraftByHeight.Source, name, LookupValue.Turn(angle.Value), "fine grade");
        }

        foreach ((string pattern, Answer<DraftPair> pair) in ((string, Answer<DraftPair>)[])
            [("wooden pattern", DraftByPatternMaterial.Wood(height)), ("metal or plastic pattern", DraftByPatternMaterial.MetalOrPlastic(height))])
        {
            if (!pair.IsGiven)
                continue;
            yield return LookupRow.From(DraftByPatternMaterial.Source, pattern + ", outside", LookupValue.Turn(pair.Value.External));
            yield return LookupRow.From(DraftByPatternMaterial.Source, pattern + ", inside", LookupValue.Turn(pair.Value.Internal));
        }

        foreach (DraftRange range in DraftRanges.All.Where(r => height.Millimetres > r.OverMm && height.Millimetres <= r.UpToMm))
        {
            yield return LookupRow.From(
                DraftRanges.Source, Certainty.Thin, range.Feature + ", " + range.Surface,
                LookupValue.TurnRange(Angle.FromDegrees(range.LeastDegrees), Angle.FromDegrees(range.MostDegrees)), range.Kind);
        }
    }
}
