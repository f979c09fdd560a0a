using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>Places for signs that stand on a surface: straight on it where they can be read from the bottom or the right, else at the end of a leader (ISO 21920-1, ISO 5459 practice, from memory).</summary>
internal static class SurfaceCandidates
{
    private static readonly double[] Lengths = [7, 11, 16, 22, 29, 37];

    private static readonly double[] Stems = [0.6, 1.6, 3, 5, 8];

    public static PlaceSet For(SurfaceTexture texture, PlacingContext context)
    {
        var shape = new TextureShape(texture.Sign, context.Style);
        var all = new List<Candidate>(256);
        double order = 0;
        foreach (SurfacePoint place in texture.Places)
        {
            Point2D at = context.ToBlock.Apply(place.At);
            Vector2D outward = context.ToBlock.Apply(place.Outward).Unit();
            double reading = outward.Angle - (Math.PI / 2);
            if (Math.Abs(Math.IEEERemainder(reading - PlacingContext.ReadingAngle(reading), 2 * Math.PI)) < 1e-9)
                all.Add(OnSurface(shape, at, outward, reading, order, context));
            foreach (double turn in (ReadOnlySpan<double>)[0.6, -0.6, 0.9, -0.9, 0.3, -0.3])
                AddLeaders(all, shape, at, Vector2D.FromAngle(outward.Angle + turn), order + 3, context);
            order += 0.1;
        }

        return new ReadyPlaces(all);
    }

    public static PlaceSet For(DatumFeature datum, PlacingContext context)
    {
        var all = new List<Candidate>(64);
        double order = 0;
        foreach (SurfacePoint place in datum.Places)
        {
            Point2D at = context.ToBlock.Apply(place.At);
            Vector2D outward = context.ToBlock.Apply(place.Outward).Unit();
            foreach (double stem in Stems)
            {
                var shape = new DatumIndicator(datum.Letter, context.Style, stem);
                // The triangle stands on the surface's own line: only what lies beyond it must be clear.
                OrientedBox box = shape.Box(at + (outward * (context.Style.Clearance + Touch)), outward, 0, 0);
                all.Add(new Candidate([box], [], order + (stem * 1.5), () => new AnnotationInk([.. shape.Ink(at, outward, 0, null, context.View)], null)));
            }

            order += 0.1;
        }

        return new ReadyPlaces(all);
    }

    /// <summary>Half a wide line: what stands on a line may touch that much of it, millimetres.</summary>
    private const double Touch = 0.25;

    private static Candidate OnSurface(TextureShape shape, Point2D at, Vector2D outward, double reading, double cost, PlacingContext context)
    {
        OrientedBox box = shape.Box(at + (outward * (context.Style.Clearance + Touch)), reading, 0);
        return new Candidate([box], [], cost, () => new AnnotationInk([.. shape.Ink(at, reading, null, context.View)], null));
    }

    private static void AddLeaders(List<Candidate> all, TextureShape shape, Point2D tip, Vector2D direction, double cost, PlacingContext context)
    {
        DraftingStyle style = context.Style;
        bool toRight = direction.X >= 0;
        foreach (double length in Lengths)
        {
            double slant = LeaderShape.SlantLength(length, style);
            Point2D elbow = tip + (direction * slant);
            Point2D end = elbow + new Vector2D((shape.Width + 1) * (toRight ? 1 : -1), 0);
            Point2D foot = new((toRight ? elbow.X + 1 : end.X) + shape.Left, elbow.Y);
            OrientedBox box = shape.Box(foot, 0, style.Clearance);
            if (box.Meets(tip, elbow - (direction * 0.01)))
                continue;
            all.Add(new Candidate(
                [box],
                [LeaderShape.Slant(tip, direction, slant), new Stroke(elbow, end, StrokeKind.Leader)],
                cost + (length * 0.16),
                () => new AnnotationInk(
                    [
                        new PlotStroke(LineRole.Dimension, new LineEdge(tip, elbow), null, context.View),
                        new PlotStroke(LineRole.Dimension, new LineEdge(elbow, end), null, context.View),
                        Arrowhead.At(tip, -direction, style, null, context.View),
                        .. shape.Ink(foot, 0, null, context.View),
                    ],
                    null),
                Arrowhead.Back(tip, -direction, style)));
        }
    }
}
