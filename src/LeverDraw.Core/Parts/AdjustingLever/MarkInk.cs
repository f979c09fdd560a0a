using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>The raised mark's letters as lines of the view that faces them.</summary>
internal static class MarkInk
{
    public static IEnumerable<ViewEdge> Of(Lever lever, RaisedMark mark)
    {
        PlotText text = MarkSeat.On(mark, lever.Fork, lever.Side, lever.Hole).Letters(mark);
        Transform2D place = Transform2D.Turn(text.Angle).Then(Transform2D.Move(text.Anchor.X, text.Anchor.Y));
        foreach (PlotGlyph glyph in text.Glyphs)
        {
            Transform2D shape = Transform2D.Enlarge(glyph.Scale).Then(Transform2D.Move(glyph.OffsetX, glyph.OffsetY)).Then(place);
            foreach (Edge edge in glyph.Shape.Strokes.SelectMany(chain => chain))
                yield return new ViewEdge(LineRole.RaisedMark, edge.Transformed(shape));
        }
    }
}
