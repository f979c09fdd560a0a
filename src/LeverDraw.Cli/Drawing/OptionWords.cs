using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using LeverDraw.Cli.Commands;

namespace LeverDraw.Cli.Drawing;

/// <summary>Reads options that are words out of a list; a word that is none becomes a fault, with the nearest good one.</summary>
internal sealed class OptionWords(ParseResult parse, List<UsageFault> faults)
{
    public string Text(Option<string> option)
    {
        string text = parse.GetValue(option) ?? "";
        if (string.IsNullOrWhiteSpace(text))
            faults.Add(new UsageFault($"{option.Name} is empty.", $"Write {option.Name} {option.HelpName}."));
        return text;
    }

    public bool IsUnasked(Option option) => parse.GetResult(option) is null or { Implicit: true };

    /// <summary>The value that belongs to the word; the first one after a fault.</summary>
    public T One<T>(Option<string> option, params ReadOnlySpan<(string Word, T Value)> known)
    {
        string word = (parse.GetValue(option) ?? "").Trim();
        foreach ((string good, T value) in known)
        {
            if (string.Equals(good, word, StringComparison.OrdinalIgnoreCase))
                return value;
        }

        string[] names = new string[known.Length];
        for (int i = 0; i < names.Length; i++)
            names[i] = known[i].Word;
        Unknown(option, word, names);
        return known[0].Value;
    }

    /// <summary>Words with commas between, each once, in the order known.</summary>
    public ImmutableArray<string> Several(Option<string> option, ImmutableArray<string> known)
    {
        HashSet<string> asked = new(StringComparer.OrdinalIgnoreCase);
        foreach (string word in (parse.GetValue(option) ?? "").Split(',', StringSplitOptions.TrimEntries))
        {
            if (known.Contains(word, StringComparer.OrdinalIgnoreCase))
                asked.Add(word);
            else
                Unknown(option, word, known);
        }

        return [.. known.Where(asked.Contains)];
    }

    public int Whole(Option<string> option, int least, int most)
    {
        string word = parse.GetValue(option) ?? "";
        if (int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= least && number <= most)
            return number;
        faults.Add(new UsageFault(
            $"'{word}' is no value for {option.Name}.",
            string.Create(CultureInfo.InvariantCulture, $"Take a whole number from {least} to {most}.")));
        return least;
    }

    private void Unknown(Option<string> option, string word, IEnumerable<string> known) =>
        faults.Add(new UsageFault($"'{word}' is no value for {option.Name}.", Names.DidYouMean(word, known)));
}
