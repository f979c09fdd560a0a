using LeverDraw.Diagnostics;

namespace LeverDraw.Tests.Diagnostics;

public class DiagnosticTextTests
{
    private static Diagnostic At(int line, int column, int width, string message = "bad") =>
        new("LD203", Severity.Error, new SourcePosition("a.toml", line, column, width), null, message, "Mend it.");

    [Fact]
    public void Lines_PlaceInText_ShowLineAndCarets() =>
        Assert.Equal(
            ["a.toml:2:3: error LD203: bad", "  2 | é = 5", "    |   ^^^", "  Mend it."],
            DiagnosticText.Lines(At(2, 3, 3), "[x]\r\né = 5\r\n").ToArray());

    [Fact]
    public void Lines_WholeFile_LeaveOutPlaceAndLine() =>
        Assert.Equal(["a.toml: error LD203: bad", "  Mend it."], DiagnosticText.Lines(At(0, 0, 0), "[x]\n").ToArray());

    [Fact]
    public void Lines_NoSource_LeaveOutLine() =>
        Assert.Equal(["a.toml:1:1: error LD203: bad", "  Mend it."], DiagnosticText.Lines(At(1, 1, 1), null).ToArray());

    [Fact]
    public void Lines_LineAfterTheLast_LeaveOutLine() => Assert.Equal(2, DiagnosticText.Lines(At(9, 1, 1), "one\n").Length);

    [Fact]
    public void Lines_MegabyteLine_ShowWindowWithCaretUnderTheFault()
    {
        string text = new string('a', 500_000) + "X" + new string('b', 500_000);
        IReadOnlyList<string> lines = DiagnosticText.Lines(At(1, 500_001, 1), text);
        Assert.True(lines[1].Length < 120);
        Assert.Equal('X', lines[1][lines[2].IndexOf('^', StringComparison.Ordinal)]);
    }

    [Fact]
    public void Lines_TerminalControlCodes_AreNotPassedOn()
    {
        string all = string.Concat(DiagnosticText.Lines(At(1, 1, 1, "a\u001b[31m\u202e"), "\u001b[2J\n"));
        Assert.DoesNotContain('\u001b', all);
        Assert.DoesNotContain('\u202e', all);
    }

    [Theory]
    [InlineData(Severity.Note, "note")]
    [InlineData(Severity.Warning, "warning")]
    public void Headline_Severity_IsNamed(Severity severity, string word) =>
        Assert.Equal(word + " LD1: m", DiagnosticText.Headline(new Diagnostic("LD1", severity, null, null, "m", "")));
}
