using LeverDraw.Comparison;

namespace LeverDraw.Cli.Comparing;

/// <summary>The letters variants go by: A to Z, then A1, B1 and so on.</summary>
internal static class CompareLetters
{
    public static string Of(int index) => (char)('A' + (index % 26)) + (index < 26 ? "" : FormattableString.Invariant($"{index / 26}"));

    public static string Matters(ComparedRow row) => row.Matters is { } matter ? matter.ToString().ToLowerInvariant() : "";

    /// <summary>The unit a row's numbers are in, or nothing for words.</summary>
    public static string Unit(ComparedRow row, LeverDraw.Units.LengthUnit unit) => row.Values.FirstOrDefault(v => v is not null) switch
    {
        ComparedSize => unit == LeverDraw.Units.LengthUnit.Inch ? "in" : "mm",
        ComparedFigure figure => figure.Unit,
        ComparedRoughness => "µm",
        _ => "",
    };
}
