using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>Where a linear dimension may stand: tiers outside the view, beside the feature, or on the feature itself; text in the middle, slid, or beside the arrows.</summary>
internal static class LinearCandidates
{
    private const int Tiers = 6;

    /// <summary>Of standing on the side that is not the better one: no tier on that one is so dear.</summary>
    private const double WorseSide = 24;

    /// <summary>Of the first tier's distance, what a slanting line keeps from the part beside it: it stands in the view, not outside it.</summary>
    private const double SlantingTier = 0.4;

    /// <summary>Of the first tier's distance, what a line keeps from the part inside a detail's circle: the number still stands between.</summary>
    private const double WithinCircle = 0.65;

    /// <summary>Of a line so near to a detail's circle, inside or out, that the two blur or cross at a slant, or whose arrows lie on it.</summary>
    private const double AtCircle = 18;

    /// <summary>Of a line that crosses outlines between its measured points: the part is not hollow there.</summary>
    private const double AcrossPart = 40;

    public static PlaceSet For(LinearDimension dimension, string id, PlacingContext context)
    {
        DraftingStyle style = context.Style;
        Point2D p = context.ToBlock.Apply(dimension.First);
        Point2D q = context.ToBlock.Apply(dimension.Second);
        Vector2D u = Vector2D.FromAngle(context.ToBlock.ApplyToDirection(dimension.Direction));
        if (Math.Abs(u.X) < 1e-12 || Math.Abs(u.Y) < 1e-12)
            u = new Vector2D(Math.Round(u.X), Math.Round(u.Y));
        bool mirrored = context.ToBlock.Mirrored;
        if (u.Dot(q - p) < 0)
            (p, q) = (q, p);
        var frame = new LinearFrame(id, dimension, context, p, q, u);

        bool square = u.X == 0 || u.Y == 0;
        (double low, double high) = square ? context.Extent(u.Left) : Beside(frame, u, context);
        DimensionSides left = mirrored ? DimensionSides.Right : DimensionSides.Left;
        DimensionSides right = mirrored ? DimensionSides.Left : DimensionSides.Right;
        double Worse(DimensionSides side) => dimension.Better.HasFlag(side) ? 0 : WorseSide;
        for (int tier = 0; tier < Tiers; tier++)
        {
            double away = style.FirstTier + (tier * style.TierSpacing);
            if (dimension.Sides.HasFlag(left))
                Add(high + away, (tier * 3.0) + Worse(left));
            if (dimension.Sides.HasFlag(right))
                Add(low - away, (tier * 3.0) + Worse(right));
        }

        if (square && dimension.Slide is null && !dimension.OnlyOutside)
        {
            // Nearer to the feature than the view's own edge, where there is a hollow.
            double top = Math.Max(frame.Edge.Most, frame.OtherEdge.Most);
            double bottom = Math.Min(frame.Edge.Least, frame.OtherEdge.Least);
            for (int step = context.Circle is not null ? -1 : 0; step < 3; step++)
            {
                double away = step < 0 ? WithinCircle * style.FirstTier : style.FirstTier + (step * style.TierSpacing);
                if (dimension.Sides.HasFlag(left) && top + away < high - 1)
                    Add(top + away, 9 + (Math.Abs(step) * 3.0) + Across(top + away));
                if (dimension.Sides.HasFlag(right) && bottom - away > low + 1)
                    Add(bottom - away, 9 + (Math.Abs(step) * 3.0) + Across(bottom - away));
            }
        }

        if (dimension.Slide is { } slide)
        {
            int last = slide.To > slide.From ? 6 : 0;
            for (int step = 0; step <= last; step++)
            {
                double shift = (slide.From + ((slide.To - slide.From) * step / 6)) * context.Scale * (mirrored ? -1 : 1);
                frame.AddOnFeature(shift, 1 + (Math.Abs(step - (last / 2)) * 0.4));
            }
        }

        return new LinearPlaces(frame);

        // In a detail the part is large: a line on it would lie along its outline.
        double Across(double level) => !context.IsOutlineBetween(frame.At(frame.From, level), frame.At(frame.To, level)) ? 0 : context.Circle is null ? AcrossPart : PlacingCosts.Broken;

        void Add(double level, double cost) => frame.AddTextPlaces(level, cost + (square && (AtOwnCircle(level) || context.Circles.Any(c => Grazes(c, level, frame, u))) ? AtCircle : 0));

        bool AtOwnCircle(double level) =>
            context.Circle is { } circle && (IsAt(circle, level, u) || IsOn(circle, frame.At(frame.From, level), style) || IsOn(circle, frame.At(frame.To, level), style));
    }

    /// <summary>Within a sixth of its radius inside the circle, or 2 mm outside it.</summary>
    private static bool IsAt(ArcEdge circle, double level, Vector2D u)
    {
        double beyond = Math.Abs(level - u.Left.Dot(circle.Centre - Point2D.Origin)) - circle.Radius;
        return beyond > -circle.Radius / 6 && beyond < 2;
    }

    /// <summary>The dimension line runs along a circle where that turns, nearer than an arrowhead is wide: the two would merge.</summary>
    private static bool Grazes(ArcEdge circle, double level, LinearFrame frame, Vector2D u)
    {
        const double Beside = 1.2;
        Vector2D centre = circle.Centre - Point2D.Origin;
        return Math.Abs(Math.Abs(level - u.Left.Dot(centre)) - circle.Radius) < Beside && u.Dot(centre) is var turn && turn > frame.From - Beside && turn < frame.To + Beside;
    }

    /// <summary>An arrow at a point lies on it.</summary>
    private static bool IsOn(ArcEdge circle, Point2D point, DraftingStyle style) =>
        Math.Abs((point - circle.Centre).Length - circle.Radius) < style.ArrowLength;

    /// <summary>From where the tiers of a slanting dimension are counted: its points, or the part between them where that reaches farther. Else its line would lie on a tongue that grows toward its foot.</summary>
    private static (double Low, double High) Beside(LinearFrame frame, Vector2D u, PlacingContext context)
    {
        Interval part = context.ExtentBetween(u, frame.From, frame.To);
        double nearer = (1 - SlantingTier) * context.Style.FirstTier;
        return (Math.Min(frame.Edge.Least, part.From + nearer), Math.Max(frame.Edge.Most, part.To - nearer));
    }
}
