using System.Text.RegularExpressions;

namespace LeverDraw.Tests.Cli;

/// <summary>A written command line as the words a shell would hand over: blanks part them, double quotes hold them together.</summary>
internal static partial class CommandWords
{
    public static string[] Split(string line) => [.. Word().Matches(line).Select(m => m.Value.Replace("\"", "", StringComparison.Ordinal))];

    [GeneratedRegex("(?:[^\\s\"]|\"[^\"]*\")+")]
    private static partial Regex Word();
}
