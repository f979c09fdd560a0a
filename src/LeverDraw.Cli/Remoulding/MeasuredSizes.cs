using LeverDraw.Cli.Commands;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Cli.Remoulding;

/// <summary>Reads <c>pads.thickness=2.8,arms.length=20.9</c>.</summary>
internal static class MeasuredSizes
{
    public static IReadOnlyDictionary<string, Length> Read(string text, List<UsageFault> faults)
    {
        string[] known = [.. LeverFields.All.OfType<SizeField>().Select(f => f.Name)];
        Dictionary<string, Length> sizes = new(StringComparer.Ordinal);
        foreach (string part in text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            string[] ends = part.Split('=', 2, StringSplitOptions.TrimEntries);
            if (ends.Length == 2 && known.Contains(ends[0], StringComparer.Ordinal) && LengthText.Parse(ends[1], LengthUnit.Millimetre) is { Ok: true } size && size.Value > Length.Zero)
                sizes[ends[0]] = size.Value;
            else
                faults.Add(new UsageFault($"'{part}' is no value for --measured.", ends.Length == 2 && !known.Contains(ends[0], StringComparer.Ordinal) ? Names.DidYouMean(ends[0], known) : "Write a field, an equals sign and a size above zero, such as pads.thickness=2.8."));
        }

        return sizes;
    }
}
