using LeverDraw.Geometry;

namespace LeverDraw.Tests.Geometry;

public class TangentFilletTests
{
    private const double Close = 1e-9;

    // By hand: a square corner, radius 2. Centre 2 from each side: (8, 2). Tangent points (8, 0) and (10, 2). A quarter turn to the left.
    [Fact]
    public void AtCorner_SquareLines_GivesQuarterCircle()
    {
        Filleted f = Assert.IsType<Filleted>(TangentFillet.AtCorner(Line(0, 0, 10, 0), Line(10, 0, 10, 10), 2));
        Near(8, 2, f.Arc.Centre);
        Near(8, 0, f.TrimmedIn.End);
        Near(10, 2, f.TrimmedOut.Start);
        Assert.Equal(Math.PI / 2, f.Arc.Sweep, Close);
    }

    [Fact]
    public void AtCorner_ConcaveLines_TurnsRight()
    {
        Filleted f = Assert.IsType<Filleted>(TangentFillet.AtCorner(Line(0, 0, 10, 0), Line(10, 0, 10, -10), 2));
        Near(8, -2, f.Arc.Centre);
        Assert.Equal(-Math.PI / 2, f.Arc.Sweep, Close);
    }

    // By hand: head circle of radius 7 about the origin, an arm face x = 3 going down from it, fillet radius 4 outside both.
    // The centre is 4 to the right of the face: x = 7; and 7 + 4 = 11 from the origin: y = −√(121 − 49) = −√72 = −8.48528137424.
    // Tangent point on the face (3, −√72); on the circle 7/11 of the centre: (49/11, −7√72/11) = (4.454545, −5.399724).
    [Fact]
    public void AtCorner_ArmFaceIntoHeadCircle_MatchesHandConstruction()
    {
        double y = -8.48528137423857;
        LineEdge face = Line(3, -30, 3, -Math.Sqrt(40)); // meets the circle where x = 3: y = −√(49 − 9)
        ArcEdge head = ArcEdge.Between(Point2D.Origin, face.To, new Point2D(0, 7), true);
        Filleted f = Assert.IsType<Filleted>(TangentFillet.AtCorner(face, head, 4));
        Near(7, y, f.Arc.Centre);
        Near(3, y, f.TrimmedIn.End);
        Near(49 / 11.0, 7 * y / 11, f.TrimmedOut.Start);
        Assert.True(f.Arc.Sweep < 0);
        Tangent(f);
    }

    // By hand: two circles of radius 5, centres (±4, 0), meet at (0, ±3). A fillet of radius 2 in the upper notch:
    // centre on x = 0 at 7 from (4, 0): y = √(49 − 16) = √33. Tangent points: 5/7 of the way: (±4 ∓ 20/7, 5√33/7).
    [Fact]
    public void AtCorner_NotchBetweenCircles_MatchesHandConstruction()
    {
        Point2D notch = new(0, 3);
        ArcEdge right = ArcEdge.Between(new Point2D(4, 0), new Point2D(9, 0), notch, true);
        ArcEdge left = ArcEdge.Between(new Point2D(-4, 0), notch, new Point2D(-9, 0), true);
        Filleted f = Assert.IsType<Filleted>(TangentFillet.AtCorner(right, left, 2));
        Near(0, Math.Sqrt(33), f.Arc.Centre);
        Near(8 / 7.0, 5 * Math.Sqrt(33) / 7, f.TrimmedIn.End);
        Near(-8 / 7.0, 5 * Math.Sqrt(33) / 7, f.TrimmedOut.Start);
        Tangent(f);
    }

    // By hand: the point of a lens of two circles of radius 5, centres (∓3, 0), meeting at (0, ±4); fillet radius 1 inside:
    // centre on x = 0 at 5 − 1 = 4 from (3, 0): y = √(16 − 9) = √7.
    [Fact]
    public void AtCorner_LensPoint_MatchesHandConstruction()
    {
        Point2D top = new(0, 4), bottom = new(0, -4);
        ArcEdge right = ArcEdge.Between(new Point2D(-3, 0), bottom, top, true);
        ArcEdge left = ArcEdge.Between(new Point2D(3, 0), top, bottom, true);
        Filleted f = Assert.IsType<Filleted>(TangentFillet.AtCorner(right, left, 1));
        Near(0, Math.Sqrt(7), f.Arc.Centre);
        Tangent(f);
    }

    [Fact]
    public void AtCorner_RadiusNotPositive_IsNamed() => Fails(FilletFault.RadiusNotPositive, Line(0, 0, 10, 0), Line(10, 0, 10, 10), 0);

    [Fact]
    public void AtCorner_NotANumber_IsNamed() => Fails(FilletFault.RadiusNotPositive, Line(0, 0, 10, 0), Line(10, 0, 10, 10), double.NaN);

    [Fact]
    public void AtCorner_EdgesApart_IsNamed() => Fails(FilletFault.EdgesDoNotMeet, Line(0, 0, 10, 0), Line(10, 1, 10, 10), 1);

    [Fact]
    public void AtCorner_StraightOn_IsNamed() => Fails(FilletFault.AlreadyTangent, Line(0, 0, 10, 0), Line(10, 0, 20, 0), 1);

    [Fact]
    public void AtCorner_TurningBackOnItself_IsNamed() => Fails(FilletFault.NoTangentCircle, Line(0, 0, 10, 0), Line(10, 0, 0, 0), 1);

    [Fact]
    public void AtCorner_ShortIncoming_IsNamed() => Fails(FilletFault.IncomingTooShort, Line(0, 0, 2, 0), Line(2, 0, 2, 10), 2);

    [Fact]
    public void AtCorner_ShortOutgoing_IsNamed() => Fails(FilletFault.OutgoingTooShort, Line(0, 0, 10, 0), Line(10, 0, 10, 1), 2);

    [Fact]
    public void AtCorner_BothShort_IsNamed() => Fails(FilletFault.BothTooShort, Line(0, 0, 1, 0), Line(1, 0, 1, 1), 2);

    // Two lines crossing have four circles of a radius, one in each quadrant.
    [Fact]
    public void Candidates_CrossingLines_AreFour() =>
        Assert.Equal(4, TangentFillet.Candidates(Line(-1, 0, 1, 0), Line(0, -1, 0, 1), 3).Length);

    // Two circles of radius 5 crossing, rolled by radius 1 < 5: outside/outside, outside/inside, inside/outside, inside/inside, two each.
    [Fact]
    public void Candidates_CrossingCircles_AreEight() =>
        Assert.Equal(8, TangentFillet.Candidates(ArcEdge.FullCircle(new Point2D(0, 0), 5), ArcEdge.FullCircle(new Point2D(6, 0), 5), 1).Length);

    private static void Tangent(Filleted f)
    {
        Near(f.TrimmedIn.End.X, f.TrimmedIn.End.Y, f.Arc.Start);
        Near(f.TrimmedOut.Start.X, f.TrimmedOut.Start.Y, f.Arc.End);
        Assert.Equal(1, f.TrimmedIn.TangentAt(1).Dot(f.Arc.TangentAt(0)), Close);
        Assert.Equal(1, f.TrimmedOut.TangentAt(0).Dot(f.Arc.TangentAt(1)), Close);
    }

    private static void Fails(FilletFault reason, Edge a, Edge b, double radius) =>
        Assert.Equal(reason, Assert.IsType<NoFillet>(TangentFillet.AtCorner(a, b, radius)).Reason);

    private static LineEdge Line(double x0, double y0, double x1, double y1) => new(new Point2D(x0, y0), new Point2D(x1, y1));

    private static void Near(double x, double y, Point2D p) => Assert.True(p.DistanceTo(new Point2D(x, y)) <= Close, p.ToString());
}
