using LeverDraw.Diagnostics;

namespace LeverDraw.Cli.Reporting;

/// <summary>Colour for terminals (ECMA-48 select graphic rendition); plain text stays as it is.</summary>
internal static class Paint
{
    private const string Off = "\e[0m", Red = "\e[1;31m", Yellow = "\e[1;33m", Blue = "\e[1;34m", Faint = "\e[2m";

    public static string Error(string text, bool colour) => With(Red, text, colour);

    public static string Of(Severity severity, string text, bool colour) => With(
        severity switch
        {
            Severity.Error => Red,
            Severity.Warning => Yellow,
            _ => Blue,
        },
        text,
        colour);

    public static string Quiet(string text, bool colour) => With(Faint, text, colour);

    private static string With(string code, string text, bool colour) => colour ? code + text + Off : text;
}
