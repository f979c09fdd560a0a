using CsCheck;
using LeverDraw.Diagnostics;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Parts.Outlines;
using LeverDraw.Tests.Support;
using LeverDraw.Units;

namespace LeverDraw.Tests.Parts.AdjustingLever.Foundry;

public sealed class FoundryProperties
{
    private static readonly string[] Machined = ["crown-right", "crown-left", "nose", "nose-end", "nose-corner-lower", "nose-corner-upper"];

    private static string Print(ValueBag values) => RandomLevers.Print(LeverPart.Build(values).Value!);

    [Fact]
    public void RoundTrip_WithoutStockAndDraft_ClosesToANanometre() => Gen.Select(RandomLevers.Values, Gen.Double[0, 3.3]).Sample(
        (values, percent) =>
        {
            PatternLever pattern = FoundryOf.Pattern(values.Copy().With(CastingFields.AllowanceGrade, CastingFields.None).With(CastingFields.Contraction, percent.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture) + " %"));
            foreach (StateSizes row in CleanUp.Table(pattern))
                Assert.Equal(row.Size.Finished.Millimetres, pattern.CastingFrom(row.Size, row.Pattern).Millimetres, 1e-9);
            // And on the outline itself: a pattern's area is the finished one's times (1 + r)², to 1e-10 mm along the outline's some 200 mm.
            double square = pattern.Rates.N.Factor * pattern.Rates.Z.Factor;
            Assert.Equal(square * ContourMeasure.Area(pattern.Casting.Finished.SideProfile), ContourMeasure.Area(pattern.SideProfile), 2e-8);
            Assert.Equal(square * ContourMeasure.Area(pattern.Casting.Finished.ForkProfile), ContourMeasure.Area(pattern.ForkProfile), 2e-8);
        },
        iter: 1000, print: t => Print(t.Item1) + FormattableString.Invariant($" {t.Item2} %"));

    [Fact]
    public void RoundTrip_WithStock_CleansUpInTheWorstCase()
    {
        int cast = 0;
        System.Collections.Concurrent.ConcurrentBag<string> refused = [];
        RandomLevers.Values.Sample(
            values =>
            {
                Checked<CastingLever> casting = FoundryOf.TryCast(values, "Grey iron", "Green sand");
                if (!casting.Ok)
                {
                    refused.Add(casting.Diagnostics.First(d => d.Severity == Severity.Error).Message);
                    return;
                }

                Interlocked.Increment(ref cast);
                PatternLever pattern = PatternLever.Of(casting.Value!);
                foreach (StateSizes row in CleanUp.Table(pattern))
                {
                    Assert.True(row.Expected.Contains(row.Casting));
                    if (row.LeastStock is not { } least)
                        continue;
                    // The required allowance of the standard is left even then.
                    Assert.True(least.Millimetres >= casting.Value!.Plan.Required.Millimetres - 0.01, FormattableString.Invariant($"{row.Size.Name} {least.Millimetres}"));
                    Assert.True(row.MostStock >= least);
                    // Taking the nominal stock off gives the finished size back.
                    double stock = row.Size.Group switch { MachinedFaces.Head => casting.Value.Plan.Stock.Head.Millimetres, MachinedFaces.Pads => casting.Value.Plan.Stock.Pads.Millimetres, _ => -1 };
                    if (stock >= 0)
                        Assert.Equal(row.Size.Finished.Millimetres, row.Casting.Millimetres - (2 * stock), 1e-9);
                }
            },
            iter: 1000, print: Print);
        Assert.True(refused.Count <= cast / 50, FormattableString.Invariant($"{refused.Count} levers could not be cast, {cast} could:\n") + string.Join("\n", refused));
    }

    [Fact]
    public void Stock_EveryMachinedFace_StandsOffByExactlyThat() => RandomLevers.Values.Sample(
        values =>
        {
            if (FoundryOf.TryCast(FoundryOf.Stocked(values.Copy(), 0.5, 0.6, 0.4)) is not { Ok: true, Value: { } casting })
                return;
            Lever finished = casting.Finished, shape = casting.Shape;
            foreach (NamedEdge piece in shape.Side.Edges.Where(e => Machined.Contains(e.Name) || (e.Name.StartsWith("flank", StringComparison.Ordinal) && finished.Forms.Tongue != LeverFields.Bulb)))
            {
                double stock = piece.Name.StartsWith("crown", StringComparison.Ordinal) ? 0.6 : 0.4;
                // Both ways round: every point of the casting's face has its foot on the finished face's carrier at that distance.
                Edge face = finished.Side.Find(piece.Name)!;
                for (int i = 0; i <= 8; i++)
                {
                    Point2D p = piece.Edge.PointAt(i / 8.0);
                    Assert.Equal(stock, p.DistanceTo(Carriers.Foot(face, p)), 1e-9);
                }
            }

            Assert.True(ContourSelfCheck.Find(shape.SideProfile).IsEmpty && ContourSelfCheck.Find(shape.ForkProfile).IsEmpty);
            double headStock = finished.Boss is null ? shape.Fork.HeadSide.Start.X - finished.Fork.HeadSide.Start.X : (shape.Hole.HalfLength - finished.Hole.HalfLength).Millimetres;
            Assert.Equal(0.5, headStock, 1e-9);
        },
        iter: 1000, print: Print);

    [Fact]
    public void Stock_FinishedOutline_LiesInsideTheCasting() => RandomLevers.Values.Sample(
        values =>
        {
            if (FoundryOf.TryCast(FoundryOf.Stocked(values.Copy(), 0.5, 0.6, 0.4)) is not { Ok: true, Value: { } casting })
                return;
            AllInside(casting.Finished.SideProfile, casting.Shape.SideProfile);
            AllInside(casting.Finished.ForkProfile, casting.Shape.ForkProfile);
        },
        iter: 300, print: Print);

    [Fact]
    public void Stock_FacesLeftAsCast_KeepTheirCarriers() => RandomLevers.Values.Sample(
        values =>
        {
            if (FoundryOf.TryCast(FoundryOf.Stocked(values.Copy(), 0.5, 0.6, 0.4)) is not { Ok: true, Value: { } casting })
                return;
            Lever finished = casting.Finished;
            foreach (string name in (string[])["arm-right", "arm-left", "head-fillet-arm-right", "head-fillet-arm-left", "head-fillet-flank-lower", "head-fillet-flank-upper", finished.Forms.PadEnds == LeverFields.Square ? "pad-end" : "arm-left"])
                OnCarrier(casting.Finished.Side.Find(name), casting.Shape.Side.Find(name), name);
            foreach (string name in (string[])["gap-side-right", "crotch-right", "arm-outer-right", "arm-end-right", "shoulder-right", "shoulder-round-right", "tongue-side-right"])
                OnCarrier(casting.Finished.Fork.Find(name), casting.Shape.Fork.Find(name), name);
        },
        iter: 300, print: Print);

    [Fact]
    public void Pattern_UnlikeRates_KeepsSizesWithinTheStatedError() => RandomLevers.Values.Sample(
        values =>
        {
            PatternLever pattern = FoundryOf.Pattern(values.Copy().With(CastingFields.AllowanceGrade, CastingFields.None)
                .With(CastingFields.TrialPatternN, 10.2).With(CastingFields.TrialCastingN, 10).With(CastingFields.TrialPatternZ, 50.5).With(CastingFields.TrialCastingZ, 50));
            Lever lever = pattern.Casting.Finished;
            Assert.Equal(lever.SideProfile.Box.Height * 1.01, pattern.SideProfile.Box.Height, ArcFit.Error);
            Assert.Equal(lever.SideProfile.Box.Width * 1.02, pattern.SideProfile.Box.Width, 2 * ArcFit.Error);
            Assert.Equal(ContourMeasure.Area(lever.SideProfile) * 1.01 * 1.02, ContourMeasure.Area(pattern.SideProfile), ArcFit.Error * ContourMeasure.Length(lever.SideProfile));
            StateSizes pads = CleanUp.Table(pattern).Single(r => r.Size.Name == "pad thickness");
            Assert.Equal(pads.Casting.Millimetres * 1.02, pads.Pattern.Millimetres, 1e-9);
        },
        iter: 200, print: Print);

    [Fact]
    public void Rapping_OutlineSweptToAndFro_IsTheEnlargedOne() => RandomLevers.Values.Sample(
        values =>
        {
            const double Along = 0.15, Across = 0.1;
            PatternLever pattern = FoundryOf.Pattern(values.Copy().With(CastingFields.AllowanceGrade, CastingFields.None).With(CastingFields.RappingAlong, Along).With(CastingFields.RappingAcross, Across));
            Box2D wanted = pattern.Enlarged.ForkProfile.Box, left = pattern.ForkProfile.Box;
            // A straight side shorter than the move along is moved away whole: the widest point is then on the round beside it, further in by r − √(r² − along²) at most.
            double[] rounds = [.. pattern.Enlarged.ForkProfile.Edges.OfType<ArcEdge>().Where(a => a.Box.MaxX > wanted.MaxX - 1e-9 && a.Radius > Along).Select(a => a.Radius)];
            double further = rounds.Length == 0 ? 0 : rounds.Max(r => r - Math.Sqrt((r * r) - (Along * Along)));
            Assert.InRange(left.Width, wanted.Width - (2 * Across) - (2 * further) - 1e-7, wanted.Width - (2 * Across) + 1e-7);
            // A round arm end loses more: the flat it had for a moment is moved away too.
            if (pattern.Enlarged.Forms.ArmEnds == LeverFields.Square)
                Assert.Equal(wanted.Height - (2 * Along), left.Height, 1e-7);
            for (int i = 0; i < 40; i++)
            {
                foreach ((double x, double z) in ((double, double)[])[(Across, Along), (-Across, Along), (Across, -Along), (-Across, -Along)])
                {
                    Edge edge = pattern.ForkProfile.Edges[i % pattern.ForkProfile.Edges.Length];
                    Point2D moved = edge.PointAt(0.31) + new Vector2D(x, z);
                    Assert.True(ContourQueries.Contains(pattern.Enlarged.ForkProfile, moved) != PointPlace.Outside
                        || ContourQueries.NearestPoint(pattern.Enlarged.ForkProfile, moved).Distance < 1e-6);
                }
            }
        },
        iter: 200, print: Print);

    private static void AllInside(Contour inner, Contour outer)
    {
        foreach (Edge edge in inner.Edges)
        {
            for (int i = 0; i < 7; i++)
            {
                Point2D p = edge.PointAt((i + 0.5) / 7);
                Assert.True(
                    ContourQueries.Contains(outer, p) != PointPlace.Outside || ContourQueries.NearestPoint(outer, p).Distance < 1e-6,
                    FormattableString.Invariant($"{p.X}, {p.Y} stands out by {ContourQueries.NearestPoint(outer, p).Distance}"));
            }
        }
    }

    private static void OnCarrier(Edge? before, Edge? after, string name)
    {
        if (before is null || after is null)
            return;
        foreach (double t in (double[])[0, 0.5, 1])
            Assert.True(after.PointAt(t).DistanceTo(Carriers.Foot(before, after.PointAt(t))) < 1e-7, name);
    }
}
