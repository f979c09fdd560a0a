using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Writers.Dxf;

/// <summary>Pieces of ink to entities, whether they stand in model space or in a dimension's block.</summary>
internal sealed class DxfInk(DxfPage page, DxfSpace space)
{
    private const double SmallestPiece = 1e-9;

    private readonly DxfShapes shapes = new(page);
    private readonly DxfHatches hatches = new(page, space);

    /// <param name="layer">The layer for all of it, or null to go by role.</param>
    public void Write(PlotItem item, long owner, string? layer = null)
    {
        var target = new DxfTarget(owner, layer ?? (item is PlotText ? DxfLayers.Text : DxfLayers.Of(item.Role)));
        switch (item)
        {
            case PlotStroke { Edge: var edge } when edge.Length * space.FromPaper < SmallestPiece:
                // A piece of no length stops a machine and shows nothing.
                break;
            case PlotStroke stroke:
                shapes.Edge(stroke.Edge.Transformed(space.PaperTransform), target);
                break;
            case PlotLoop loop:
                shapes.Loop(loop.Contour.Transformed(space.PaperTransform), target);
                break;
            case PlotFill fill:
                shapes.Fill([.. fill.Corners.Select(space.Place)], target);
                break;
            case PlotHatch hatch:
                hatches.Write(hatch, target with { Layer = layer ?? DxfLayers.Of(LineRole.Hatch) });
                break;
            case PlotText text:
                foreach (Edge stroke in DxfSigns.Strokes(text))
                    shapes.Edge(stroke.Transformed(space.PaperTransform), target);
                if (DxfSigns.Rest(text) is { } rest)
                    shapes.Text(rest, space, target);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(item));
        }
    }

    /// <summary>A main view's outlines at true size, and the centres of its holes.</summary>
    public void Outlines(PlotView view, string layer)
    {
        Transform2D place = space.OutlineTransform(view);
        foreach (PlotOutline outline in view.Outlines)
            shapes.Loop(outline.Contour.Transformed(place), new DxfTarget(DxfHandle.ModelSpace, layer));
        foreach (PlotOutline outline in view.Outlines)
        {
            if (outline.Centre is { } centre)
                shapes.Point(place.Apply(centre), new DxfTarget(DxfHandle.ModelSpace, DxfLayers.HoleCentres));
        }
    }
}
