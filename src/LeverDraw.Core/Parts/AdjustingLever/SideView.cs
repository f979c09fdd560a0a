using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>The lever seen along the pin from the right.</summary>
internal static class SideView
{
    public static ViewGeometry Of(Lever lever)
    {
        ImmutableArray<ViewEdge>.Builder edges = ImmutableArray.CreateBuilder<ViewEdge>();
        SeenLevels levels = SeenLevels.OfForkFromRight(lever);
        foreach (double z in levels.Visible)
            edges.AddRange(Across(lever, z, LineRole.Edge));
        foreach (double z in levels.Hidden)
            edges.AddRange(Across(lever, z, LineRole.Hidden));
        if (lever.Boss is { } boss)
            AddBoss(lever, boss, edges);
        HoleRims(lever, edges);
        if (lever.Mark is { Place: LeverFields.HeadFace } mark)
            edges.AddRange(MarkInk.Of(lever, mark));
        else if (lever.Mark is { } onArm)
            edges.AddRange(MarkProud.OnArm(lever, onArm));

        Box2D box = lever.SideProfile.Box;
        SideFeatures side = lever.Side;
        double reach = lever.Sizes[LeverFields.HeadDepth].Millimetres / 2;
        // A curved arm has a mid-line of its own: the upright is only the hole's.
        double below = side.ArmMidline is ArcEdge ? -reach : Math.Min(0, side.PadBottom);
        edges.Add(new(LineRole.Centre, new LineEdge(new(0, below), new(0, Math.Max(reach, lever.Sizes[LeverFields.HeadHeight].Millimetres / 2)))));
        edges.Add(new(LineRole.Centre, new LineEdge(new(-reach, 0), new(reach, 0))));
        edges.Add(new(LineRole.Centre, new LineEdge(Point2D.Origin, side.NoseTip)));
        if (side.ArmMidline is ArcEdge)
        {
            edges.Add(new(LineRole.Centre, side.ArmMidline));
            edges.Add(new(LineRole.Centre, new LineEdge(new(side.PadCentre.X, box.MinY), new(side.PadCentre.X, side.PadTop))));
        }

        return new ViewGeometry
        {
            Outlines = lever.Hole.Supply == LeverFields.Solid
                ? [new("side-profile", lever.SideProfile)]
                : [new("side-profile", lever.SideProfile), new("pivot-hole", Contour.Circle(Point2D.Origin, lever.Hole.AtRight.Millimetres / 2), Point2D.Origin)],
            Edges = edges.ToImmutable(),
        };
    }

    /// <summary>The boss's rim; where the shoulder rises through the boss's face, the edge they make closes it.</summary>
    private static void AddBoss(Lever lever, Boss boss, ImmutableArray<ViewEdge>.Builder edges)
    {
        Edge rim = BossRim(lever, boss);
        edges.Add(new(LineRole.Edge, rim));
        if (rim is ArcEdge { IsFullCircle: false })
            edges.AddRange(BesideHole(lever, rim.End.Y, new Interval(rim.End.X, rim.Start.X), LineRole.Edge));
    }

    /// <summary>The far rim of a tapered hole: seen through the hole when smaller, hidden when larger.</summary>
    /// <remarks>Two rims nearer to each other than a line's width at twice size would only blot, so of a slight taper the near one stands alone.</remarks>
    private static void HoleRims(Lever lever, ImmutableArray<ViewEdge>.Builder edges)
    {
        const double LeastGap = 0.3;
        double near = lever.Hole.AtRight.Millimetres / 2, far = lever.Hole.AtLeft.Millimetres / 2;
        if (lever.Hole.Supply != LeverFields.Solid && Math.Abs(near - far) >= LeastGap)
            edges.Add(new(far < near ? LineRole.Edge : LineRole.Hidden, ArcEdge.FullCircle(Point2D.Origin, far)));
    }

    /// <summary>The boss's rim as far as it stands clear of the shoulder.</summary>
    internal static ArcEdge BossRim(Lever lever, Boss boss)
    {
        double r = boss.Diameter.Millimetres / 2, level = ShoulderHeight.At(lever.Fork, lever.Hole.HalfLength.Millimetres);
        if (level <= -r)
            return ArcEdge.FullCircle(Point2D.Origin, r);
        double from = Math.Asin(level / r);
        return new ArcEdge(Point2D.Origin, r, from, Math.PI - (2 * from));
    }

    private static IEnumerable<ViewEdge> Across(Lever lever, double z, LineRole role) =>
        ContourChords.HorizontalAt(lever.SideProfile, z).SelectMany(c => BesideHole(lever, z, c, role));

    /// <summary>A level edge without what the hole has taken away.</summary>
    private static IEnumerable<ViewEdge> BesideHole(Lever lever, double z, Interval edge, LineRole role)
    {
        double r = lever.Hole.Supply == LeverFields.Solid ? 0 : lever.Hole.AtRight.Millimetres / 2;
        double half = Math.Abs(z) < r ? Math.Sqrt((r - z) * (r + z)) : 0;
        Interval[] left = half == 0 ? [edge] : [new(edge.From, Math.Min(edge.To, -half)), new(Math.Max(edge.From, half), edge.To)];
        return left.Where(i => i.To - i.From > Coincidence.Distance).Select(i => new ViewEdge(role, new LineEdge(new(i.From, z), new(i.To, z))));
    }
}
