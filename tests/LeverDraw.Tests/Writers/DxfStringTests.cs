using LeverDraw.Writers.Dxf;

namespace LeverDraw.Tests.Writers;

public class DxfStringTests
{
    [Theory]
    [InlineData("⌀3.06 ±0.1 45°", "%%c3.06 %%p0.1 45%%d")]
    [InlineData("2 × 4", "2 x 4")]
    [InlineData("50 %", "50 %")]
    [InlineData("%%c", "%%037%%037c")]
    [InlineData("5%⌀", "5%%037%%c")]
    [InlineData("a^b", "a^ b")]
    [InlineData("a\tb", "a b")]
    [InlineData(@"a\b", @"a\b")]
    public void Line_PlainText_IsInItsDxfForm(string text, string expected) => Assert.Equal(expected, DxfString.Line(text, DxfEncoding.Ascii));

    [Fact]
    public void Paragraph_LinesAndBraces_AreEscaped() => Assert.Equal(@"a\Pb\{c\}\\", DxfString.Paragraph("a\nb{c}\\", DxfEncoding.Ascii));

    [Fact]
    public void Line_BeyondAscii_IsKeptOrEscaped()
    {
        Assert.Equal("Müller", DxfString.Line("Müller", DxfEncoding.Utf8));
        Assert.Equal(@"M\U+00FCller", DxfString.Line("Müller", DxfEncoding.Ascii));
        Assert.Equal("?", DxfString.Line("\U0001F600", DxfEncoding.Ascii));
    }

    [Theory]
    [InlineData("⌀ ° ± × −", false)]
    [InlineData("Müller", true)]
    [InlineData("plain ~", false)]
    public void NeedsUtf8_Text_OnlyWhenAFormIsMissing(string text, bool expected) => Assert.Equal(expected, DxfString.NeedsUtf8(text));
}
