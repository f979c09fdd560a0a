namespace LeverDraw.Cli.Lookups;

/// <summary>Lets a size after <c>tables</c> stand without quotes: <c>0.109 in</c>, <c>1 3/16 in</c> reach the program as two or three words.</summary>
internal static class LooseUnits
{
    /// <summary>The words with each unit joined to the number before it; those of other commands as they are.</summary>
    public static string[] Join(string[] args)
    {
        if (args is not ["tables", ..])
            return args;
        List<string> words = [];
        foreach (string word in args)
        {
            if (word is not ("in" or "mm") || !IsNumber(words[^1]))
            {
                words.Add(word);
                continue;
            }

            words[^1] += " " + word;
            // A whole number before a fraction belongs to it: no place is followed by a fraction of its own.
            if (words.Count > 2 && words[^1].Contains('/', StringComparison.Ordinal) && words[^2].All(char.IsAsciiDigit))
            {
                words[^2] += " " + words[^1];
                words.RemoveAt(words.Count - 1);
            }
        }

        return [.. words];
    }

    private static bool IsNumber(string word) => word.Length > 0 && char.IsAsciiDigit(word[^1]) && word.All(c => char.IsAsciiDigit(c) || c is '.' or '/' or '-');
}
