using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Profiles;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Units;

namespace LeverDraw.Specimens.Reconstruction;

/// <summary>The reconstructed part as a profile, every size with what it rests on beside it.</summary>
public static class ProfileWriting
{
    private const int Decimals = 2, FineDecimals = 3;

    /// <param name="name">The variant's name.</param>
    /// <param name="like">Path, from the new file's folder, of the profile that gives what was not read; null for none.</param>
    public static string Text(Reconstruction found, string name, string? like)
    {
        StringBuilder text = new();
        text.Append("# Reconstructed from ").Append(Count(found.Specimens.Length)).Append(found.Specimens.Length == 1 ? " survivor" : " survivors").Append(": ").Append(string.Join(", ", found.Specimens.Select(Plain))).Append(".\n");
        text.Append("# Each size is an estimate; its 95 % interval stands beside it. None was snapped to a sensible size.\n");
        text.Append("kind = \"").Append(found.Kind.Name).Append("\"\nname = ").Append(Quoted(name)).Append('\n');
        if (like is not null)
            text.Append("extends = ").Append(Quoted(like)).Append("  # what was not read comes from there\n");
        text.Append("units = \"mm\"\n");
        if (like is null)
            text.Append("\n[material]\nname = \"To be decided\"\n");
        foreach (IGrouping<string, (string Key, string Line)> table in Lines(found).GroupBy(l => l.Key.Split('.')[0]))
        {
            text.Append("\n[").Append(table.Key).Append("]\n");
            foreach ((_, string line) in table)
                text.Append(line).Append('\n');
        }

        return text.ToString();
    }

    private static IEnumerable<(string Key, string Line)> Lines(Reconstruction found)
    {
        Dictionary<string, string> words = found.Forms.Where(f => f.Measurand.Kind == ReadingKind.Word).ToDictionary(f => f.Measurand.Name, f => f.Word, StringComparer.Ordinal);
        bool pin = found.Kind.Name == Parts.PartKinds.Pin.Name;
        if (pin)
        {
            words[PinFields.Series.Name] = PinFields.Free;
            yield return (PinFields.Series.Name, "series = \"free\"");
        }

        foreach (FieldSpec field in found.Kind.Fields.Fields)
        {
            string key = field.Name.Split('.')[1];
            if (field.OnlyWhen is { } when && !when.Values.Contains(words.GetValueOrDefault(when.Choice.Name, when.Choice.Default ?? string.Empty)))
                continue;
            if (field is TaperField && (pin || found.Forms.Any(f => f.Measurand.Field == field)))
                yield return (field.Name, key + " = \"" + (found.Taper.IsParallel ? "parallel" : TaperText.Format(found.Taper)) + "\"");
            else if (field is ChoiceField or TextField && field != PinFields.Series && words.TryGetValue(field.Name, out string? word))
                yield return (field.Name, key + " = " + Quoted(word) + Of(found.Forms.First(f => f.Measurand.Name == field.Name)));
            else if (found.Sizes.FirstOrDefault(s => s.Estimate.Measurand.Field == field) is { } size)
                yield return (field.Name, key + " = " + Number(size.Estimate, size.Estimate.Value) + "  # " + Basis(size));
        }
    }

    private static string Of(SeenForm form) => form.Agreeing == form.Specimens ? string.Empty : "  # " + Count(form.Agreeing) + " of " + Count(form.Specimens);

    private static string Basis(ReconstructedSize size)
    {
        SizeEstimate e = size.Estimate;
        string text = Rule(e) + "; " + Number(e, e.From) + " to " + Number(e, e.To) + (Likeliest(e) is { Length: > 0 } likeliest ? "; likeliest " + likeliest : string.Empty);
        return e.Measurand.Kind != ReadingKind.Size ? text : text + "; " + Sensible(size);
    }

    /// <summary>The likeliest value where the rule took another; else empty.</summary>
    public static string Likeliest(SizeEstimate estimate) => estimate.Likeliest is { } value && estimate.Rule != EstimateRule.Likeliest ? Number(estimate, value) : string.Empty;

    /// <summary>The rule and the count, such as <c>extreme of 3</c>.</summary>
    public static string Rule(SizeEstimate estimate)
    {
        string n = Count(estimate.Specimens);
        string text = estimate.Rule switch
        {
            EstimateRule.Witness => "witness, median of " + n,
            EstimateRule.Median => "median of " + n,
            EstimateRule.Extreme => "extreme of " + n,
            EstimateRule.SecondExtreme => "second extreme of " + n,
            _ => "likeliest of " + n,
        };
        return text + (estimate.IsTied ? ", from tied sizes" : estimate.IsAdjusted ? ", adjusted" : string.Empty);
    }

    /// <summary>The sensible sizes inside the interval, or that none or too many fit.</summary>
    public static string Sensible(ReconstructedSize size) => size.Sensible.Length switch
    {
        0 => "no sensible size fits",
        > SensibleSizes.Most => Count(size.Sensible.Length) + " sensible sizes fit",
        _ => "fits " + string.Join(", ", size.Sensible.Select(s => s.Name)),
    };

    /// <summary>Fine sizes get a third decimal.</summary>
    public static string Number(SizeEstimate estimate, double value) => estimate.Measurand.Kind == ReadingKind.Angle
        ? LengthText.Millimetres(Length.FromMillimetres(value), 1)
        : LengthText.Millimetres(Length.FromMillimetres(value), estimate.To - estimate.From < 0.2 ? FineDecimals : Decimals);

    private static string Count(int n) => n.ToString(CultureInfo.InvariantCulture);

    private static string Plain(string text) => new([.. text.Select(c => char.IsControl(c) ? ' ' : c)]);

    private static string Quoted(string text) => "\"" + Plain(text).Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal) + "\"";
}
