using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Writers.Dxf;

/// <summary>The box of all that is drawn, arcs' outermost points and lettering included, in file units.</summary>
internal static class DxfExtents
{
    public static Box2D Of(PlotSheet sheet, DxfSpace space, DxfContent content)
    {
        Box2D box = Box2D.Empty;
        foreach (PlotView view in sheet.Views.Where(v => v.IsMain))
        {
            Transform2D place = space.OutlineTransform(view);
            foreach (PlotOutline outline in view.Outlines)
            {
                box = box.Union(outline.Contour.Transformed(place).Box);
                if (outline.Centre is { } centre)
                    box = box.Including(place.Apply(centre));
            }
        }

        if (content == DxfContent.Full)
        {
            Box2D paper = sheet.Items.Aggregate(Box2D.Empty, (all, item) => all.Union(OfItem(item)));
            if (!paper.IsEmpty)
                box = box.Including(space.Place(new(paper.MinX, paper.MinY))).Including(space.Place(new(paper.MaxX, paper.MaxY)));
        }

        return box.IsEmpty ? Sheet(sheet, space) : box;
    }

    public static Box2D Sheet(PlotSheet sheet, DxfSpace space) =>
        Box2D.Empty.Including(Point2D.Origin).Including(space.Place(new(sheet.Width, sheet.Height)));

    private static Box2D OfItem(PlotItem item) => item switch
    {
        PlotStroke stroke => stroke.Edge.Box,
        PlotLoop loop => loop.Contour.Box,
        PlotFill fill => Box2D.Of(fill.Corners),
        PlotHatch hatch => hatch.Region.Aggregate(Box2D.Empty, (box, loop) => box.Union(loop.Box)),
        PlotText text => text.Box,
        _ => throw new ArgumentOutOfRangeException(nameof(item)),
    };
}
