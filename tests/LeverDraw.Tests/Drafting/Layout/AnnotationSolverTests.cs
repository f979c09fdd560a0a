using CsCheck;
using LeverDraw.Drafting.Layout;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Layout;

public class AnnotationSolverTests
{
    /// <summary>A field of its own for each caller: its buffers are not for two threads.</summary>
    private static ViewField Nothing => new([]);

    private static readonly Gen<Candidate> Crowded =
        Gen.Select(Gen.Double[0, 30], Gen.Double[0, 20], Gen.Double[1, 5], Gen.Double[0, 20], (x, y, half, cost) => Text(x, y, half, cost));

    /// <summary>Up to six annotations with up to six places each, all in one small area.</summary>
    private static readonly Gen<Candidate[][]> Crowds = Crowded.Array[1, 6].Array[1, 6];

    [Fact]
    public void Solve_WhereEachHasAClearPlaceOfItsOwn_LeavesNoneOverAnother() =>
        Crowds.Sample(crowd =>
        {
            // A dear place far out that nobody else wants.
            Candidate[][] all = [.. crowd.Select((places, i) => (Candidate[])[.. places, Text(100 + (20 * i), 0, 5, 500)])];
            (Candidate[] chosen, int[] unplaced) = AnnotationSolver.Solve(Nothing, all);
            Assert.Empty(unplaced);
            Assert.Equal(0, Overlaps(chosen));
        }, iter: 500);

    [Fact]
    public void Solve_AnyCrowd_IsNeverDearerThanTakingThemInTurn() =>
        Crowds.Sample(crowd =>
        {
            (Candidate[] chosen, _) = AnnotationSolver.Solve(Nothing, crowd);
            Assert.True(Total(chosen) <= Total(InTurn(crowd)) + 1e-6);
        }, iter: 2000);

    /// <summary>Against trying every combination: a hard rule is left broken only if no combination keeps them all, and the price is seldom above the least (one in ten, in crowds far denser than any view).</summary>
    [Fact]
    public void Solve_SmallCrowd_IsAsGoodAsTryingEverything()
    {
        int dearer = 0, all = 0;
        Crowded.Array[1, 5].Array[1, 5].Sample(
            crowd =>
            {
                double found = Total(AnnotationSolver.Solve(Nothing, crowd).Chosen);
                double least = Least(crowd, 0, []);
                Assert.True(found >= least - 1e-6);
                Assert.Equal(Math.Floor(least / PlacingCosts.Broken), Math.Floor(found / PlacingCosts.Broken));
                Interlocked.Increment(ref all);
                if (found > least + 1e-6)
                    Interlocked.Increment(ref dearer);
            },
            iter: 2000);
        Assert.True(dearer < all / 6, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{dearer} of {all} dearer than need be"));
    }

    [Fact]
    public void Solve_AnyCrowd_TellsExactlyThoseThatOverlap() =>
        Crowds.Sample(crowd =>
        {
            (Candidate[] chosen, int[] unplaced) = AnnotationSolver.Solve(Nothing, crowd);
            int[] overlapping = [.. Enumerable.Range(0, chosen.Length).Where(i => chosen.Where((_, j) => j != i).Any(c => c.Texts[0].Overlaps(chosen[i].Texts[0])))];
            Assert.Equal(overlapping, unplaced);
        }, iter: 1000);

    [Fact]
    public void Solve_Twice_ChoosesTheSame() =>
        Crowds.Sample(crowd => Assert.True(AnnotationSolver.Solve(Nothing, crowd).Chosen.SequenceEqual(AnnotationSolver.Solve(Nothing, crowd).Chosen)));

    [Fact]
    public void Solve_PlacesOfOnePrice_TakesTheFirst()
    {
        Candidate[] places = [.. Enumerable.Range(0, 40).Select(i => Text(20 * i, 0, 5, 3))];
        Assert.Same(places[0], AnnotationSolver.Solve(Nothing, [places]).Chosen[0]);
        Assert.Same(places[39], AnnotationSolver.Solve(Nothing, [places.Reverse().ToArray()]).Chosen[0]);
    }

    [Fact]
    public void Solve_CheapPlaceTakenByAnother_MovesTheOneThatCan()
    {
        Candidate shared = Text(0, 0, 5, 0), sharedToo = Text(1, 0, 5, 0), away = Text(50, 0, 5, 9);
        // The first could go elsewhere, the second could not: both orders end the same.
        Assert.Equal([away, sharedToo], AnnotationSolver.Solve(Nothing, [[shared, away], [sharedToo]]).Chosen);
        Assert.Equal([sharedToo, away], AnnotationSolver.Solve(Nothing, [[sharedToo], [shared, away]]).Chosen);
    }

    [Fact]
    public void Solve_LineOfTheViewThroughThePlace_ChoosesAnother()
    {
        ViewField field = new([new Stroke(new Point2D(-20, 0), new Point2D(20, 0), StrokeKind.Feature)]);
        Candidate struck = Text(0, 0, 5, 0), clear = Text(0, 10, 5, 40);
        Assert.Same(clear, AnnotationSolver.Solve(field, [[struck, clear]]).Chosen[0]);
        Assert.Equal([0], AnnotationSolver.Solve(field, [[struck]]).Unplaced);
    }

    [Fact]
    public void Solve_LeaderOfOneThroughTextOfAnother_IsAvoided()
    {
        Stroke leader = new(new Point2D(-20, 0), new Point2D(20, 0), StrokeKind.Leader);
        Candidate line = new([new OrientedBox(new Point2D(-30, 0), 4, 2, 0)], [leader], 0, null!);
        Candidate under = Text(0, 0, 5, 0), beside = Text(0, 12, 5, 30);
        Assert.Same(beside, AnnotationSolver.Solve(Nothing, [[line], [under, beside]]).Chosen[1]);
    }

    /// <summary>Worked out by hand: one at a time nothing is gained, since the place at 0 is taken; with room made it is 10 in place of 100.</summary>
    [Fact]
    public void Settle_GoodPlaceTakenByOneThatCanGiveWay_MakesRoom()
    {
        Candidate good = Text(0, 0, 5, 0), bad = Text(50, 0, 5, 100), taken = Text(1, 0, 5, 0), other = Text(25, 0, 5, 10);
        Assert.Equal([good, other], Settled([[good, bad], [taken, other]], [bad, taken], new Box2D(-10, -10, 60, 10)));
        // Not where the one that would give way has no room for it.
        Assert.Equal([bad, taken], Settled([[good, bad], [taken, Text(0, 200, 5, 10)]], [bad, taken], new Box2D(-10, -10, 60, 10)));
    }

    [Fact]
    public void Settle_AnyCrowd_StaysInItsRoomAndGetsNoDearer() =>
        Crowds.Sample(
            crowd =>
            {
                Candidate[][] all = [.. crowd.Select((places, i) => (Candidate[])[.. places, Text(100 + (20 * i), 0, 5, 500)])];
                Candidate[] before = AnnotationSolver.Solve(Nothing, all).Chosen;
                Box2D room = before.Aggregate(Box2D.Empty, (box, c) => box.Union(c.Bounds));
                Candidate[] after = Settled(all, before, room);
                Assert.Equal(0, Overlaps(after));
                Assert.True(Total(after) + Blemishes(after) <= Total(before) + Blemishes(before) + 1e-6);
                Assert.All(after, c => Assert.True(room.Inflated(1e-6).Contains(c.Bounds)));
            },
            iter: 500);

    private static Candidate[] Settled(Candidate[][] all, Candidate[] chosen, Box2D room)
    {
        Candidate[] settled = [.. chosen];
        AnnotationSolver.Settle(Nothing, [.. all.Select(places => new ReadyPlaces(places))], settled, room, new PlaceShape(), new PlaceShape());
        return settled;
    }

    private static Candidate Text(double x, double y, double half, double cost) => new([new OrientedBox(new Point2D(x, y), half, 2, 0)], [], cost, null!);

    private static int Overlaps(Candidate[] chosen) =>
        Enumerable.Range(0, chosen.Length).Sum(i => Enumerable.Range(0, i).Count(j => chosen[i].Texts[0].Overlaps(chosen[j].Texts[0])));

    private static double Total(Candidate[] chosen) => chosen.Sum(c => c.Cost) + (PlacingCosts.Broken * Overlaps(chosen));

    private static double Blemishes(Candidate[] chosen) =>
        Enumerable.Range(0, chosen.Length).Sum(i => Enumerable.Range(0, i).Sum(j => PairBlemish.Between(chosen[i], chosen[j])));

    private static double Least(Candidate[][] crowd, int at, Candidate[] taken) =>
        at == crowd.Length ? Total(taken) : crowd[at].Min(place => Least(crowd, at + 1, [.. taken, place]));

    /// <summary>Each takes the cheapest place that those before it leave; of equals the one cheaper by itself, as the solver does.</summary>
    private static Candidate[] InTurn(Candidate[][] crowd)
    {
        var taken = new List<Candidate>();
        foreach (Candidate[] places in crowd)
            taken.Add(places.OrderBy(p => p.Cost).MinBy(p => p.Cost + (PlacingCosts.Broken * taken.Count(t => t.Texts[0].Overlaps(p.Texts[0]))))!);
        return [.. taken];
    }
}
