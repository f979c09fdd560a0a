using System.Collections.Immutable;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Plotting;

/// <summary>Shifts ink on the paper; nothing is turned or scaled.</summary>
public static class PlotMove
{
    public static PlotItem Moved(this PlotItem item, Vector2D by)
    {
        Transform2D move = Transform2D.Move(by.X, by.Y);
        return item switch
        {
            PlotStroke stroke => stroke with { Edge = stroke.Edge.Transformed(move) },
            PlotLoop loop => loop with { Contour = loop.Contour.Transformed(move) },
            PlotFill fill => fill with { Corners = [.. fill.Corners.Select(c => c + by)] },
            PlotText text => text with { Anchor = text.Anchor + by },
            PlotHatch hatch => hatch with
            {
                Region = [.. hatch.Region.Select(c => c.Transformed(move))],
                Lines = [.. hatch.Lines.Select(l => l.Transformed(move))],
            },
            _ => throw new ArgumentOutOfRangeException(nameof(item), item, "Unknown kind of ink."),
        };
    }

    public static PlotDimension Moved(this PlotDimension dimension, Vector2D by) =>
        dimension with { Points = [.. dimension.Points.Select(p => p + by)], TextMiddle = dimension.TextMiddle + by };
}
