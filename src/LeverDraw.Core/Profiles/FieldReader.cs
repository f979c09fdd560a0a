using System.Globalization;
using System.Text;
using LeverDraw.Diagnostics;
using LeverDraw.Units;

namespace LeverDraw.Profiles;

/// <summary>Gives a raw value the meaning of its field: a <see cref="SizeValue"/>, <see cref="Angle"/>, <see cref="Length"/>, <see cref="Taper"/>, string or bool; or tells the fault and gives null.</summary>
internal sealed class FieldReader(LengthUnit unit, FileFaults faults)
{
    private readonly SizeReader sizes = new(unit, faults);

    public object? Read(FieldSpec field, RawValue raw) => (field, raw) switch
    {
        (SizeField size, RawNumber or RawText or RawInline) => sizes.Read(size, raw),
        (AngleField angle, RawNumber number) => InRange(angle, number.Span, number.Value),
        (AngleField angle, RawText text) => ReadAngle(angle, text),
        (RoughnessField rough, RawNumber number) => ReadRoughness(rough, number),
        (NumberField plain, RawNumber number) => ReadNumber(plain, number),
        (TaperField taper, RawText text) => ReadTaper(taper, text),
        (ChoiceField choice, RawText text) => ReadChoice(choice, text),
        (TextField { IsDate: true } date, RawText text) => ReadDate(date, text.Span, text.Value),
        (TextField { IsDate: true } date, RawDate text) => ReadDate(date, text.Span, text.Value),
        (TextField plain, RawText text) => ReadText(plain, text),
        (FlagField, RawFlag flag) => flag.Value,
        _ => WrongType(field, raw),
    };

    private object? WrongType(FieldSpec field, RawValue raw)
    {
        faults.Add(DiagnosticCatalogue.WrongType, raw.Span, field.Name, field.Name, FieldWords.Type(field), raw.Words, FieldWords.Sample(field));
        return null;
    }

    private object? ReadAngle(AngleField field, RawText text)
    {
        TextResult<Angle> angle = AngleText.Parse(text.Value);
        if (angle.Ok)
            return InRange(field, text.Span, angle.Value.Degrees);
        if (LengthText.Parse(text.Value, unit) is { Ok: true, StatesUnit: true })
            faults.Add(DiagnosticCatalogue.WrongUnit, text.Span, field.Name, field.Name, "an angle", text.Value, "a size", "40 or \"40 deg\"");
        else
            faults.Add(DiagnosticCatalogue.BadAngle, text.Span, field.Name, Shown(text.Value), angle.Fault!.Reason);
        return null;
    }

    private object? InRange(AngleField field, TextSpan span, double degrees)
    {
        if (!double.IsFinite(degrees))
        {
            faults.Add(DiagnosticCatalogue.NotFinite, span, field.Name, field.Name);
            return null;
        }
        // Degrees went through radians and back; the last bits of that trip are not the user's.
        if (degrees >= field.MinDegrees - 1e-9 && degrees <= field.MaxDegrees + 1e-9)
            return Angle.FromDegrees(degrees);
        faults.AddWithHint(DiagnosticCatalogue.OutOfRange, span, field.Name, "Angles are in degrees; check the decimal point.",
            field.Name, FieldWords.Degrees(degrees), FieldWords.Degrees(field.MinDegrees), FieldWords.Degrees(field.MaxDegrees), "deg");
        return null;
    }

    private object? ReadRoughness(RoughnessField field, RawNumber number)
    {
        if (!double.IsFinite(number.Value))
        {
            faults.Add(DiagnosticCatalogue.NotFinite, number.Span, field.Name, field.Name);
            return null;
        }

        if (number.Value >= 0 && number.Value <= field.MaxMicrometres)
            return Length.FromMillimetres(number.Value / 1000);
        faults.AddWithHint(DiagnosticCatalogue.OutOfRange, number.Span, field.Name, "Ra is in micrometres; 0 leaves the sign away.",
            field.Name, number.Value, 0, field.MaxMicrometres, "µm");
        return null;
    }

    private object? ReadNumber(NumberField field, RawNumber number)
    {
        if (!double.IsFinite(number.Value))
        {
            faults.Add(DiagnosticCatalogue.NotFinite, number.Span, field.Name, field.Name);
            return null;
        }

        if (number.Value >= field.Min && number.Value <= field.Max)
            return number.Value;
        faults.AddWithHint(DiagnosticCatalogue.OutOfRange, number.Span, field.Name, "It is a plain number; check the decimal point.",
            field.Name, number.Value, field.Min, field.Max, "plain numbers");
        return null;
    }

    private object? ReadTaper(TaperField field, RawText text)
    {
        TextResult<Taper> taper = TaperText.Parse(text.Value);
        if (taper.Ok)
            return taper.Value;
        faults.Add(DiagnosticCatalogue.BadTaper, text.Span, field.Name, Shown(text.Value), taper.Fault!.Reason);
        return null;
    }

    private object? ReadChoice(ChoiceField field, RawText text)
    {
        if (field.Choices.Contains(text.Value))
            return text.Value;
        string? near = NearestName.Of(text.Value, field.Choices);
        faults.AddWithHint(DiagnosticCatalogue.NotAChoice, text.Span, field.Name, near is null ? null : "Did you mean \"" + near + "\"?",
            field.Name, Shown(text.Value), string.Join(", ", field.Choices));
        return null;
    }

    private object? ReadDate(TextField field, TextSpan span, string value)
    {
        if (DateOnly.TryParseExact(value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _))
            return value;
        if (value.Length == 0 && field.IsOptional)
            return value;
        faults.Add(DiagnosticCatalogue.BadDate, span, field.Name, Shown(value));
        return null;
    }

    private object? ReadText(TextField field, RawText text)
    {
        int length = 0;
        foreach (Rune rune in text.Value.EnumerateRunes())
        {
            length++;
            if (Rune.GetUnicodeCategory(rune) is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator
                or UnicodeCategory.ParagraphSeparator or UnicodeCategory.OtherNotAssigned or UnicodeCategory.PrivateUse)
            {
                faults.Add(DiagnosticCatalogue.ControlCharacter, text.Span, field.Name, field.Name, "U+" + rune.Value.ToString("X4", CultureInfo.InvariantCulture));
                return null;
            }
        }
        if (length > field.MaxLength)
        {
            faults.Add(DiagnosticCatalogue.TextTooLong, text.Span, field.Name, field.Name, length, field.MaxLength);
            return null;
        }
        if (string.IsNullOrWhiteSpace(text.Value) && field.Default is not "")
        {
            faults.Add(DiagnosticCatalogue.EmptyText, text.Span, field.Name, field.Name);
            return null;
        }
        return text.Value;
    }

    internal static string Shown(string value) => value.Length <= 60 ? value : value[..59] + "…";
}
