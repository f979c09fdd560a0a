using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>The lever seen square to the arms, from the back.</summary>
internal static class ForkView
{
    public static ViewGeometry Of(Lever lever)
    {
        ImmutableArray<ViewEdge>.Builder edges = ImmutableArray.CreateBuilder<ViewEdge>();
        SeenLevels levels = SeenLevels.OfSideFromBack(lever);
        foreach (double z in levels.Visible)
            edges.AddRange(Across(lever, z, LineRole.Edge));
        foreach (double z in levels.Hidden)
            edges.AddRange(Across(lever, z, LineRole.Hidden));

        Contour outline = lever.Boss is { } boss ? WithBosses(lever, boss) : lever.ForkProfile;
        if (lever.Hole.Supply != LeverFields.Solid)
        {
            for (int sign = -1; sign <= 1; sign += 2)
                edges.Add(new(LineRole.Hidden, HoleSide(lever, sign)));
        }

        if (lever.Mark is { Place: LeverFields.ArmBack } mark)
            edges.AddRange(MarkInk.Of(lever, mark));
        else if (lever.Mark is { } onHead)
            edges.AddRange(MarkProud.OnHead(lever, onHead));
        double face = lever.Hole.HalfLength.Millimetres;
        // It ends where it leaves the metal: in the gap it would cut through the numbers that belong there.
        edges.Add(new(LineRole.Centre, new LineEdge(new(0, lever.Fork.GapTop), new(0, lever.Fork.TongueTop))));
        edges.Add(new(LineRole.Centre, new LineEdge(new(-face, 0), new(face, 0))));
        return new ViewGeometry { Outlines = [new("fork-profile", outline)], Edges = edges.ToImmutable() };
    }

    /// <summary>The hole's upper or lower side, out to the head's faces or, below, to the shoulders.</summary>
    private static LineEdge HoleSide(Lever lever, int sign)
    {
        double left = -Reach(lever, -1, sign), right = Reach(lever, 1, sign);
        return new LineEdge(new(left, sign * lever.Hole.DiameterAt(left) / 2), new(right, sign * lever.Hole.DiameterAt(right) / 2));
    }

    private static double Reach(Lever lever, int side, int sign)
    {
        double x = lever.Hole.HalfLength.Millimetres;
        if (sign > 0)
            return x;
        // The shoulder falls away faster than any pin tapers, so the two lines meet once.
        double Above(double at) => ShoulderHeight.At(lever.Fork, at) + (lever.Hole.DiameterAt(side * at) / 2);
        return Above(x) <= 0 ? x : Falling(Above, x, lever.Fork.ShoulderCorner.X);
    }

    /// <summary>How far out the shoulder has fallen to a level that it crosses between two distances from the mid-plane.</summary>
    private static double WhereShoulderIs(Lever lever, double level, double from, double to) =>
        Falling(x => ShoulderHeight.At(lever.Fork, x) - level, from, to);

    /// <summary>Where a falling function passes zero, by halving.</summary>
    private static double Falling(Func<double, double> value, double from, double to)
    {
        for (int i = 0; i < 60; i++)
        {
            double middle = (from + to) / 2;
            (from, to) = value(middle) > 0 ? (middle, to) : (from, middle);
        }

        return (from + to) / 2;
    }

    /// <summary>The outline with the bosses' ends standing out of the head's sides, down to the shoulders.</summary>
    private static Contour WithBosses(Lever lever, Boss boss)
    {
        double r = boss.Diameter.Millimetres / 2, face = lever.Hole.HalfLength.Millimetres, side = lever.Fork.ShoulderStart.X;
        double foot = Math.Max(ShoulderHeight.At(lever.Fork, face), -r);
        Point2D meets = foot > -r ? new(face, foot) : new(lever.Fork.ShoulderStart.Y > -r ? WhereShoulderIs(lever, -r, side, face) : side, -r);
        List<Edge> right = [];
        bool above = false;
        foreach (NamedEdge piece in lever.Fork.Edges)
        {
            if (!piece.Name.EndsWith("-right", StringComparison.Ordinal))
                continue;
            if (piece.Name == "head-side-right")
            {
                double z0 = piece.Edge.Start.Y;
                if (foot > -r)
                {
                    right.Add(new LineEdge(new(face, foot), new(face, r)));
                }
                else
                {
                    if (z0 < -r - Coincidence.Distance)
                        right.Add(new LineEdge(piece.Edge.Start, new(side, -r)));
                    right.Add(new LineEdge(right[^1].End, new(face, right[^1].End.Y)));
                    right.Add(new LineEdge(right[^1].End, new(face, r)));
                }

                right.Add(new LineEdge(new(face, r), new(side, r)));
                if (piece.Edge.End.Y - r > Coincidence.Distance)
                    right.Add(new LineEdge(new(side, r), piece.Edge.End));
                above = true;
            }
            else if (!above && ShoulderHeight.IsPiece(piece.Name) && piece.Edge.End.X < meets.X - Coincidence.Distance)
            {
                if (piece.Edge.Start.X > meets.X + Coincidence.Distance)
                    right.Add(EdgeTo(piece.Edge, meets));
            }
            else
            {
                right.Add(piece.Edge);
            }
        }

        Point2D top = right[^1].End, bottom = right[0].Start;
        List<Edge> all = [];
        if (bottom.X > Coincidence.Distance)
            all.Add(new LineEdge(new(-bottom.X, bottom.Y), bottom));
        all.AddRange(right);
        if (top.X > Coincidence.Distance)
            all.Add(new LineEdge(top, new(-top.X, top.Y)));
        for (int i = right.Count - 1; i >= 0; i--)
            all.Add(right[i].Transformed(Transform2D.MirrorX).Reversed());
        return Contour.Of(all);
    }

    private static Edge EdgeTo(Edge edge, Point2D to) =>
        edge is ArcEdge arc ? ArcEdge.Between(arc.Centre, arc.Start, to, arc.Sweep > 0) : new LineEdge(edge.Start, to);

    private static IEnumerable<ViewEdge> Across(Lever lever, double z, LineRole role) =>
        ContourChords.HorizontalAt(lever.ForkProfile, z).Select(c => new ViewEdge(role, new LineEdge(new(c.From, z), new(c.To, z))));
}
