using System.Collections.Immutable;
using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>A lever enlarged along its three axes. Alike in a plane, its outline stays exact; unlike, its arcs become ellipses, which lines and arcs follow within <see cref="ArcFit.Error"/>.</summary>
internal static class LeverScaling
{
    public static Lever Apply(Lever lever, double x, double n, double z)
    {
        PlaneScale side = new(n, z), fork = new(x, z);
        return lever with
        {
            Sizes = lever.Sizes.With(Sizes(lever, x, n, z)),
            SideProfile = side.Of(lever.SideProfile),
            ForkProfile = fork.Of(lever.ForkProfile),
            Side = Side(lever.Side, side),
            Fork = Fork(lever.Fork, fork),
            Hole = lever.Hole with
            {
                AtLeft = lever.Hole.AtLeft * side.Mean,
                AtMid = lever.Hole.AtMid * side.Mean,
                AtRight = lever.Hole.AtRight * side.Mean,
                HalfLength = lever.Hole.HalfLength * x,
            },
            Boss = lever.Boss is { } boss ? new Boss(boss.Diameter * side.Mean, boss.Height * x) : null,
            Mark = lever.Mark is { } mark
                ? mark with
                {
                    Height = mark.Height * (mark.Place == LeverFields.HeadFace ? x : n),
                    LetterHeight = mark.LetterHeight * z,
                    Level = MarkSeat.On(mark, lever.Fork, lever.Side, lever.Hole).Middle.Y * z,
                }
                : null,
        };
    }

    private static Dictionary<SizeField, Length> Sizes(Lever lever, double x, double n, double z)
    {
        Dictionary<SizeField, Length> scaled = [];
        foreach (SizeField field in LeverFields.All.OfType<SizeField>())
        {
            if (lever.Sizes.Find(field) is { } size && !CastingFields.All.Contains(field))
                scaled[field] = size.Nominal * Factor(field, x, n, z);
        }

        return scaled;
    }

    private static double Factor(SizeField field, double x, double n, double z)
    {
        if (field == LeverFields.HeadWidth || field == LeverFields.ArmWidth || field == LeverFields.ForkGap || field == LeverFields.TongueWidth || field == LeverFields.BossHeight)
            return x;
        if (field == LeverFields.HeadDepth || field == LeverFields.ArmThickness || field == LeverFields.PadThickness || field == LeverFields.ArmSagitta)
            return n;
        if (field == LeverFields.CrotchRadius || field == LeverFields.ShoulderRadius || field == LeverFields.EdgeRound || field == LeverFields.FootFillet || field == LeverFields.ArmEndCorner)
            return Math.Sqrt(x * z);
        return field == LeverFields.HeadHeight || field == LeverFields.ArmLength || field == LeverFields.PadLength || field == LeverFields.Web || field == LeverFields.ShoulderStart || field == LeverFields.ShoulderEnd
            ? z
            : Math.Sqrt(n * z);
    }

    private static SideFeatures Side(SideFeatures s, PlaneScale by)
    {
        Vector2D along = by.Of(s.Tongue.Along).Unit();
        return new SideFeatures(
            by.Of(s.PadCentre), s.PadTop * by.Y, s.PadBottom * by.Y, by.Of(s.CrownRight), by.Of(s.CrownLeft), by.Of(s.ArmRight), by.Of(s.ArmLeft),
            by.Of(s.ArmMidline)[0], new TongueFrame(along, -along.Left), by.Of(s.NoseCentre), by.Of(s.NoseLower), by.Of(s.NoseUpper), by.Of(s.NoseTip),
            s.NoseRadius * by.Mean, s.Top * by.Y, by.Of(s.Edges));
    }

    private static ForkFeatures Fork(ForkFeatures f, PlaneScale by) => new(
        by.Of(f.HeadCorner), by.Of(f.ShoulderCorner), by.Of(f.ShoulderStart), f.GapTop * by.Y, f.TongueTop * by.Y, by.Of(f.TongueFoot), f.ArmEnd * by.Y, by.Of(f.Edges));

    /// <summary>Enlarges a plane by two factors.</summary>
    private readonly record struct PlaneScale(double X, double Y)
    {
        public double Mean => Math.Sqrt(X * Y);

        private bool Alike => X == Y;

        public Point2D Of(Point2D p) => new(p.X * X, p.Y * Y);

        public Vector2D Of(Vector2D v) => new(v.X * X, v.Y * Y);

        public Contour Of(Contour contour)
        {
            PlaneScale self = this;
            return Alike ? contour.Transformed(Transform2D.Enlarge(X)) : Contour.Of(contour.Edges.SelectMany(e => self.Of(e)));
        }

        public ImmutableArray<NamedEdge> Of(ImmutableArray<NamedEdge> edges)
        {
            PlaneScale self = this;
            return [.. edges.SelectMany(e => self.Of(e.Edge).Select(piece => new NamedEdge(e.Name, piece)))];
        }

        public List<Edge> Of(Edge edge)
        {
            if (Alike)
                return [edge.Transformed(Transform2D.Enlarge(X))];
            if (edge is LineEdge line)
                return [new LineEdge(Of(line.From), Of(line.To))];
            List<Edge> fitted = [];
            PlaneScale self = this;
            ArcFit.Add(fitted, t => self.Of(edge.PointAt(t)), 0, 1);
            return fitted;
        }
    }
}
