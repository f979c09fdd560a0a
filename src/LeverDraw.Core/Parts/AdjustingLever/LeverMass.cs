using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>Volume, surface and centroid of a lever as finished.</summary>
/// <param name="Volume">mm³.</param>
/// <param name="Surface">mm², the hole's wall included when the hole is bored.</param>
/// <param name="X">Centroid along the pin.</param>
/// <param name="N">Centroid square to the arms, toward the tongue.</param>
/// <param name="Z">Centroid along the arms, from the pivot.</param>
public sealed record MassProperties(double Volume, double Surface, Length X, Length N, Length Z)
{
    public double CubicCentimetres => Volume / 1000;

    /// <summary>Casting modulus, volume by surface.</summary>
    public Length Modulus => Length.FromMillimetres(Volume / Surface);

    /// <param name="density">g/cm³.</param>
    public double Grams(double density) => CubicCentimetres * density;
}

/// <summary>Mass properties by the chord integral: at each height the section is the product of the two outlines' chords.</summary>
/// <remarks>Between two heights where an outline has a vertex or a level tangent the chords are smooth but for a square root at the ends;
/// with z = middle + half·sin φ they are smooth throughout, and twenty Gauss points reach rounding error.</remarks>
public static class LeverMass
{
    /// <summary>Stroke width of the mark's raised letters by their height (common practice, no source).</summary>
    private const double StrokeByHeight = 1.0 / 7;

    public static MassProperties Of(Lever lever)
    {
        MassSum sum = Body(lever);
        OutlineLevels fork = new(lever.ForkProfile);
        if (lever.Boss is { } boss)
            Discs.AddBosses(sum, lever, boss.Diameter.Millimetres, boss.Height.Millimetres);
        if (lever.Hole.Supply == LeverFields.Bored)
            Discs.TakeHole(sum, lever, fork);
        if (lever.Mark is { } mark)
            AddMark(sum, lever, mark);
        return sum.Done();
    }

    private static MassSum Body(Lever lever)
    {
        OutlineLevels side = new(lever.SideProfile), fork = new(lever.ForkProfile);
        MassSum sum = new();
        double[] breaks = Levels(side.Breaks.Concat(fork.Breaks));
        for (int i = 0; i + 1 < breaks.Length; i++)
        {
            double middle = (breaks[i] + breaks[i + 1]) / 2, half = (breaks[i + 1] - breaks[i]) / 2;
            foreach ((double node, double weight) in GaussLegendre.Twenty)
            {
                (double sin, double cos) = Math.SinCos(node * Math.PI / 2);
                double z = middle + (half * sin), w = weight * half * cos * (Math.PI / 2);
                (double s, double sn) = side.ChordsAt(z);
                (double f, _) = fork.ChordsAt(z);
                sum.Add(w * s * f, 0, w * sn * f, z);
                sum.Surface += w * ((side.SlantAt(z) * f) + (fork.SlantAt(z) * s));
            }
        }

        foreach (double level in Levels(side.Flats.Concat(fork.Flats)))
            sum.Surface += LevelArea(side, fork, level);
        return sum;
    }

    /// <summary>Area of the faces at one height: what of the section just above or just below is not shared by the other.</summary>
    private static double LevelArea(OutlineLevels side, OutlineLevels fork, double z)
    {
        const double Hair = 2e-9;
        double sideUp = side.FlatAt(z, true), forkUp = fork.FlatAt(z, true);
        double sideDown = side.FlatAt(z, false), forkDown = fork.FlatAt(z, false);
        double sideAbove = side.ChordsAt(z + Hair).Length, forkAbove = fork.ChordsAt(z + Hair).Length;
        double sideBelow = side.ChordsAt(z - Hair).Length, forkBelow = fork.ChordsAt(z - Hair).Length;
        double above = (sideAbove * forkAbove) - ((sideAbove - sideUp) * (forkAbove - forkUp));
        double below = (sideBelow * forkBelow) - ((sideBelow - sideDown) * (forkBelow - forkDown));
        return above + below;
    }

    private static double[] Levels(IEnumerable<double> levels)
    {
        List<double> kept = [];
        foreach (double level in levels.Order())
        {
            if (kept.Count == 0 || level - kept[^1] > 1e-8)
                kept.Add(level);
        }

        return [.. kept];
    }

    /// <summary>The letters count as their strokes' length times stroke width times height; their walls as twice the length times the height.</summary>
    private static void AddMark(MassSum sum, Lever lever, RaisedMark mark)
    {
        MarkSeat seat = MarkSeat.On(mark, lever.Fork, lever.Side, lever.Hole);
        double height = mark.Height.Millimetres, stroke = 0;
        foreach (PlotGlyph glyph in seat.Letters(mark).Glyphs)
            stroke += glyph.Scale * glyph.Shape.Strokes.Sum(chain => chain.Sum(edge => edge.Length));
        double volume = stroke * StrokeByHeight * mark.LetterHeight.Millimetres * height;
        (double x, double n) = seat.OnArm ? (seat.Middle.X, seat.Face - (height / 2)) : (seat.Face + (height / 2), seat.Middle.X);
        sum.Add(volume, volume * x, volume * n, seat.Middle.Y);
        sum.Surface += 2 * stroke * height;
    }
}

/// <summary>Running sums of volume, first moments and surface.</summary>
internal sealed class MassSum
{
    private double _volume, _x, _n, _z;

    public double Surface { get; set; }

    /// <param name="x">First moment about x = 0; <paramref name="n"/> likewise; z is the height of the whole amount.</param>
    public void Add(double volume, double x, double n, double z)
    {
        _volume += volume;
        _x += x;
        _n += n;
        _z += volume * z;
    }

    public MassProperties Done() => new(
        _volume,
        Surface,
        Length.FromMillimetres(_x / _volume),
        Length.FromMillimetres(_n / _volume),
        Length.FromMillimetres(_z / _volume));
}
