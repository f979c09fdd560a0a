using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>The step's theoretical ledge at the top of the pads, as thin lines: the fillet takes its corner away, but the pad's length is measured to it.</summary>
internal static class LeverStepLedge
{
    /// <summary>Share of its length by which the line of an edge that is not there stops short of the outline at either end (ISO 128 practice, from memory).</summary>
    private const double StopsShort = 0.04;

    public static IEnumerable<ViewEdge> Of(Lever lever)
    {
        SideFeatures side = lever.Side;
        foreach (Interval chord in ContourChords.HorizontalAt(lever.SideProfile, side.PadTop))
        {
            double gap = StopsShort * (chord.To - chord.From);
            if (chord.From < side.PadCentre.X && chord.To > side.PadCentre.X)
                yield return new ViewEdge(LineRole.Dimension, new LineEdge(new Point2D(chord.From + gap, side.PadTop), new Point2D(chord.To - gap, side.PadTop)));
        }
    }
}
