using CsCheck;
using LeverDraw.Drafting.Layout;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Layout;

public class StrokeGridProperties
{
    private static readonly Gen<Point2D> Points = Gen.Select(Gen.Double[-60, 60], Gen.Double[-60, 60], (x, y) => new Point2D(x, y));

    private static readonly Gen<Stroke[]> Strokes = Gen.Select(Points, Points, (a, b) => new Stroke(a, b, StrokeKind.Feature)).Array[1, 30];

    [Fact]
    public void In_Box_MeetsEveryStrokeNearItOnce() =>
        Gen.Select(Strokes, Points, Points).Sample((strokes, a, b) =>
        {
            Box2D box = Box2D.Of([a, b]);
            var met = new int[strokes.Length];
            var first = new int[strokes.Length];
            StrokeGrid.Walk walk = new StrokeGrid(strokes).In(box);
            while (walk.Next())
            {
                foreach (int i in walk.Cell)
                {
                    met[i]++;
                    first[i] += walk.MeetsFirst(i) ? 1 : 0;
                }
            }

            for (int i = 0; i < strokes.Length; i++)
            {
                Assert.Equal(met[i] > 0 ? 1 : 0, first[i]);
                Assert.True(met[i] > 0 || !strokes[i].Bounds.Overlaps(box));
            }
        }, iter: 1000);
}
