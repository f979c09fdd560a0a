using LeverDraw.Comparison;

namespace LeverDraw.Cli.Comparing;

/// <summary>The letters variants go by: A to Z, then A1, B1 and so on.</summary>
internal static class CompareLetters
{
    public static string Of(int index) => (char)('A' + (index % 26)) + (index < 26 ? "" : FormattableString.Invariant($"{index / 26}"));

    public static string Matters(ComparedRow row) => row.Matters is { } matter ? matter.ToString().ToLowerInvariant() : "";
}
