using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Parts.AdjustingLever.Sheets;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.FoundrySheets;

/// <summary>Letter M and the stock on each group of machined faces, and where to gate.</summary>
internal static class StockMarks
{
    public const string Letter = "M";

    /// <summary>A gate keeps that far from a raised mark, or its stub takes letters along, millimetres.</summary>
    private const double FromMark = 2;

    /// <summary>Its arrow keeps that far from where a tapered arm's thickness is dimensioned, or two arrowheads meet there, millimetres.</summary>
    private const double FromThickness = 2.5;

    /// <summary>And that far from the level of the pivot's axis, whose line would go through it, millimetres.</summary>
    private const double FromAxis = 0.8;

    public static IEnumerable<Annotation> OnHead(HeadSection section, Length stock, DimensionText text)
    {
        double middle = (section.Depth.From + section.Depth.To) / 2, reach = section.Depth.To - section.Depth.From;
        int toward = section.Walls.FirstOrDefault(w => (middle - w.Joint.Millimetres) * w.Toward >= 0)?.Toward ?? 1;
        bool boss = section.Shape.Boss is not null;
        IEnumerable<double> levels = boss ? [0.15, -0.15] : [0.12, -0.12, 0.25, -0.25];
        return Mark(CastingFields.HeadAllowance.Name, stock, text, [.. levels.SelectMany(s => (Point2D[])[At(1, s), At(-1, s)])]);

        Point2D At(int side, double share) => (middle + (share * reach)) is var n ? new Point2D(side * section.HalfWidth(n, toward, boss), n) : default;
    }

    /// <summary>From outside: a leader to the far face would lie across the pad.</summary>
    public static IEnumerable<Annotation> OnPads(SideFeatures side, Length stock, DimensionText text)
    {
        SurfacePoint[] places =
        [
            .. from arc in new[] { side.CrownArcLeft, side.CrownArcRight }
               // Off the middle, where the crown's centre line ends.
               from share in (double[])[0.67, 0.33, 0.78, 0.22]
               let at = arc.PointAt(share)
               select new SurfacePoint(at, (at - arc.Centre).Unit()),
        ];
        return Mark(CastingFields.PadAllowance.Name, stock, text, [.. places.Select(p => p.At)], [.. places.Select(p => p.Outward)]);
    }

    /// <summary>On a bulb's round alone: its neck is left as cast.</summary>
    public static IEnumerable<Annotation> OnTongue(Lever shape, Length stock, DimensionText text)
    {
        SideFeatures side = shape.Side;
        string[] names = shape.Forms.Tongue == LeverFields.Bulb ? ["nose"] : ["nose", "nose-end", "flank-upper", "nose-corner-lower"];
        Edge[] faces = [.. names.Select(side.Find).OfType<Edge>()];
        return Mark(CastingFields.TongueAllowance.Name, stock, text, [.. faces.SelectMany(f => new[] { f.PointAt(0.35), f.PointAt(0.65) })]);
    }

    /// <summary>The head's back: the thickest metal, at the joint, away from every machined face; for want of a place there the arm's, clear of a raised mark.</summary>
    public static Annotation Gate(Lever shape)
    {
        SideFeatures side = shape.Side;
        Interval? mark = MarkProud.OnArmBetween(shape);
        double? thickness = shape.Forms.Arms == LeverFields.Tapered ? LeverArmAnnotations.ThicknessLevel(shape).Millimetres : null;
        SurfacePoint[] onHead = [.. side.Edges.Where(e => e.Name.StartsWith("head-left", StringComparison.Ordinal)).SelectMany(e => new[] { 0.5, 0.3, 0.7, 0.15, 0.85 }.Select(at => On(e.Edge, at))).Where(p => Math.Abs(p.At.Y) > FromAxis)];
        IEnumerable<SurfacePoint> onArm = new[] { 0.3, 0.5, 0.15, 0.65, 0.8, 0.9 }.Select(at => On(side.ArmFaceLeft, at)).Where(p => (mark is not { } m || p.At.Y > m.To + FromMark || p.At.Y < m.From - FromMark) && !(thickness is { } level && Math.Abs(p.At.Y + level) < FromThickness));
        SurfacePoint[] places = [.. onHead, .. onArm];
        return new LeaderNote("gate", 0, new Label(["GATE"]), [.. places.Select(p => p.At)]) { Outward = [.. places.Select(p => p.Outward)], SecondBest = onHead.Length };

        // The outline has its metal on the left.
        static SurfacePoint On(Edge edge, double at) => new(edge.PointAt(at), -edge.TangentAt(at).Unit().Left);
    }

    private static IEnumerable<Annotation> Mark(string name, Length stock, DimensionText text, ImmutableArray<Point2D> targets, ImmutableArray<Vector2D> outward = default)
    {
        if (stock > Length.Zero)
            yield return new LeaderNote(name, stock.Millimetres, new Label([Letter + " " + text.Number(stock)]), targets) { Outward = outward.IsDefault ? [] : outward };
    }
}
