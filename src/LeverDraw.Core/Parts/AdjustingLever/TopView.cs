using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>The lever seen along the arms from above. Bosses stand over the shoulders and are drawn as their rectangles.</summary>
internal static class TopView
{
    public static ViewGeometry Of(Lever lever)
    {
        PlanSilhouette plan = new(lever.SideProfile, lever.ForkProfile);
        ImmutableArray<ViewEdge>.Builder edges = ImmutableArray.CreateBuilder<ViewEdge>();
        Standing(lever, plan, lever.Fork.TongueSide.Start.X, lever.Fork.TongueFoot.Y, edges);
        Standing(lever, plan, lever.Fork.ShoulderStart.X, lever.Fork.ShoulderStart.Y, edges);

        double face = lever.Hole.HalfLength.Millimetres, side = lever.Fork.ShoulderStart.X;
        Interval depth = ContourChords.HorizontalAt(lever.SideProfile, 0).First(c => c.From < 0 && c.To > 0);
        if (lever.Hole.Supply != LeverFields.Solid)
        {
            foreach (int sign in new[] { -1, 1 })
                edges.Add(new(LineRole.Hidden, new LineEdge(new(-face, sign * lever.Hole.AtLeft.Millimetres / 2), new(face, sign * lever.Hole.AtRight.Millimetres / 2))));
        }

        if (lever.Boss is { } boss)
        {
            double r = boss.Diameter.Millimetres / 2;
            foreach (int sign in new[] { -1, 1 })
            {
                edges.Add(new(LineRole.Edge, new LineEdge(new(sign * side, -r), new(sign * face, -r))));
                edges.Add(new(LineRole.Edge, new LineEdge(new(sign * face, -r), new(sign * face, r))));
                edges.Add(new(LineRole.Edge, new LineEdge(new(sign * face, r), new(sign * side, r))));
            }
        }

        edges.Add(new(LineRole.Centre, new LineEdge(new(-face, 0), new(face, 0))));
        edges.Add(new(LineRole.Centre, new LineEdge(new(0, Math.Min(depth.From, plan.Breaks[0])), new(0, plan.Breaks[^1]))));
        return new ViewGeometry { Outlines = [new("plan", plan.Outline())], Edges = edges.ToImmutable() };
    }

    /// <summary>The upright faces at ±x that stand above a level, where something wider lies below.</summary>
    private static void Standing(Lever lever, PlanSilhouette plan, double x, double level, ImmutableArray<ViewEdge>.Builder edges)
    {
        Box2D above = ContourClip.ByLine(lever.SideProfile, new(0, level), new(1, 0)).Aggregate(Box2D.Empty, (box, c) => box.Union(c.Box));
        double? from = null;
        for (int i = 0; i + 1 < plan.Breaks.Length; i++)
        {
            double middle = (plan.Breaks[i] + plan.Breaks[i + 1]) / 2;
            bool shown = middle > above.MinX && middle < above.MaxX && plan.At(middle).Outer > x + 1e-6;
            if (shown)
                from ??= Math.Max(plan.Breaks[i], above.MinX);
            if (from is { } start && (!shown || i + 2 == plan.Breaks.Length))
            {
                double end = Math.Min(shown ? plan.Breaks[i + 1] : plan.Breaks[i], above.MaxX);
                edges.Add(new(LineRole.Edge, new LineEdge(new(x, start), new(x, end))));
                edges.Add(new(LineRole.Edge, new LineEdge(new(-x, start), new(-x, end))));
                from = null;
            }
        }
    }
}
