using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;

namespace LeverDraw.Mechanism.Sheets;

/// <summary>All lost turns as one bar, parted by the gaps that cause them, in the order from nut to iron. Neighbours are told apart by hatching and by letter.</summary>
internal static class ShareBar
{
    /// <summary>Of the bar as drawn, mm of the view.</summary>
    private const double Length = 32, Height = 4;

    public static ViewSource Of(ImmutableArray<GapShare> shares)
    {
        var edges = ImmutableArray.CreateBuilder<ViewEdge>();
        var hatching = ImmutableArray.CreateBuilder<HatchedRegion>();
        var labels = ImmutableArray.CreateBuilder<Annotation>();
        double at = 0;
        for (int i = 0; i < shares.Length; i++)
        {
            double width = shares[i].Share * Length;
            if (width <= 0.05)
                continue;
            Point2D[] corners = [new(at, 0), new(at + width, 0), new(at + width, Height), new(at, Height)];
            Edge[] box = [.. corners.Select((c, k) => new LineEdge(c, corners[(k + 1) % 4]))];
            edges.AddRange(box.Select(e => new ViewEdge(LineRole.Edge, e)));
            if (i % 2 == 1)
                hatching.Add(new HatchedRegion([Contour.Of(box)]) { Angle = i == 1 ? Math.PI / 4 : 3 * Math.PI / 4 });
            // Above and below in turn: neighbours' labels need more room than a narrow share has.
            Point2D middle = new(at + (width / 2), i % 2 == 0 ? Height : 0);
            labels.Add(new LeaderNote("share." + MechanismSheet.Letter(shares[i].Gap), shares[i].Share, Label.Of(MechanismSheet.Letter(shares[i].Gap) + " " + Words.Percent(shares[i].Share)), [middle]));
            at += width;
        }

        return new ViewSource("shares", "LOST TURNS BY GAP") { Edges = edges.ToImmutable(), Hatching = hatching.ToImmutable(), Annotations = labels.ToImmutable() };
    }
}
