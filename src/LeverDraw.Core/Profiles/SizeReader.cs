using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Units;

namespace LeverDraw.Profiles;

/// <summary>Reads sizes: a number, text with a unit, or an inline table with a fit or limits.</summary>
internal sealed class SizeReader(LengthUnit unit, FileFaults faults)
{
    private static readonly ImmutableArray<string> Keys = ["size", "fit", "plus", "minus", "min", "max"];

    public SizeValue? Read(SizeField field, RawValue raw)
    {
        if (raw is RawInline inline)
            return ReadInline(field, inline);
        return ReadNominal(field, raw) is { } nominal ? new SizeValue(nominal) : null;
    }

    private Length? ReadNominal(SizeField field, RawValue raw) =>
        ReadLength(field, field.Name, raw) is { } nominal && InRange(field, raw.Span, nominal) ? nominal : null;

    private Length? ReadLength(SizeField field, string name, RawValue raw)
    {
        switch (raw)
        {
            case RawNumber number when double.IsFinite(number.Value) && Math.Abs(number.Value) < 1e9:
                return unit == LengthUnit.Inch ? Length.FromInches(number.Value) : Length.FromMillimetres(number.Value);
            case RawNumber number when double.IsFinite(number.Value):
                faults.Add(DiagnosticCatalogue.BadSize, raw.Span, field.Name, FieldReader.Shown(faults.Source!.Slice(raw.Span)), "it is beyond all measure");
                return null;
            case RawNumber:
                faults.Add(DiagnosticCatalogue.NotFinite, raw.Span, field.Name, name);
                return null;
            case RawText text:
                return ReadText(field, name, text);
            default:
                faults.Add(DiagnosticCatalogue.WrongType, raw.Span, field.Name, name, "a size", raw.Words, FieldWords.Sample(field));
                return null;
        }
    }

    private Length? ReadText(SizeField field, string name, RawText text)
    {
        TextResult<Length> length = LengthText.Parse(text.Value, unit);
        if (length.Ok && Math.Abs(length.Value.Millimetres) < 1e9)
            return length.Value;
        if (!length.Ok && AngleText.Parse(text.Value) is { Ok: true, StatesUnit: true })
            faults.Add(DiagnosticCatalogue.WrongUnit, text.Span, field.Name, name, "a size", text.Value, "an angle", "3.6 or \"9/16 in\"");
        else
            faults.Add(DiagnosticCatalogue.BadSize, text.Span, field.Name, FieldReader.Shown(text.Value), length.Fault?.Reason ?? "it is beyond all measure");
        return null;
    }

    private SizeValue? ReadInline(SizeField field, RawInline inline)
    {
        Dictionary<string, RawValue> given = new(StringComparer.Ordinal);
        bool good = true;
        foreach (RawEntry member in inline.Members)
        {
            string key = string.Join('.', member.Path);
            if (!Keys.Contains(key))
            {
                string? near = NearestName.Of(key, Keys);
                faults.AddWithHint(DiagnosticCatalogue.BadTolerance, member.KeySpan, field.Name, near is null ? null : "Did you mean '" + near + "'?",
                    field.Name, "'" + FieldReader.Shown(key) + "' is not known here");
                good = false;
            }
            else if (member.Value is null)
                good = false;
            else if (!given.TryAdd(key, member.Value))
            {
                Bad(field, member.KeySpan, "'" + key + "' is given twice");
                good = false;
            }
        }
        string shape = string.Join(' ', Keys.Where(given.ContainsKey));
        if (!good)
            return null;
        return shape switch
        {
            "size" => ReadNominal(field, given["size"]) is { } nominal ? new SizeValue(nominal) : null,
            "size fit" => WithFit(field, given),
            "size plus minus" => WithDeviations(field, given),
            "min max" or "size min max" => WithLimits(field, given, inline),
            "size plus" => Bad(field, inline.Span, "'minus' is missing; write minus = 0 if there is none"),
            "size minus" => Bad(field, inline.Span, "'plus' is missing; write plus = 0 if there is none"),
            "min" or "size min" => Bad(field, inline.Span, "'max' is missing"),
            "max" or "size max" => Bad(field, inline.Span, "'min' is missing"),
            "" => Bad(field, inline.Span, "it is empty"),
            "fit" or "plus" or "minus" or "plus minus" => Bad(field, inline.Span, "'size' is missing"),
            _ => Bad(field, inline.Span, "'" + shape.Replace(" ", "', '", StringComparison.Ordinal) + "' do not go together"),
        };
    }

    private SizeValue? WithFit(SizeField field, Dictionary<string, RawValue> given)
    {
        Length? size = ReadNominal(field, given["size"]);
        if (given["fit"] is not RawText code)
        {
            faults.Add(DiagnosticCatalogue.WrongType, given["fit"].Span, field.Name, field.Name + "'s fit", "text", given["fit"].Words, "\"H8\"");
            return null;
        }
        if (ZoneCode.Fault(code.Value) is { } fault)
        {
            faults.Add(DiagnosticCatalogue.BadZoneCode, code.Span, field.Name, FieldReader.Shown(code.Value), fault.Reason);
            return null;
        }
        return size is { } nominal ? new SizeValue(nominal, new ZoneTolerance(code.Value)) : null;
    }

    private SizeValue? WithDeviations(SizeField field, Dictionary<string, RawValue> given)
    {
        Length? size = ReadNominal(field, given["size"]);
        Length? plus = ReadLength(field, "plus", given["plus"]);
        Length? minus = ReadLength(field, "minus", given["minus"]);
        return size is null || plus is null || minus is null ? null : Toleranced(field, given["plus"].Span, size.Value, plus.Value, -minus.Value);
    }

    private SizeValue? WithLimits(SizeField field, Dictionary<string, RawValue> given, RawInline inline)
    {
        Length? min = ReadLength(field, "min", given["min"]);
        Length? max = ReadLength(field, "max", given["max"]);
        bool stated = given.TryGetValue("size", out RawValue? size);
        Length? nominal = stated ? ReadNominal(field, size!) : min is null || max is null ? null : (min.Value + max.Value) / 2;
        if (min is null || max is null || nominal is null)
            return null;
        // The mean stands in for a size that is not stated.
        return stated || InRange(field, inline.Span, nominal.Value)
            ? Toleranced(field, given["max"].Span, nominal.Value, max.Value - nominal.Value, min.Value - nominal.Value)
            : null;
    }

    private SizeValue? Toleranced(SizeField field, TextSpan span, Length nominal, Length upper, Length lower)
    {
        if (upper <= lower)
            return Bad(field, span, "the upper limit must be above the lower");
        if (nominal > Length.Zero && nominal + lower <= Length.Zero)
            return Bad(field, span, "the lower limit is not above zero");
        if (nominal > Length.Zero && upper > nominal)
            return Bad(field, span, "the tolerance is larger than the size");
        return new SizeValue(nominal, new DeviationTolerance(upper, lower));
    }

    private bool InRange(SizeField field, TextSpan span, Length size)
    {
        // A billionth of a millimetre is the rounding of an inch value, not the user's doing.
        if (size.Millimetres >= field.MinMillimetres - 1e-9 && size.Millimetres <= field.MaxMillimetres + 1e-9)
            return true;
        faults.Add(DiagnosticCatalogue.OutOfRange, span, field.Name, field.Name,
            LengthText.WithUnit(size, unit, FieldWords.Decimals(unit)),
            FieldWords.RangeEnd(field.MinMillimetres, unit, up: true),
            FieldWords.RangeEnd(field.MaxMillimetres, unit, up: false),
            unit.Word());
        return false;
    }

    private SizeValue? Bad(SizeField field, TextSpan span, string reason)
    {
        faults.Add(DiagnosticCatalogue.BadTolerance, span, field.Name, field.Name, reason);
        return null;
    }
}
