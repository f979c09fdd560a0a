using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Parts.AdjustingLever;

public class LeverMassTests
{
    [Fact]
    public void Of_TwoRectangles_IsTheBox()
    {
        MassProperties mass = LeverMass.Of(With(Rectangle(-1, -2, 3, 5), Rectangle(-2, -2, 2, 5)));
        // By hand: 4 × 4 × 7, surface 2·(16 + 28 + 28), middle at n = 1, z = 1.5.
        Assert.Equal(112, mass.Volume, 1e-9);
        Assert.Equal(144, mass.Surface, 1e-7);
        Assert.Equal(1, mass.N.Millimetres, 1e-9);
        Assert.Equal(1.5, mass.Z.Millimetres, 1e-9);
        Assert.Equal(0, mass.X.Millimetres, 1e-9);
    }

    [Fact]
    public void Of_CircleAndRectangle_IsTheCylinder()
    {
        MassProperties mass = LeverMass.Of(With(Contour.Circle(Point2D.Origin, 4.5), Rectangle(-3, -6, 3, 6)));
        // π·4.5²·6 and 2π·4.5² + 2π·4.5·6, by hand.
        Assert.Equal(381.7035074111599, mass.Volume, 1e-9);
        Assert.Equal(296.8805057642354, mass.Surface, 1e-8);
    }

    [Fact]
    public void Of_TwoEqualCircles_IsTheTwoCylinderSolid()
    {
        // Two equal cylinders crossing at right angles: V = 16r³/3, A = 16r² (a classical result).
        MassProperties mass = LeverMass.Of(With(Contour.Circle(Point2D.Origin, 3), Contour.Circle(Point2D.Origin, 3)));
        Assert.Equal(144, mass.Volume, 1e-9);
        Assert.Equal(144, mass.Surface, 1e-7);
    }

    [Fact]
    public void Of_Step_CountsEachLevelFaceOnce()
    {
        Contour step = Polygon((-2, 0), (2, 0), (2, 1), (1, 1), (1, 3), (-2, 3));
        MassProperties mass = LeverMass.Of(With(step, Rectangle(-1, 0, 1, 3)));
        // Area of the step 4·1 + 3·2 = 10, its girth 14; extruded 2: V = 20, A = 2·10 + 14·2.
        Assert.Equal(20, mass.Volume, 1e-9);
        Assert.Equal(48, mass.Surface, 1e-7);
    }

    [Theory]
    [InlineData("early", 1.81)]
    [InlineData("late", 1.33)]
    public void Of_DemoLever_AgreesWithTheRoughFigure(string name, double roughCubicCentimetres)
    {
        // The rough figures of the shape's description, made without boss and mark and with one fillet everywhere.
        double volume = LeverMass.Of(LeverPart.Build(DemoLevers.Named(name).Without(LeverFields.FootFillet)).Value!).CubicCentimetres;
        Assert.InRange(volume, roughCubicCentimetres * 0.95, roughCubicCentimetres * 1.05);
    }

    [Theory]
    [InlineData("early")]
    [InlineData("smallest")]
    [InlineData("rare")]
    public void Of_DemoLever_AgreesWithRandomPoints(string name)
    {
        Lever lever = LeverPart.Build(DemoLevers.Named(name)).Value!;
        MassProperties mass = LeverMass.Of(lever);
        ChordScanner side = ChordScanner.Horizontal(lever.SideProfile), fork = ChordScanner.Horizontal(lever.ForkProfile);
        Box2D s = lever.SideProfile.Box, f = lever.ForkProfile.Box;
        Dice dice = new(20250314);
        const int Points = 1_000_000;
        int inside = 0;
        double sumN = 0, sumZ = 0;
        for (int i = 0; i < Points; i++)
        {
            double x = dice.Between(f.MinX, f.MaxX), n = dice.Between(s.MinX, s.MaxX), z = dice.Between(f.MinY, f.MaxY);
            if (!Inside(lever, side, fork, x, n, z))
                continue;
            inside++;
            sumN += n;
            sumZ += z;
        }

        double box = f.Width * s.Width * f.Height, share = (double)inside / Points;
        double sigma = Math.Sqrt(share * (1 - share) / Points) * box;
        Assert.InRange(mass.Volume, (share * box) - (4 * sigma), (share * box) + (4 * sigma));
        // A coordinate's spread is at most half the box.
        double spread = 4 / Math.Sqrt(inside);
        Assert.Equal(sumN / inside, mass.N.Millimetres, spread * s.Width / 2);
        Assert.Equal(sumZ / inside, mass.Z.Millimetres, spread * f.Height / 2);
    }

    private static bool Inside(Lever lever, ChordScanner side, ChordScanner fork, double x, double n, double z)
    {
        double away = Math.Sqrt((n * n) + (z * z)), face = lever.Hole.HalfLength.Millimetres;
        double rate = lever.Hole.Taper.Rate * (lever.Hole.LargeEndRight ? 1 : -1);
        if (away < (lever.Hole.AtMid.Millimetres + (rate * x)) / 2)
            return false;
        if (lever.Boss is { } boss && Math.Abs(x) <= face && away < boss.Diameter.Millimetres / 2)
            return true;
        return side.Contains(new(n, z)) && fork.Contains(new(x, z));
    }

    private static Lever With(Contour side, Contour fork)
    {
        Lever lever = LeverPart.Build(DemoLevers.Early()).Value!;
        return lever with { SideProfile = side, ForkProfile = fork, Hole = lever.Hole with { Supply = LeverFields.Solid }, Boss = null, Mark = null };
    }

    private static Contour Rectangle(double x0, double y0, double x1, double y1) => Polygon((x0, y0), (x1, y0), (x1, y1), (x0, y1));

    private static Contour Polygon(params (double X, double Y)[] p) =>
        Contour.Of(p.Select((a, i) => new LineEdge(new(a.X, a.Y), new(p[(i + 1) % p.Length].X, p[(i + 1) % p.Length].Y))));
}
