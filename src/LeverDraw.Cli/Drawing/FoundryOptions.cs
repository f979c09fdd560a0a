using System.Collections.Immutable;
using System.CommandLine;
using LeverDraw.Cli.Commands;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Profiles;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Cli.Drawing;

/// <summary>Options that choose metal, process and contraction before the profile's own.</summary>
internal sealed class FoundryOptions
{
    private const string AsProfile = "profile";

    private readonly Option<string> metal = Arguments.Word("--metal", "Metal that is cast", string.Join('|', FoundryMetal.All.Select(m => m.Word)), AsProfile);
    private readonly Option<string> process = Arguments.Word("--process", "Way of moulding", string.Join('|', MouldingProcess.All.Select(p => p.Word)), AsProfile);
    private readonly Option<string> contraction = Arguments.Word("--contraction", "Contraction as the foundry gives it: 1.6 %, 1 in 64, 3/16 in/ft or 16 mm/m", "RATE", AsProfile);
    private readonly Option<string> trial = Arguments.Word("--trial", "Sizes measured on a trial pattern and its casting, in mm or with a unit, one for all ways or one for each, with commas between", "[x=|n=|z=]PATTERN:CASTING", AsProfile);

    public void AddTo(Command command)
    {
        foreach (Option option in (Option[])[metal, process, contraction, trial])
            command.Options.Add(option);
    }

    public FoundryChoice Read(ParseResult parse, List<UsageFault> faults)
    {
        var words = new OptionWords(parse, faults);
        string rate = words.Text(contraction);
        if (rate != AsProfile && ContractionText.Parse(rate) is null)
            faults.Add(new UsageFault($"'{rate}' is no value for --contraction.", "Write it as \"1.6 %\", \"1 in 64\", \"3/16 in/ft\" or \"16 mm/m\", up to one part in thirty."));
        return new FoundryChoice(
            words.One(metal, [(AsProfile, null), .. FoundryMetal.All.Select(m => (m.Word, (FoundryMetal?)m))]),
            words.One(process, [(AsProfile, null), .. MouldingProcess.All.Select(p => (p.Word, (MouldingProcess?)p))]),
            rate == AsProfile ? null : rate,
            Trial(words.Text(trial), faults));
    }

    private static ImmutableDictionary<SizeField, Length> Trial(string text, List<UsageFault> faults)
    {
        var sizes = ImmutableDictionary<SizeField, Length>.Empty;
        if (text == AsProfile)
            return sizes;
        foreach (string part in text.Split(',', StringSplitOptions.TrimEntries))
        {
            (string axis, string pair) = part.IndexOf('=', StringComparison.Ordinal) is > 0 and var at ? (part[..at].Trim(), part[(at + 1)..]) : ("", part);
            string[] ends = pair.Split(':', StringSplitOptions.TrimEntries);
            (SizeField Pattern, SizeField Casting)[] fields = Fields(axis);
            if (ends.Length != 2 || fields.Length == 0 || Size(ends[0]) is not { } pattern || Size(ends[1]) is not { } casting)
            {
                faults.Add(new UsageFault($"'{part}' is no value for --trial.", "Write the pattern's size, a colon and the casting's, such as \"48.8:48.05\" or \"z=48.8:48.05,x=9.65:9.5\"."));
                continue;
            }

            foreach ((SizeField ofPattern, SizeField ofCasting) in fields)
                sizes = sizes.SetItem(ofPattern, pattern).SetItem(ofCasting, casting);
        }

        return sizes;
    }

    private static (SizeField Pattern, SizeField Casting)[] Fields(string axis) => axis switch
    {
        "" => [(CastingFields.TrialPatternX, CastingFields.TrialCastingX), (CastingFields.TrialPatternN, CastingFields.TrialCastingN), (CastingFields.TrialPatternZ, CastingFields.TrialCastingZ)],
        "x" => [(CastingFields.TrialPatternX, CastingFields.TrialCastingX)],
        "n" => [(CastingFields.TrialPatternN, CastingFields.TrialCastingN)],
        "z" => [(CastingFields.TrialPatternZ, CastingFields.TrialCastingZ)],
        _ => [],
    };

    private static Length? Size(string text) =>
        LengthText.Parse(text, LengthUnit.Millimetre) is { Ok: true } read && read.Value > Length.Zero ? read.Value : null;
}
