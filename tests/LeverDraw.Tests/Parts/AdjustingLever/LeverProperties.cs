using CsCheck;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.Outlines;
using LeverDraw.Tests.Support;
using System.Collections.Immutable;
using static LeverDraw.Parts.AdjustingLever.LeverFields;

namespace LeverDraw.Tests.Parts.AdjustingLever;

public class LeverProperties
{
    private const double Nano = 1e-9;

    [Fact]
    public void Outlines_AreSoundAndCounterClockwise() => RandomLevers.Levers.Sample(
        lever =>
        {
            foreach (Contour outline in new[] { lever.SideProfile, lever.ForkProfile })
            {
                Assert.True(ContourMeasure.Area(outline) > 0);
                Assert.Empty(ContourSelfCheck.Find(outline));
            }
        },
        iter: 300,
        print: RandomLevers.Print);

    [Fact]
    public void Blends_AreTangentAtBothEnds() => RandomLevers.Levers.Sample(
        lever =>
        {
            AllTangent(lever.Side.Edges, name => name.StartsWith("head-fillet", StringComparison.Ordinal) || name is "nose" or "neck-fillet-lower" or "neck-fillet-upper" or "pad-corner-left" or "pad-corner-right", lever.Sizes[Fillet].Millimetres == 0);
            AllTangent(lever.Fork.Edges, name => name.Contains("fillet", StringComparison.Ordinal) || name.Contains("round", StringComparison.Ordinal) || name.StartsWith("crotch", StringComparison.Ordinal) || name.Contains("corner", StringComparison.Ordinal), false);
        },
        iter: 300,
        print: RandomLevers.Print);

    [Fact]
    public void Sizes_AreFoundAgainOnTheOutlines() => RandomLevers.Levers.Sample(
        lever =>
        {
            double Size(LeverDraw.Profiles.SizeField field) => lever.Sizes[field].Millimetres;
            SideFeatures side = lever.Side;
            Assert.Equal(Size(PadThickness), ChordThrough(lever.SideProfile, side.PadCentre, new(1, 0)), Nano);
            Assert.Equal(Size(TongueThickness), ChordThrough(lever.SideProfile, side.NoseCentre, side.Tongue.Across), Nano);
            Assert.Equal(Size(ArmThickness), (side.ArmRight - side.ArmLeft).Length, Nano);
            Assert.Equal(0, EdgeDistance(side.ArmFaceRight, side.ArmRight), Nano);
            Assert.Equal(0, EdgeDistance(side.ArmFaceLeft, side.ArmLeft), Nano);
            // Calipers find a tapered arm's thickness: no fillet reaches so far down.
            Assert.True(lever.Forms.Arms != Tapered || (side.ArmFaceRight.End.Y >= side.ArmRight.Y - Nano && side.ArmFaceRight.Start.Y <= side.ArmRight.Y && side.ArmFaceLeft.Start.Y >= side.ArmLeft.Y - Nano));
            Assert.Equal(Size(ArmLength), -side.PadCentre.Y, Nano);
            Assert.Equal(Size(PadLength), side.PadTop - side.PadBottom, Nano);
            Assert.Equal(side.PadBottom, lever.SideProfile.Box.MinY, Nano);
            Assert.Equal(Size(TongueLength), (side.NoseCentre - Point2D.Origin).Length, Nano);
            if (lever.Sizes.Find(NeckThickness) is { } neck)
                Assert.Equal(neck.Millimetres, ChordThrough(lever.SideProfile, side.Tongue.At(Size(TongueLength) - (Size(TongueThickness) / 2), 0), side.Tongue.Across), Nano);

            ImmutableArray<Interval> arms = ContourChords.HorizontalAt(lever.ForkProfile, Math.Min(lever.Fork.GapSide.PointAt(0.5).Y, lever.Fork.ArmOuter.PointAt(0.5).Y));
            Assert.Equal(2, arms.Length);
            Assert.Equal(Size(ForkGap), arms[1].From - arms[0].To, Nano);
            Assert.Equal(Size(ArmWidth), arms[0].Length, Nano);
            Assert.Equal(Size(HeadWidth), ContourChords.HorizontalAt(lever.ForkProfile, 0)[0].Length, Nano);
            Assert.Equal(Size(TongueWidth), 2 * lever.Fork.TongueSide.Start.X, Nano);
            double foot = lever.Sizes.Find(FootFillet)?.Millimetres ?? Size(Fillet);
            Assert.Equal(foot, lever.Fork.TongueFillet is { } footArc ? footArc.Centre.DistanceTo(footArc.PointAt(0.5)) : 0, Nano);
            Assert.Equal(-(Size(HeadHeight) / 2) - Size(Web), lever.Fork.GapTop, Nano);
            Assert.Equal(lever.SideProfile.Box.MaxY, lever.ForkProfile.Box.MaxY, Nano);
        },
        iter: 300,
        print: RandomLevers.Print);

    /// <summary>Stock on a boss's face puts it farther out than the shoulder reaches beside it: then the boss's lower side shows too.</summary>
    [Fact]
    public void ForkView_ShowsBossesInFull() => RandomLevers.Levers.Where(l => l.Boss is not null).Sample(
        lever =>
        {
            Contour outline = LeverViews.Fork(lever).Outlines[0].Contour;
            Assert.Empty(ContourSelfCheck.Find(outline));
            double r = lever.Boss!.Diameter.Millimetres / 2, face = lever.Hole.HalfLength.Millimetres;
            for (double share = -0.99; share < 1; share += 0.11)
                Assert.True(ContourChords.HorizontalAt(outline, share * r).Any(c => c.From < -face + Nano && c.To > face - Nano), FormattableString.Invariant($"level {share * r}"));
            if (lever.Fork.ShoulderStart.Y > -r && ShoulderHeight.At(lever.Fork, face) < -r)
                Assert.Contains(outline.Edges, e => e is LineEdge line && Math.Abs(line.From.Y + r) < Nano && Math.Abs(line.To.Y + r) < Nano);
        },
        iter: 300,
        print: RandomLevers.Print);

    [Fact]
    public void Volume_IsLessThanTheBoxAndMoreThanNothing() => RandomLevers.Levers.Sample(
        lever =>
        {
            MassProperties mass = LeverMass.Of(lever);
            Box2D side = lever.SideProfile.Box, fork = lever.ForkProfile.Box;
            Assert.InRange(mass.Volume, 1, side.Width * fork.Width * fork.Height);
            // No body of this volume has less surface than a ball.
            Assert.True(mass.Surface > Math.Pow(36 * Math.PI * mass.Volume * mass.Volume, 1.0 / 3));
        },
        iter: 60,
        print: RandomLevers.Print);

    [Fact]
    public void Views_CanBeMadeOfEveryLever() => RandomLevers.Levers.Sample(
        lever =>
        {
            double reach = lever.Boss is null ? 0 : 1;
            Assert.Equal(lever.SideProfile.Box, LeverViews.Side(lever).Outlines[0].Contour.Box);
            Box2D fork = LeverViews.Fork(lever).Outlines[0].Contour.Box;
            Assert.True(lever.ForkProfile.Box.Inflated(1e-6 + reach).Contains(fork));
            Assert.Empty(ContourSelfCheck.Find(LeverViews.Fork(lever).Outlines[0].Contour));
            Box2D top = LeverViews.Top(lever).Outlines[0].Contour.Box;
            // Slanted edges are followed by arcs to a thousandth.
            Assert.Equal(lever.ForkProfile.Box.Width, top.Width, 0.002);
            Assert.Equal(lever.SideProfile.Box.MinX, top.MinY, 0.001);
            Assert.Equal(lever.SideProfile.Box.MaxX, top.MaxY, 0.001);
            Assert.NotEmpty(LeverViews.SectionThroughPin(lever).Hatching);
            Assert.NotEmpty(LeverViews.TongueTrue(lever).Edges);
        },
        iter: 60,
        print: RandomLevers.Print);

    private static void AllTangent(ImmutableArray<NamedEdge> edges, Func<string, bool> which, bool sharp)
    {
        for (int i = 0; i < edges.Length; i++)
        {
            if (!which(edges[i].Name) || (sharp && edges[i].Name == "nose"))
                continue;
            NamedEdge before = edges[(i + edges.Length - 1) % edges.Length], after = edges[(i + 1) % edges.Length];
            Assert.True(Math.Abs(before.Edge.TangentAt(1).Cross(edges[i].Edge.TangentAt(0))) < Nano, before.Name + " / " + edges[i].Name);
            Assert.True(Math.Abs(edges[i].Edge.TangentAt(1).Cross(after.Edge.TangentAt(0))) < Nano, edges[i].Name + " / " + after.Name);
        }
    }

    private static double ChordThrough(Contour contour, Point2D at, Vector2D along)
    {
        foreach (Interval chord in ContourChords.At(contour, at, along))
        {
            if (chord.From < 0 && chord.To > 0)
                return chord.Length;
        }

        return 0;
    }

    // The stated level may lie under a fillet: it is on the face's carrier then.
    private static double EdgeDistance(Edge face, Point2D p) => face is ArcEdge arc
        ? Math.Abs(arc.Centre.DistanceTo(p) - arc.Radius)
        : Math.Abs(face.TangentAt(0).Cross(p - face.Start));
}
