using LeverDraw.Diagnostics;
using LeverDraw.Profiles;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Units;

namespace LeverDraw.Specimens.Readings;

/// <summary>From a value's text to millimetres, degrees, a taper's rate or a word.</summary>
internal static class ReadingValue
{
    /// <summary>The number and the word; null with a fault told.</summary>
    public static (double Number, string? Word)? Read(Measurand measurand, string text, string unit, TextSpan span, FileFaults faults)
    {
        string whole = unit.Length == 0 ? text : text + " " + unit;
        return measurand.Kind switch
        {
            ReadingKind.Size => Size(measurand, whole, span, faults),
            ReadingKind.Angle => Degrees(measurand, whole, span, faults),
            ReadingKind.Taper => Rate(measurand, text, span, faults),
            _ => Seen(measurand, text, span, faults),
        };
    }

    private static (double, string?)? Size(Measurand measurand, string text, TextSpan span, FileFaults faults)
    {
        TextResult<Length> length = LengthText.Parse(text, LengthUnit.Inch);
        if (length.Ok && !length.StatesUnit && !text.Contains('/', StringComparison.Ordinal))
        {
            faults.Add(DiagnosticCatalogue.ReadingUnitMissing, span, measurand.Name, FieldReader.Shown(text));
            return null;
        }

        if (length.Ok)
            return InRange(measurand, length.Value.Millimetres, span, faults) ? (length.Value.Millimetres, null) : null;
        return Bad(measurand, text, text.Contains(',', StringComparison.Ordinal) ? "it has a decimal comma" : length.Fault!.Reason, "a size with its unit, such as 3.62 mm or 9/64 in", span, faults);
    }

    private static (double, string?)? Degrees(Measurand measurand, string text, TextSpan span, FileFaults faults)
    {
        TextResult<Angle> angle = AngleText.Parse(text);
        if (!angle.Ok)
            return Bad(measurand, text, angle.Fault!.Reason, "degrees, such as 40 deg", span, faults);
        return InRange(measurand, angle.Value.Degrees, span, faults) ? (angle.Value.Degrees, null) : null;
    }

    private static (double, string?)? Rate(Measurand measurand, string text, TextSpan span, FileFaults faults)
    {
        if (text == "tapered")
            return (Taper.InchPins.Rate, "tapered");
        TextResult<Taper> taper = TaperText.Parse(text);
        return taper.Ok ? (taper.Value.Rate, taper.Value.IsParallel ? "parallel" : "tapered") : Bad(measurand, text, taper.Fault!.Reason, "tapered, parallel, or a taper like 1:48", span, faults);
    }

    private static (double, string?)? Seen(Measurand measurand, string text, TextSpan span, FileFaults faults)
    {
        if (measurand.Words.IsEmpty || measurand.Words.Contains(text))
            return (0, text);
        string words = string.Join(", ", measurand.Words);
        string? near = NearestName.Of(text, measurand.Words);
        return Bad(measurand, text, "the words are " + words, near is null ? "one of: " + words : "'" + near + "', if that is meant", span, faults);
    }

    private static (double, string?)? Bad(Measurand measurand, string text, string reason, string how, TextSpan span, FileFaults faults)
    {
        faults.Add(DiagnosticCatalogue.ReadingNotUnderstood, span, measurand.Name, FieldReader.Shown(text), measurand.Name, reason, how);
        return null;
    }

    private static bool InRange(Measurand measurand, double value, TextSpan span, FileFaults faults)
    {
        if (value >= measurand.Least && value <= measurand.Most)
            return true;
        string fits = Slips.All.FirstOrDefault(s => value / s.Factor >= measurand.Least && value / s.Factor <= measurand.Most) is { Factor: > 0 } slip
            ? ": " + slip.Divided + ", " + measurand.Text(value / slip.Factor, 3) + ", would fit"
            : string.Empty;
        faults.Add(DiagnosticCatalogue.ReadingOutOfRange, span, measurand.Name, measurand.Name, measurand.Text(value, 3), measurand.Text(measurand.Least, 3), measurand.Text(measurand.Most, 3), fits);
        return false;
    }
}
