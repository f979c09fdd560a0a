using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Tests.Support;
using static LeverDraw.Parts.AdjustingLever.LeverFields;

namespace LeverDraw.Tests.Parts.AdjustingLever;

public class LeverViewsTests
{
    [Fact]
    public void Side_HidesTheCrotchLineBehindTheArm()
    {
        ViewGeometry view = LeverViews.Side(LeverPart.Build(DemoLevers.Early()).Value!);
        ViewEdge hidden = Assert.Single(view.Edges, e => e.Role == LineRole.Hidden);
        // Gap's top at −(10/2 + 1), across the fillets of the arm there.
        Assert.Equal(-6, hidden.Edge.Start.Y, 1e-9);
        Assert.True(hidden.Edge.Length > 4.2);
    }

    [Fact]
    public void Side_SharpForkCorners_ShowAsLines()
    {
        ViewGeometry view = LeverViews.Side(LeverPart.Build(DemoLevers.Early().With(Fillet, 0).With(EdgeRound, 0)).Value!);
        double[] levels = [.. view.Edges.Where(e => e.Role == LineRole.Edge).Select(e => Math.Round(e.Edge.Start.Y, 6)).Distinct().Order()];
        // Shoulder's lower corner at the crotch's end, its upper corner at the axis, head's top.
        Assert.Equal([-12.5, 0, 5], levels);
    }

    /// <summary>The flat of the boss runs at −1.23, the hole (radius 1.77 there) takes its middle away; of sharp shoulders too, at the axis itself.</summary>
    [Fact]
    public void Side_OpenHole_HasNoEdgeAcrossIt()
    {
        foreach (ValueBag values in (ValueBag[])[DemoLevers.Early().With(BossSides, Both).With(BossDiameter, 8).With(BossHeight, 0.5), DemoLevers.Middle().Without(FootFillet).With(Fillet, 0).With(EdgeRound, 0)])
        {
            Lever lever = LeverPart.Build(values).Value!;
            double r = lever.Hole.AtRight.Millimetres / 2;
            LineEdge[] level = [.. LeverViews.Side(lever).Edges.Where(e => e.Role is LineRole.Edge or LineRole.Hidden).Select(e => e.Edge).OfType<LineEdge>().Where(l => Math.Abs(l.From.Y - l.To.Y) < 1e-9 && Math.Abs(l.From.Y) < r)];
            Assert.Equal(2, level.Length);
            Assert.All(level, l => Assert.True(Math.Min((l.From - Point2D.Origin).Length, (l.To - Point2D.Origin).Length) > r - 1e-9 && l.From.X * l.To.X > 0));
            // They still reach the hole.
            Assert.All(level, l => Assert.Equal(r, Math.Min((l.From - Point2D.Origin).Length, (l.To - Point2D.Origin).Length), 1e-9));
        }

        Lever solid = LeverPart.Build(DemoLevers.Middle().Without(FootFillet).With(Fillet, 0).With(EdgeRound, 0).With(HoleSupply, Solid)).Value!;
        Assert.Single(LeverViews.Side(solid).Edges, e => e.Role == LineRole.Edge && e.Edge is LineEdge && Math.Abs(e.Edge.Start.Y) < 1e-9);
    }

    [Fact]
    public void Fork_StepAtThePad_ShowsOnceAndTheHoleIsHidden()
    {
        Lever lever = LeverPart.Build(DemoLevers.Early()).Value!;
        ViewGeometry view = LeverViews.Fork(lever);
        ViewEdge[] steps = [.. view.Edges.Where(e => e.Role == LineRole.Edge)];
        Assert.Equal(2, steps.Length);
        Assert.All(steps, e => Assert.Equal(5.5, e.Edge.Length, 1e-9));
        ViewEdge[] hole = [.. view.Edges.Where(e => e.Role == LineRole.Hidden)];
        Assert.Equal(2, hole.Length);
        // Tapered 1:48, so each side rises 1/96.
        Assert.All(hole, e => Assert.Equal(1.0 / 96, Math.Abs((e.Edge.End.Y - e.Edge.Start.Y) / (e.Edge.End.X - e.Edge.Start.X)), 1e-9));
        Assert.Contains(hole, e => Math.Abs(e.Edge.End.X - 4.75) < 1e-9);
    }

    [Fact]
    public void Fork_WithBosses_IsAsWideAsTheirFaces()
    {
        Lever lever = LeverPart.Build(DemoLevers.Rare()).Value!;
        Contour outline = LeverViews.Fork(lever).Outlines[0].Contour;
        Assert.Empty(ContourSelfCheck.Find(outline));
        Assert.Equal(10.5, ContourChords.HorizontalAt(outline, 1)[0].Length, 1e-9);
        Assert.Equal(9.5, ContourChords.HorizontalAt(outline, 4.2)[0].Length, 1e-9);
    }

    /// <summary>A boss 1 mm proud stands farther out than the concave shoulder (R12, from the pivot's level) reaches at its foot, x = 4.75 + 12 − √(12² − 4²) = 5.436.</summary>
    [Fact]
    public void Fork_BossProudOfTheShoulder_ShowsItsLowerSide()
    {
        Lever lever = LeverPart.Build(DemoLevers.Rare().With(LeverFields.BossHeight, 1)).Value!;
        Contour outline = LeverViews.Fork(lever).Outlines[0].Contour;
        Assert.Equal(11.5, ContourChords.HorizontalAt(outline, -3.99)[0].Length, 1e-9);
        Assert.Contains(outline.Edges, e => e is LineEdge line && line.From.DistanceTo(new(16.75 - Math.Sqrt(128), -4)) < 1e-9 && line.To.DistanceTo(new(5.75, -4)) < 1e-9);
    }

    [Fact]
    public void Section_IsWidthTimesDepthLessTheHole()
    {
        Lever lever = LeverPart.Build(DemoLevers.Late()).Value!;
        ViewGeometry view = LeverViews.SectionThroughPin(lever);
        double area = view.Hatching.Sum(h => h.Loops.Sum(ContourMeasure.Area));
        double depth = ContourChords.HorizontalAt(lever.SideProfile, 0)[0].Length;
        Assert.Equal(9.2 * (depth - 2.8), area, 1e-9);
        Assert.All(view.Hatching, h => Assert.True(ContourMeasure.Area(h.Loops[0]) > 0));
    }

    [Fact]
    public void Section_WithBosses_AddsTheirFaces()
    {
        Lever lever = LeverPart.Build(DemoLevers.Rare()).Value!;
        double depth = ContourChords.HorizontalAt(lever.SideProfile, 0)[0].Length;
        double area = LeverViews.SectionThroughPin(lever).Hatching.Sum(h => h.Loops.Sum(ContourMeasure.Area));
        // Head 9.5 × depth, two bosses 0.5 × 8, hole 3.5 × 10.5.
        Assert.Equal((9.5 * depth) + (2 * 0.5 * 8) - (3.5 * 10.5), area, 1e-9);
    }

    [Fact]
    public void Top_ShowsTheTongueNarrowAndTheArmsWide()
    {
        Lever lever = LeverPart.Build(DemoLevers.Early()).Value!;
        Contour plan = LeverViews.Top(lever).Outlines[0].Contour;
        Assert.Empty(ContourSelfCheck.Find(plan));
        Assert.Equal(25, ContourChords.HorizontalAt(plan, 0)[0].Length, 1e-6);
        Assert.Equal(6.4, ContourChords.HorizontalAt(plan, lever.SideProfile.Box.MaxX - 0.3)[0].Length, 1e-6);
        // Beside the arm the head shows with what the shoulders add to it.
        Assert.InRange(ContourChords.HorizontalAt(plan, -4)[0].Length, 9.5, 15);
    }

    [Fact]
    public void TongueTrue_IsTheStripUpToTheTip()
    {
        Lever lever = LeverPart.Build(DemoLevers.Early()).Value!;
        Box2D box = LeverViews.TongueTrue(lever).Edges.Where(e => e.Role == LineRole.Edge).Aggregate(Box2D.Empty, (b, e) => b.Union(e.Edge.Box));
        Assert.Equal(6.4, box.Width, 0.001);
        // 11.3 + 2.05·cos 8°.
        Assert.Equal(13.330049, box.MaxY, 0.001);
        // The front flank, 2.05 + (11.3 − s)·tan 8° from the mid-line, is 5.8 above the pivot, where the foot fillet begins, at s·cos 40° − t·sin 40° = 5.8: s = 9.503.
        Assert.Equal(9.503, box.MinY, 0.001);
    }
}
