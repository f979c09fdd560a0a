using System.Collections.Immutable;
using LeverDraw.Geometry;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>Heights at which one outline has a corner or a level face that shows as a straight line in the view of the other. Tangent blends show nothing.</summary>
internal readonly record struct SeenLevels(ImmutableArray<double> Visible, ImmutableArray<double> Hidden)
{
    /// <summary>Directions that differ by less than this are one smooth surface, radians: a degree shows no edge, and where lines and arcs follow another curve they meet at less.</summary>
    private const double Smooth = 0.02;

    /// <summary>The fork profile's, seen along the pin from +x.</summary>
    public static SeenLevels OfForkFromRight(Lever lever)
    {
        List<(double Level, bool Seen)> found = [.. Corners(lever.ForkProfile, false)];
        // The gap's top is a level limit even where flat and crotch are tangent.
        found.Add((lever.Fork.GapTop, false));
        if (lever.Fork.HeadTop is { } top)
            found.Add((top.Start.Y, true));
        return Sorted(found, lever.Fork.ArmEnd, lever.Fork.TongueTop);
    }

    /// <summary>The side profile's, seen square to the arms from −n.</summary>
    public static SeenLevels OfSideFromBack(Lever lever) =>
        Sorted([.. Corners(lever.SideProfile, true)], lever.Fork.ArmEnd, lever.Fork.TongueTop);

    private static IEnumerable<(double Level, bool Seen)> Corners(Contour contour, bool fromLow)
    {
        for (int i = 0; i < contour.Edges.Length; i++)
        {
            Edge here = contour.Edges[i], next = contour.Edges[(i + 1) % contour.Edges.Length];
            Vector2D a = here.TangentAt(1), b = next.TangentAt(0);
            if (Math.Abs(Math.Atan2(a.Cross(b), a.Dot(b))) <= Smooth)
                continue;
            Point2D p = next.Start;
            ImmutableArray<Interval> chords = ContourChords.HorizontalAt(contour, p.Y);
            double front = chords.IsEmpty ? p.X : fromLow ? chords[0].From : chords[^1].To;
            yield return (p.Y, Math.Abs(front - p.X) <= 1e-6);
        }
    }

    // A hidden line under a visible one is left out, as are the outline's own ends.
    private static SeenLevels Sorted(List<(double Level, bool Seen)> found, double bottom, double top)
    {
        List<double> visible = [], hidden = [];
        foreach ((double level, bool seen) in found.OrderByDescending(f => f.Seen).ThenBy(f => f.Level))
        {
            if (!Same(level, bottom) && !Same(level, top) && !visible.Exists(v => Same(v, level)) && !hidden.Exists(v => Same(v, level)))
                (seen ? visible : hidden).Add(level);
        }

        return new SeenLevels([.. visible], [.. hidden]);
    }

    private static bool Same(double a, double b) => Math.Abs(a - b) <= 1e-6;
}
