using LeverDraw.Standards;

namespace LeverDraw.Tests.Standards;

public sealed class AnswerTests
{
    [Fact]
    public void Value_OfARefusal_Throws()
    {
        Answer<string> refused = Answer<string>.Refused("sizes from 1 to 2");
        Assert.Throws<InvalidOperationException>(() => refused.Value);
        Assert.Equal("sizes from 1 to 2", refused.Map(text => text.Length).Refusal);
        Assert.Equal("sizes from 1 to 2", refused.Then(text => Answer<int>.Given(text.Length)).Refusal);
    }

    [Fact]
    public void Then_OfAValue_CanRefuse()
    {
        Assert.Equal(3, Answer<string>.Given("abc").Map(text => text.Length).Value);
        Assert.False(Answer<string>.Given("abc").Then(_ => Answer<int>.Refused("no")).IsGiven);
    }
}
