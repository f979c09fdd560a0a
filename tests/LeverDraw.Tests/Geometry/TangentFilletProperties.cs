using CsCheck;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Geometry;

public class TangentFilletProperties
{
    private const double Close = 1e-9;

    // A corner at the origin from any pair of lines and arcs 2 to 12 mm long, in any directions.
    private static readonly Gen<Edge> FromOrigin = Gen.Select(Gen.Double[-3, 3], Gen.Double[2, 12], Gen.Double[1, 40], Gen.Int[-1, 1]).Select((angle, length, radius, bend) =>
    {
        Vector2D u = Vector2D.FromAngle(angle);
        return bend == 0
            ? (Edge)new LineEdge(Point2D.Origin, Point2D.Origin + (u * length))
            : new ArcEdge(Point2D.Origin + (u.Left * bend * radius), radius, (-(u.Left * bend)).Angle, bend * Math.Min(length / radius, 5));
    });

    [Fact]
    public void AtCorner_WhenFilleted_IsTangentAndGapless() => Gen.Select(FromOrigin, FromOrigin, Gen.Double[0.05, 6]).Sample(
        (a, b, r) =>
        {
            Edge incoming = a.Reversed();
            if (TangentFillet.AtCorner(incoming, b, r) is not Filleted f)
                return;
            Assert.Equal(r, f.Arc.Radius, Close);
            Assert.True(f.TrimmedIn.End.DistanceTo(f.Arc.Start) < Close);
            Assert.True(f.TrimmedOut.Start.DistanceTo(f.Arc.End) < Close);
            Assert.True(Math.Abs(f.TrimmedIn.TangentAt(1).Cross(f.Arc.TangentAt(0))) < 1e-6);
            Assert.True(f.TrimmedIn.TangentAt(1).Dot(f.Arc.TangentAt(0)) > 0);
            Assert.True(f.TrimmedOut.TangentAt(0).Dot(f.Arc.TangentAt(1)) > 0);
            Assert.True(CarrierGap(incoming, f.Arc) < Close, "in");
            Assert.True(CarrierGap(b, f.Arc) < Close, "out");
            Assert.True(f.TrimmedIn.Start.DistanceTo(incoming.Start) < Close);
            Assert.True(f.TrimmedOut.End.DistanceTo(b.End) < Close);
        },
        iter: 5000);

    [Fact]
    public void AtCorner_TravelledBackwards_IsTheSameArc() => Gen.Select(FromOrigin, FromOrigin, Gen.Double[0.05, 6]).Sample(
        (a, b, r) =>
        {
            FilletResult there = TangentFillet.AtCorner(a.Reversed(), b, r), back = TangentFillet.AtCorner(b.Reversed(), a, r);
            Assert.Equal(there is Filleted, back is Filleted);
            if (there is Filleted f && back is Filleted g)
            {
                Assert.True(f.Arc.Centre.DistanceTo(g.Arc.Centre) < 1e-7);
                Assert.Equal(f.Arc.Sweep, -g.Arc.Sweep, 1e-6);
            }
        },
        iter: 5000);

    // A small enough radius fits any corner that isn't nearly straight or turned back.
    [Fact]
    public void AtCorner_SmallRadius_AlwaysFits() => Gen.Select(FromOrigin, FromOrigin).Sample(
        (a, b) =>
        {
            double between = Math.Abs(JointTurn.Between(a.Reversed().TangentAt(1), b.TangentAt(0)));
            if (between is > 0.2 and < 2.8)
                Assert.IsType<Filleted>(TangentFillet.AtCorner(a.Reversed(), b, 0.01));
        },
        iter: 5000);

    // Nearly parallel lines have their tangent circles kilometres away, where a double has no nanometres: left out.
    [Fact]
    public void Candidates_AreTangentToBothCarriers() => Gen.Select(FromOrigin, FromOrigin, Gen.Double[0.05, 30]).Sample(
        (a, b, r) => Assert.All(TangentFillet.Candidates(a, b, r).Where(c => c.Centre.DistanceTo(Point2D.Origin) < 1000), c =>
        {
            ArcEdge circle = ArcEdge.FullCircle(c.Centre, r);
            Assert.True(CarrierGap(a, circle) < 2 * Close && CarrierGap(b, circle) < 2 * Close);
            Assert.Equal(r, c.Centre.DistanceTo(c.OnA), 2 * Close);
            Assert.Equal(r, c.Centre.DistanceTo(c.OnB), 2 * Close);
        }),
        iter: 5000);

    // How far a circle is from being tangent to the carrier, by centre distances only.
    private static double CarrierGap(Edge carrier, ArcEdge circle)
    {
        if (carrier is not ArcEdge arc)
            return Math.Abs(Math.Abs(carrier.TangentAt(0).Cross(circle.Centre - carrier.Start)) - circle.Radius);
        double apart = arc.Centre.DistanceTo(circle.Centre);
        return Math.Min(Math.Abs(apart - (arc.Radius + circle.Radius)), Math.Abs(apart - Math.Abs(arc.Radius - circle.Radius)));
    }
}
