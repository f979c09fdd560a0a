using LeverDraw.Diagnostics;

namespace LeverDraw.Tests.Diagnostics;

public class NearestNameTests
{
    [Theory]
    [InlineData("thikness", "thickness")]
    [InlineData("THICKNESS", "thickness")]
    [InlineData("tihckness", "thickness")]
    [InlineData("diametre", "diameter")]
    [InlineData("end-form", "end_form")]
    [InlineData("zzzz", null)]
    [InlineData("", null)]
    public void Of_Misspelling_GivesTheNearest(string wrong, string? expected) =>
        Assert.Equal(expected, NearestName.Of(wrong, ["diameter", "thickness", "end_form"]));

    // Hand-counted: kitten, sitten, sittin, sitting.
    [Theory]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("ab", "ba", 1)]
    [InlineData("", "abc", 3)]
    [InlineData("same", "same", 0)]
    public void Distance_HandCounted_Agrees(string a, string b, int expected)
    {
        Assert.Equal(expected, NearestName.Distance(a, b));
        Assert.Equal(expected, NearestName.Distance(b, a));
    }

    [Fact]
    public void Of_MegabyteName_IsNotCompared() => Assert.Null(NearestName.Of(new string('a', 1_000_000), [new string('a', 50)]));

    [Fact]
    public void WordLists_OneTwoThree_ReadLikeEnglish()
    {
        Assert.Equal("'a'", WordList.And("a"));
        Assert.Equal("'a' and 'b'", WordList.And("a", "b"));
        Assert.Equal("a, b or c", WordList.Or("a", "b", "c"));
    }
}
