using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Lookups;

/// <summary>What is told of an inch taper pin.</summary>
internal static class InchTaperPinRows
{
    private static readonly Length _near = Length.FromMillimetres(1e-6);

    public static IEnumerable<LookupRow> Of(LookupRequest request, InchTaperPin pin, Length? length, Length? edge)
    {
        SizeLimits commercial = new(pin.LargeEnd - InchTaperPins.CommercialUnder, pin.LargeEnd + InchTaperPins.CommercialOver);
        yield return Pin(LargeEndHowSure(pin), "large end", LookupValue.Size(pin.LargeEnd));
        yield return Pin(Certainty.FromMemory, "large end, commercial class", LookupValue.Limits(commercial));
        yield return Pin(Certainty.FromMemory, "large end, precision class", LookupValue.Limits(new SizeLimits(pin.LargeEnd, pin.LargeEnd + InchTaperPins.PrecisionOver)));
        IEnumerable<LookupRow> tools = length is { } l ? AtLength(request, pin, l, commercial) : ListedDrills(pin);
        foreach (LookupRow row in tools)
            yield return row;
        if (TaperPinStepDrills.For(pin.Number) is { IsGiven: true } steps)
        {
            yield return LookupRow.From(TaperPinStepDrills.Source, "step drilling, first, through", LookupValue.Size(steps.Value.First));
            if (steps.Value.Second is { } second)
                yield return LookupRow.From(TaperPinStepDrills.Source, "step drilling, second", LookupValue.Size(second.Drill), "to a depth of " + LengthText.Both(second.Depth, 3, 4));
        }

        if (pin.StandardReamerLengths is { } standard)
            yield return Pin(Certainty.Mixed, "lengths, standard reamer", LookupValue.Range(standard.Shortest, standard.Longest));
        yield return Pin(Certainty.Mixed, "lengths, other", LookupValue.Range(pin.OtherLengths.Shortest, pin.OtherLengths.Longest));
        foreach (LookupRow row in Oversize(pin, edge))
            yield return row;
    }

    private static IEnumerable<LookupRow> AtLength(LookupRequest request, InchTaperPin pin, Length length, SizeLimits largeEnd)
    {
        Length shortest = pin.StandardReamerLengths?.Shortest ?? pin.OtherLengths.Shortest;
        Length longest = pin.OtherLengths.Longest;
        if (length < shortest - _near || length > longest + _near)
        {
            _ = request.Take(Answer<Length>.Refused(
                "pins " + pin.Number + " are given from " + LengthText.InchFraction(shortest) + " to " + LengthText.InchFraction(longest) + " in long, not " + LengthText.Both(length, 4, 4)), out _);
            yield break;
        }

        SizeLimits lengths = new(length - InchTaperPins.LengthPlusMinus, length + InchTaperPins.LengthPlusMinus);
        Length smallest = TaperPinChoice.SmallEnd(largeEnd.Min, lengths.Max, Taper.InchPins);
        Length largest = TaperPinChoice.SmallEnd(largeEnd.Max, lengths.Min, Taper.InchPins);
        yield return Pin(Certainty.Solid, "small end", LookupValue.Size(pin.SmallEnd(length)), "large end less length/48");
        yield return Pin(Certainty.FromMemory, "length", LookupValue.Limits(lengths));
        yield return Pin(Certainty.FromMemory, "small end, at worst", LookupValue.Range(smallest, largest), "limits of large end and length taken together");
        if (request.Take(TaperPinChoice.Drill(pin, length), out PinDrillChoice? drill))
        {
            string where = drill.FromTable ? "listed for this pin and length" : "not listed for this length: the nearest not above the small end";
            string over = drill.OverSmallEnd > _near ? "; " + LengthText.Both(drill.OverSmallEnd, 4, 4) + " over the small end, so the hole ends at drill size" : "";
            yield return LookupRow.From(drill.FromTable ? TaperPinDrills.Source : TwistDrills.Source, "drill " + drill.Drill.Name, LookupValue.Size(drill.Drill.Diameter), where + over);
        }

        Answer<TaperPinReamer> reamer = TaperPinChoice.Reamer(pin, length);
        yield return reamer.IsGiven
            ? LookupRow.From(
                TaperPinReamers.Source, "reamer No. " + reamer.Value.Number, LookupValue.Range(reamer.Value.SmallEnd, reamer.Value.LargeEnd),
                "flutes " + LengthText.Both(reamer.Value.FluteLength, 4, 4) + "; reaches over the whole pin")
            : LookupRow.From(TaperPinReamers.Source, "reamer", LookupValue.Word("none"), reamer.Refusal!);
    }

    private static IEnumerable<LookupRow> ListedDrills(InchTaperPin pin) =>
        TaperPinDrills.All.Where(row => row.PinNumber == pin.Number).Select(row => LookupRow.From(
            TaperPinDrills.Source, "drill " + row.Drill, LookupValue.Size(TwistDrills.Named(row.Drill).Value.Diameter), "for a pin " + LengthText.InchFraction(row.PinLength) + " in long"));

    private static IEnumerable<LookupRow> Oversize(InchTaperPin pin, Length? edge)
    {
        if (InchTaperPins.Above(pin) is not { IsGiven: true } next)
            yield break;
        yield return Pin(LargeEndHowSure(next.Value), "next oversize, No. " + next.Value.Number, LookupValue.Size(next.Value.LargeEnd), "large end");
        if (edge is { } distance && TaperPinChoice.NextOversize(pin, distance) is { IsGiven: true } oversize)
        {
            yield return LookupRow.From(
                TaperPinFitting.Source, "wall left by it", LookupValue.Size(oversize.Value.WallLeft),
                (oversize.Value.WallIsEnough ? "at least" : "LESS than") + " half the hole's diameter (common practice)");
        }
    }

    /// <summary>Two sources to No. 4, one above.</summary>
    private static Certainty LargeEndHowSure(InchTaperPin pin) => pin.LargeEnd.Inches <= 0.2501 ? Certainty.Solid : Certainty.Mixed;

    private static LookupRow Pin(Certainty howSure, string name, LookupValue value, string note = "") =>
        LookupRow.From(InchTaperPins.Source, howSure, name, value, note);
}
