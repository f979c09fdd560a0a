using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Writers.Svg;

/// <summary>A line of lettering as one path, its letters put on their baseline.</summary>
internal readonly struct SvgGlyphs(SvgPath path, PlotText text)
{
    public void Write()
    {
        Vector2D along = Vector2D.FromAngle(text.Angle);
        foreach (PlotGlyph glyph in text.Glyphs)
        {
            Vector2D offset = (along * glyph.OffsetX) + (along.Left * glyph.OffsetY);
            var place = new Transform2D(glyph.Scale, text.Angle, false, (text.Anchor - Point2D.Origin) + offset);
            foreach (var stroke in glyph.Shape.Strokes)
            {
                path.MoveTo(place.Apply(stroke[0].Start));
                foreach (Edge edge in stroke)
                    path.Along(edge, place);
            }
        }
    }
}
