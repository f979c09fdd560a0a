using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Tests.Tolerancing;

public sealed class LimitsTests
{
    [Fact]
    public void About_Nominal_AddsBothDeviations()
    {
        SizeLimits limits = new LimitDeviations(Mm(-0.02), Mm(0.05)).About(Mm(3));
        Assert.Equal(2.98, limits.Min.Millimetres, 12);
        Assert.Equal(3.05, limits.Max.Millimetres, 12);
        Assert.True(limits.Contains(limits.Max));
        Assert.False(limits.Contains(Mm(3.0501)));
        Assert.Equal(-0.02, limits.From(Mm(3)).Lower.Millimetres, 12);
    }

    [Fact]
    public void Constructors_CrossedLimits_Throw()
    {
        Assert.Throws<ArgumentException>(() => new LimitDeviations(Mm(0.1), Mm(0)));
        Assert.Throws<ArgumentException>(() => new SizeLimits(Mm(3), Mm(2.9)));
        Assert.Throws<ArgumentException>(() => LimitDeviations.PlusMinus(Mm(-0.1)));
    }

    [Fact]
    public void IsSymmetric_PlusMinusOnly()
    {
        Assert.True(LimitDeviations.PlusMinus(Mm(0.1)).IsSymmetric);
        Assert.False(new LimitDeviations(Mm(-0.1), Mm(0.2)).IsSymmetric);
    }

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
