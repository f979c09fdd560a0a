using LeverDraw.Drafting;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Annotations;

/// <summary>Where there is no room: arrows flip outside, the number moves beside, a leader comes last. Lettering 3.5, arrows 3.5 long.</summary>
public class SmallFeatureTests
{
    private static readonly PlacingContext Context = new("v", Transform2D.Identity, new Box2D(-20, -20, 20, 20), DraftingStyle.Large);

    [Fact]
    public void Wide_Size_HasArrowsInsideAndItsNumberBetween()
    {
        Candidate best = Best(20);
        AnnotationInk ink = best.Ink();
        // The tips are the first corners; backs lie between them.
        Assert.All(ink.Items.OfType<PlotFill>(), f => Assert.InRange(f.Corners[1].X, 0, 20));
        Assert.InRange(ink.Meaning!.TextMiddle.X, 5, 15);
        Assert.DoesNotContain(All(20), c => c.Strokes.Any(s => s.Kind == StrokeKind.Leader));
    }

    [Fact]
    public void Narrow_Size_HasArrowsOutsideAndItsNumberBeside()
    {
        AnnotationInk ink = Best(2).Ink();
        Assert.All(ink.Items.OfType<PlotFill>(), f => Assert.True(f.Corners[1].X is < 0 or > 2));
        Assert.True(ink.Meaning!.TextMiddle.X is < 0 or > 2);
    }

    [Fact]
    public void Narrow_Size_MayGoOnALeaderThatCostsMoreThanAnyPlaceOnItsTier()
    {
        Candidate[] onLeaders = [.. All(2).Where(c => c.Strokes.Any(s => s.Kind == StrokeKind.Leader) && c.Cost < PlacingCosts.Broken)];
        Assert.NotEmpty(onLeaders);
        Assert.All(onLeaders, c => Assert.True(c.Cost > Best(2).Cost + 10));
        AnnotationInk ink = onLeaders[0].Ink();
        // Two arrowheads of the dimension line; the leader ends on it without one.
        Assert.Equal(2, ink.Items.OfType<PlotFill>().Count());
        LineEdge[] lines = [.. ink.Items.OfType<PlotStroke>().Select(s => s.Edge).OfType<LineEdge>()];
        Point2D onLine = ink.Meaning!.Points[2] with { X = 1 };
        Assert.Contains(lines, l => l.From == onLine);
    }

    /// <summary>Its arrows have room between, its number has not: rather than from between the arrows, a leader leaves from the line's end, run on over one of them. Common practice, no source.</summary>
    [Fact]
    public void Number_WiderThanASizeWithItsArrowsInside_HadBetterHangOnTheLinesEnd()
    {
        Candidate[] onLeaders = [.. All(9).Where(c => c.Strokes.Any(s => s.Kind == StrokeKind.Leader) && c.Cost < PlacingCosts.Broken)];
        Candidate[] atEnd = [.. onLeaders.Where(c => c.Strokes.First(s => s.Kind == StrokeKind.Leader).A.X is < 0 or > 9)];
        Assert.NotEmpty(atEnd);
        Assert.All(atEnd, c => Assert.Equal(0, c.Blemish));
        Assert.All(onLeaders.Except(atEnd), c => Assert.True(c.Blemish > 0));
        // The line runs on by an arrow's length, and the leader with it.
        Assert.All(atEnd, c => Assert.Contains(c.Strokes, s => s.Kind == StrokeKind.DimensionLine && (s.A.X <= -3.5 || s.B.X >= 12.5)));
    }

    /// <summary>ISO 129-1: numbers are read from the bottom or from the right.</summary>
    [Fact]
    public void Numbers_InAnyDirection_ReadFromBottomOrRight()
    {
        for (int degrees = 0; degrees < 360; degrees += 5)
        {
            double turn = degrees * Math.PI / 180;
            Vector2D u = Vector2D.FromAngle(turn);
            var dimension = LinearDimension.Aligned("x", Label.Of("14"), Point2D.Origin, Point2D.Origin + (u * 14));
            foreach (Candidate candidate in LinearCandidates.For(dimension, "d", Context).All())
                Assert.All(candidate.Ink().Items.OfType<PlotText>(), t => Assert.InRange(t.Angle, (-Math.PI / 2) + 1e-9, (Math.PI / 2) + 1e-9));
        }
    }

    private static Candidate Best(double size) => All(size).MinBy(c => c.Cost)!;

    private static IEnumerable<Candidate> All(double size) =>
        LinearCandidates.For(new LinearDimension("x", size, Label.Of("12.5"), new Point2D(0, 20), new Point2D(size, 20), 0), "d", Context).All();
}
