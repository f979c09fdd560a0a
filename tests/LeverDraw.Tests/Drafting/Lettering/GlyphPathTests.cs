using System.Collections.Immutable;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Lettering;

public class GlyphPathTests
{
    [Fact]
    public void Parse_ArcAfterLine_IsTheTangentQuarterCircle()
    {
        ImmutableArray<Edge> stroke = Assert.Single(GlyphPath.Parse("M 0 10 L 0 2 T 2 0 K 5 0"));
        ArcEdge arc = Assert.IsType<ArcEdge>(stroke[1]);
        Assert.Equal(0.2, arc.Radius, 12);
        Assert.Equal(0.2, arc.Centre.X, 12);
        Assert.Equal(0.2, arc.Centre.Y, 12);
        Assert.Equal(Math.PI / 2, arc.Sweep, 12);
    }

    [Fact]
    public void Parse_TurnTowards_LeavesTheArcTangentially()
    {
        ImmutableArray<Edge> stroke = Assert.Single(GlyphPath.Parse("M 5 8 D 0 -1 A -3 0 0"));
        Assert.Equal(2, stroke.Length);
        Assert.True((stroke[0].TangentAt(1) - stroke[1].TangentAt(0)).Length < 1e-9);
        Assert.Equal(0.3, Assert.IsType<ArcEdge>(stroke[0]).Radius, 12);
        Assert.Equal(0, stroke[1].End.X, 12);
    }

    [Theory]
    [InlineData("M 0 0 L 0 5 K 1 9")]
    [InlineData("M 0 0 L 0 5 K 0 2")]
    public void Parse_SmoothLineWithCorner_Throws(string path) =>
        Assert.Throws<InvalidOperationException>(() => GlyphPath.Parse(path));

    [Fact]
    public void Parse_UnknownCommand_Throws() => Assert.Throws<FormatException>(() => GlyphPath.Parse("M 0 0 Q 1 1"));
}
