using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>Hole and bosses about the pin's axis, of which the shoulders may hide or hold a part.</summary>
/// <remarks>At a distance x from the mid-plane the body reaches up to the shoulder's height there; a disc about the axis is cut by that level. All lies within the side profile (the hole's wall and the boss's size are checked when the lever is built).</remarks>
internal static class Discs
{
    public static void TakeHole(MassSum sum, Lever lever, OutlineLevels fork)
    {
        PivotHole hole = lever.Hole;
        double face = hole.HalfLength.Millimetres, slant = Math.Sqrt(1 + (hole.Taper.Rate * hole.Taper.Rate / 4));
        for (int side = -1; side <= 1; side += 2)
        {
            Over(0, face, x =>
            {
                double r = hole.DiameterAt(side * x) / 2;
                return (Math.PI * r * r, 0, 2 * Math.PI * r * slant);
            }, side, -1, sum);

            // Past the face the drill still runs through the shoulders.
            double r0 = hole.DiameterAt(side * face) / 2;
            double reach = fork.ChordsAt(-r0).Length / 2;
            if (reach > face)
            {
                foreach ((double from, double to) in Pieces(lever, face, reach))
                {
                    Over(from, to, x =>
                    {
                        double r = hole.DiameterAt(side * x) / 2, level = ShoulderHeight.At(lever.Fork, x);
                        (double area, double moment) = Below(r, level);
                        return (area, moment, r * ArcBelow(r, level) * slant);
                    }, side, -1, sum);
                }
            }

            sum.Surface -= MouthArea(lever, side, face);
        }
    }

    public static void AddBosses(MassSum sum, Lever lever, double diameter, double height)
    {
        double r = diameter / 2, face = lever.Hole.HalfLength.Millimetres, from = face - height;
        for (int side = -1; side <= 1; side += 2)
        {
            foreach ((double a, double b) in Pieces(lever, from, face))
            {
                Over(a, b, x =>
                {
                    double level = ShoulderHeight.At(lever.Fork, x);
                    (double area, double moment) = Below(r, level);
                    return ((Math.PI * r * r) - area, -moment, r * ((2 * Math.PI) - ArcBelow(r, level)));
                }, side, 1, sum);
            }

            // The boss's face, less the piece of shoulder and head's side it covers.
            double top = ShoulderHeight.At(lever.Fork, face);
            sum.Surface += (Math.PI * r * r) - Below(r, top).Area;
            sum.Surface -= Covered(lever, r, Math.Max(-r, top), r);
        }
    }

    /// <summary>Area of the part of a disc of radius r below a level, and its moment about the axis's level.</summary>
    private static (double Area, double Moment) Below(double r, double level)
    {
        if (level >= r)
            return (Math.PI * r * r, 0);
        if (level <= -r)
            return (0, 0);
        double half = Math.Sqrt((r - level) * (r + level));
        return ((r * r * (Math.PI - Math.Acos(level / r))) + (level * half), -2.0 / 3 * half * half * half);
    }

    private static double ArcBelow(double r, double level) => 2 * (Math.PI - Math.Acos(Math.Clamp(level / r, -1, 1)));

    private static double MouthArea(Lever lever, int side, double face)
    {
        double r = lever.Hole.DiameterAt(side * face) / 2;
        // On a boss the face is flat; below it, and without one, the mouth lies on head's side and shoulder.
        if (lever.Boss is null)
            return Covered(lever, r, -r, r);
        double top = ShoulderHeight.At(lever.Fork, face);
        return (Math.PI * r * r) - Below(r, top).Area + (top > -r ? Covered(lever, r, -r, top) : 0);
    }

    /// <summary>Area of the right side of the body inside the disc between two heights: chord of the disc times the outline's slant.</summary>
    private static double Covered(Lever lever, double r, double from, double to)
    {
        double sum = 0;
        foreach (NamedEdge piece in lever.Fork.Edges)
        {
            if (!piece.Name.EndsWith("-right", StringComparison.Ordinal) || !(piece.Name.StartsWith("shoulder", StringComparison.Ordinal) || piece.Name.StartsWith("head-side", StringComparison.Ordinal)))
                continue;
            Box2D box = piece.Edge.Box;
            double a = Math.Max(from, box.MinY), b = Math.Min(to, box.MaxY);
            if (b - a <= 1e-12)
                continue;
            foreach ((double node, double weight) in GaussLegendre.Twenty)
            {
                (double sin, double cos) = Math.SinCos(node * Math.PI / 2);
                double z = ((a + b) / 2) + ((b - a) / 2 * sin);
                double slant = piece.Edge is LineEdge line
                    ? line.Length / Math.Abs(line.To.Y - line.From.Y)
                    : SlantOf((ArcEdge)piece.Edge, z);
                sum += weight * (b - a) / 2 * cos * (Math.PI / 2) * slant * 2 * Math.Sqrt(Math.Max(0, (r - z) * (r + z)));
            }
        }

        return sum;
    }

    private static double SlantOf(ArcEdge arc, double z)
    {
        double up = z - arc.Centre.Y;
        return arc.Radius / Math.Sqrt((arc.Radius - up) * (arc.Radius + up));
    }

    // Shoulder, fillet and round are smooth one by one.
    private static IEnumerable<(double From, double To)> Pieces(Lever lever, double from, double to)
    {
        List<double> cuts = [from, to];
        foreach (NamedEdge piece in lever.Fork.Edges)
        {
            if (ShoulderHeight.IsPiece(piece.Name))
                cuts.AddRange(new[] { piece.Edge.Start.X, piece.Edge.End.X }.Where(x => x > from && x < to));
        }

        cuts.Sort();
        for (int i = 0; i + 1 < cuts.Count; i++)
            yield return (cuts[i], cuts[i + 1]);
    }

    private static void Over(double from, double to, Func<double, (double Area, double Moment, double Wall)> at, int side, int sign, MassSum sum)
    {
        foreach ((double node, double weight) in GaussLegendre.Twenty)
        {
            (double sin, double cos) = Math.SinCos(node * Math.PI / 2);
            double x = ((from + to) / 2) + ((to - from) / 2 * sin), w = weight * (to - from) / 2 * cos * (Math.PI / 2);
            (double area, double moment, double wall) = at(x);
            sum.Add(sign * w * area, sign * side * w * area * x, 0, area == 0 ? 0 : moment / area);
            sum.Surface += w * wall;
        }
    }
}
