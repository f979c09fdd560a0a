namespace LeverDraw.Diagnostics;

/// <summary>Names strung together for a message.</summary>
public static class WordList
{
    /// <summary>Quoted: <c>'a'</c>, <c>'a' and 'b'</c>, <c>'a', 'b' and 'c'</c>.</summary>
    public static string And(params ReadOnlySpan<string> names) => Join(names, "and", quoted: true);

    /// <summary>Bare: <c>a</c>, <c>a or b</c>, <c>a, b or c</c>.</summary>
    public static string Or(params ReadOnlySpan<string> words) => Join(words, "or", quoted: false);

    private static string Join(ReadOnlySpan<string> words, string last, bool quoted)
    {
        string text = "";
        for (int i = 0; i < words.Length; i++)
        {
            string word = quoted ? "'" + words[i] + "'" : words[i];
            text += i == 0 ? word : i == words.Length - 1 ? " " + last + " " + word : ", " + word;
        }
        return text;
    }
}
