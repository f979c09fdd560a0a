using LeverDraw.Comparison;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever;

namespace LeverDraw.Tests.Comparison;

/// <summary>Overlays of random sound levers, in both views. Seeds are counted up, so a failure names its pair and comes again.</summary>
public sealed class ViewOverlayProperties
{
    private const int Pairs = 500, Sampled = 60, PointsPerEdge = 150;

    private static readonly (string Name, Func<Lever, ViewGeometry> Of)[] Views = [("side", LeverViews.Side), ("fork", LeverViews.Fork)];

    [Fact]
    public void Areas_OfRandomPairs_AddUpToEachLeversOwn()
    {
        List<string> faults = [];
        ForEachPair(Pairs, (pair, seen) =>
        {
            OverlayAreas areas = seen.Areas;
            foreach ((string name, Silhouette own, OverlayRegion alone) in ((string, Silhouette, OverlayRegion)[])[("A", seen.A, areas.OnlyA), ("B", seen.B, areas.OnlyB)])
            {
                double gap = areas.Both.Area + alone.Area - own.Area;
                if (Math.Abs(gap) > areas.Error)
                    faults.Add(FormattableString.Invariant($"{pair} {name}: {gap} mm² left over, error stated {areas.Error}"));
            }

            // The pieces that are drawn are the region that was measured.
            foreach (OverlayRegion region in (OverlayRegion[])[areas.Both, areas.OnlyA, areas.OnlyB])
            {
                double drawn = region.Pieces.Sum(p => p.Loops.Sum(ContourMeasure.Area));
                if (Math.Abs(drawn - region.Area) > 1e-4)
                    faults.Add(FormattableString.Invariant($"{pair}: loops hold {drawn} mm², the region {region.Area}"));
            }
        });
        Assert.True(faults.Count == 0, string.Join("\n", faults.Take(20)));
    }

    /// <summary>Dense sampling is a second way to the same distance: no sample may lie farther, and the best sample no more than half a step nearer (a distance changes no faster than one moves).</summary>
    [Fact]
    public void LargestDistance_OfRandomPairs_AgreesWithDenseSampling()
    {
        List<string> faults = [];
        ForEachPair(Sampled, (pair, seen) =>
        {
            foreach ((Deviation far, Contour from, Contour to) in ((Deviation, Contour, Contour)[])[(seen.AFromB, seen.A.Outer, seen.B.Outer), (seen.BFromA, seen.B.Outer, seen.A.Outer)])
            {
                double sampled = 0, step = from.Edges.Max(e => e.Length) / PointsPerEdge;
                foreach (Edge edge in from.Edges)
                {
                    for (int i = 0; i <= PointsPerEdge; i++)
                        sampled = Math.Max(sampled, ContourQueries.NearestPoint(to, edge.PointAt((double)i / PointsPerEdge)).Distance);
                }

                double found = far.Distance.Millimetres;
                if (sampled > found + LargestDistance.Error || found > sampled + (step / 2) + LargestDistance.Error || Math.Abs(far.At.DistanceTo(far.Nearest) - found) > 1e-9)
                    faults.Add(FormattableString.Invariant($"{pair}: found {found}, sampled {sampled}"));
            }
        });
        Assert.True(faults.Count == 0, string.Join("\n", faults.Take(20)));
    }

    [Fact]
    public void Overlay_OfALeverWithItself_IsNothing()
    {
        foreach (Lever lever in OverlayPairs.RandomLeversOf(40))
        {
            foreach ((string name, Func<Lever, ViewGeometry> view) in Views)
            {
                ViewOverlay same = ViewOverlay.Of(view(lever), view(lever), default);
                Assert.True(same.Areas.OnlyA.Area == 0 && same.Areas.OnlyB.Area == 0, name);
                Assert.Equal(0, same.AFromB.Distance.Millimetres, LargestDistance.Error);
                Assert.Equal(0, same.BFromA.Distance.Millimetres, LargestDistance.Error);
            }
        }
    }

    [Fact]
    public void Overlay_OfTheSamePairTheOtherWayRound_IsTheSame()
    {
        Lever[] levers = OverlayPairs.RandomLeversOf(60);
        for (int i = 0; i + 1 < levers.Length; i += 2)
        {
            foreach ((_, Func<Lever, ViewGeometry> view) in Views)
            {
                ViewOverlay one = ViewOverlay.Of(view(levers[i]), view(levers[i + 1]), default), other = ViewOverlay.Of(view(levers[i + 1]), view(levers[i]), default);
                Assert.Equal(one.Areas.OnlyA.Area, other.Areas.OnlyB.Area, 1e-9);
                Assert.Equal(one.Areas.OnlyB.Area, other.Areas.OnlyA.Area, 1e-9);
                Assert.Equal(one.Areas.Both.Area, other.Areas.Both.Area, 1e-9);
                Assert.Equal((one.AFromB, one.BFromA), (other.BFromA, other.AFromB));
            }
        }
    }

    private static void ForEachPair(int count, Action<string, ViewOverlay> look)
    {
        Lever[] levers = OverlayPairs.RandomLeversOf(count + 1);
        for (int i = 0; i < count; i++)
        {
            foreach ((string name, Func<Lever, ViewGeometry> view) in Views)
                look(FormattableString.Invariant($"pair {i} {name}"), ViewOverlay.Of(view(levers[i]), view(levers[i + 1]), default));
        }
    }
}
