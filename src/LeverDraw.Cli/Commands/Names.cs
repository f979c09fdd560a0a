using LeverDraw.Diagnostics;

namespace LeverDraw.Cli.Commands;

/// <summary>The next step after a word that is not known.</summary>
internal static class Names
{
    public static string DidYouMean(string wrong, params IEnumerable<string> known)
    {
        string[] all = [.. known];
        return NearestName.Of(wrong, all) is { } near
            ? $"Did you mean '{near}'?"
            : $"Known: {string.Join(", ", all)}.";
    }
}
