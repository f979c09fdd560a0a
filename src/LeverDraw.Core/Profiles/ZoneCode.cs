using LeverDraw.Units;

namespace LeverDraw.Profiles;

/// <summary>How a tolerance zone's code is written: a letter or two of one case and a grade (ISO 286-1: grades 01, 0, 1 to 18; the letters i, l, o, q, w are not used). What it means is the tables' matter.</summary>
internal static class ZoneCode
{
    /// <summary>Why the code is not written like one, or null.</summary>
    public static TextFault? Fault(string code)
    {
        int letters = 0;
        while (letters < code.Length && char.IsAsciiLetter(code[letters]))
            letters++;
        if (code.Length == 0)
            return new TextFault("it is empty", 0);
        if (letters == 0)
            return new TextFault("it must begin with a letter", 0);
        if (code.Contains('/', StringComparison.Ordinal))
            return new TextFault("one size takes one zone, not a pair", code.IndexOf('/', StringComparison.Ordinal));
        string letter = code[..letters];
        if (!Known(letter.ToLowerInvariant()))
            return new TextFault("there is no letter '" + (letters > 8 ? letter[..8] + "…" : letter) + "'", 0);
        if (letter.Any(char.IsAsciiLetterUpper) && letter.Any(char.IsAsciiLetterLower))
            return new TextFault("capitals are for holes, small letters for shafts; do not mix them", 0);
        string grade = code[letters..];
        if (grade.Length == 0)
            return new TextFault("the grade is missing", letters);
        bool good = grade is "01" or "0" || (grade.Length <= 2 && grade[0] is >= '1' and <= '9' && grade.All(char.IsAsciiDigit)
            && (grade.Length == 1 || (grade[0] == '1' && grade[1] <= '8')));
        return good ? null : new TextFault("the grade must be 01, 0 or from 1 to 18", letters);
    }

    private static bool Known(string letter) => letter.Length switch
    {
        1 => !"iloqw".Contains(letter, StringComparison.Ordinal),
        2 => letter is "cd" or "ef" or "fg" or "js" or "za" or "zb" or "zc",
        _ => false,
    };
}
