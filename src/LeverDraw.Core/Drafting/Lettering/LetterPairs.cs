namespace LeverDraw.Drafting.Lettering;

/// <summary>Pairs whose open sides meet, so that the full gap looks too wide; the gap between them is halved, as ISO 3098 allows. Figures are never drawn together.</summary>
internal static class LetterPairs
{
    public static bool IsClose(char left, char right) => left switch
    {
        'L' => right is 'T' or 'V' or 'W' or 'Y' or '\'' or '\u2019',
        'A' => right is 'T' or 'V' or 'W' or 'Y',
        'T' or 'V' or 'W' or 'Y' => right is 'A' or '.' or ',' or 'a' or 'e' or 'o' or 'c',
        'P' or 'F' => right is 'A' or '.' or ',',
        'r' or 'v' or 'w' or 'y' => right is '.' or ',',
        _ => false,
    };
}
