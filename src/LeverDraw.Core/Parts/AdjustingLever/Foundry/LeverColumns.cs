using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Geometry;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>The columns of metal of a lever along each axis, from its two outlines: the solid is their meeting, so a column is where two chords overlap. The hole is not in it; beside the head the joint is coped down to the bosses' middle, which frees them.</summary>
internal sealed class LeverColumns
{
    private const int Between = 24;
    private const double Touch = 1e-6;

    private readonly Lever _lever;
    private readonly double[] _levels;
    private readonly ImmutableArray<Interval>[] _side;

    private LeverColumns(Lever lever)
    {
        _lever = lever;
        _levels = Levels(lever.SideProfile);
        ChordScanner scanner = ChordScanner.Horizontal(lever.SideProfile);
        _side = [.. _levels.Select(z => scanner.At(z))];
    }

    public static LeverColumns Of(Lever lever) => new(lever);

    /// <param name="joint">The joint's n for a column; a single height when flat.</param>
    public PartingCandidate SquareToArms(string name, bool flat, Func<Interval, double> joint)
    {
        Lock held = default;
        double ahead = 0, behind = 0, low = double.PositiveInfinity, high = double.NegativeInfinity;
        bool pads = false, tongue = false;
        SideFeatures side = _lever.Side;
        double nose = side.NoseCentre.Y - (0.5 * side.NoseRadius);
        for (int i = 0; i < _levels.Length; i++)
        {
            if (_side[i].IsEmpty)
                continue;
            held = held.Or(Gap(_side[i]), _levels[i]);
            Interval whole = new(_side[i][0].From, _side[i][^1].To);
            double at = joint(whole);
            held = held.Or(Math.Max(whole.From - at, at - whole.To), _levels[i]);
            ahead = Math.Max(ahead, whole.To - at);
            behind = Math.Max(behind, at - whole.From);
            (low, high) = (Math.Min(low, at), Math.Max(high, at));
            bool splits = whole.From < at - Touch && at + Touch < whole.To;
            pads |= splits && _levels[i] > side.PadBottom + 0.5 && _levels[i] < side.PadTop - 0.5;
            tongue |= splits && _levels[i] > nose && _levels[i] < side.Top - 0.1;
        }

        ImmutableArray<string> split = [.. pads ? ["the pads"] : (string[])[], .. tongue ? ["the tongue"] : (string[])[], .. _lever.Boss is null ? (string[])[] : ["the bosses' faces"]];
        return new PartingCandidate(name, DrawAxis.SquareToArms, flat, Mm(held.Depth), Above(held), Mm(flat ? 0 : high - low), Mm(ahead), Mm(behind), split);
    }

    /// <summary>Joint in the head's mid-plane, both halves drawn along the pin.</summary>
    public PartingCandidate AlongPin(string name)
    {
        ChordScanner scanner = ChordScanner.Horizontal(_lever.ForkProfile);
        Lock held = default;
        foreach (double z in Levels(_lever.ForkProfile))
        {
            ImmutableArray<Interval> chords = scanner.At(z);
            held = held.Or(Gap(chords), z);
        }

        Length half = Mm(_lever.ForkProfile.Box.Width / 2);
        return new PartingCandidate(name, DrawAxis.AlongPin, true, Mm(held.Depth), Above(held), Length.Zero, half, half, []);
    }

    /// <summary>Joint level with the pivot, both halves drawn along the arms.</summary>
    public PartingCandidate AlongArms(string name)
    {
        Vector2D up = new(0, 1);
        ChordScanner side = ChordScanner.Along(Point2D.Origin, up, _lever.SideProfile), fork = ChordScanner.Along(Point2D.Origin, up, _lever.ForkProfile);
        // A height of these scanners is the distance to the left of the z axis.
        ImmutableArray<Interval>[] forks = [.. Spread(_lever.ForkProfile.Box.MinX, _lever.ForkProfile.Box.MaxX).Where(x => x >= 0).Select(x => fork.At(-x))];
        Lock held = default;
        foreach (double n in Spread(_lever.SideProfile.Box.MinX, _lever.SideProfile.Box.MaxX))
        {
            ImmutableArray<Interval> s = side.At(-n);
            foreach (ImmutableArray<Interval> f in forks)
            {
                List<Interval> column = Meet(s, f);
                if (column.Count == 0)
                    continue;
                held = held.Or(Gap([.. column]), n).Or(Math.Max(column[0].From, -column[^1].To), n);
            }
        }

        Box2D box = _lever.SideProfile.Box;
        string where = held.Depth <= Touch ? "" : string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(held.At):0.##} mm {(held.At < 0 ? "behind" : "before")} the pivot's axis");
        return new PartingCandidate(name, DrawAxis.AlongArms, true, Mm(held.Depth), where, Length.Zero, Mm(box.MaxY), Mm(-box.MinY), []);
    }

    private static List<Interval> Meet(ImmutableArray<Interval> a, ImmutableArray<Interval> b)
    {
        List<Interval> met = [];
        foreach (Interval p in a)
        {
            foreach (Interval q in b)
            {
                double from = Math.Max(p.From, q.From), to = Math.Min(p.To, q.To);
                if (to - from > Touch)
                    met.Add(new Interval(from, to));
            }
        }

        met.Sort(static (p, q) => p.From.CompareTo(q.From));
        return met;
    }

    /// <summary>Largest void between two pieces of one column.</summary>
    private static double Gap(ImmutableArray<Interval> column)
    {
        double gap = 0;
        for (int i = 1; i < column.Length; i++)
            gap = Math.Max(gap, column[i].From - column[i - 1].To);
        return gap;
    }

    // Chords change smoothly between vertices and level tangents; those are tried, and places evenly between.
    private static double[] Levels(Contour contour)
    {
        double[] breaks = [.. contour.Edges.SelectMany(e => new[] { e.Start.Y, e.End.Y, e.Box.MinY, e.Box.MaxY }).Distinct().Order()];
        List<double> levels = [];
        for (int i = 0; i + 1 < breaks.Length; i++)
        {
            if (breaks[i + 1] - breaks[i] <= 1e-7)
                continue;
            for (int k = 0; k < Between; k++)
                levels.Add(breaks[i] + ((breaks[i + 1] - breaks[i]) * (k + 0.5) / Between));
        }

        return [.. levels];
    }

    private static IEnumerable<double> Spread(double from, double to)
    {
        const int Count = 120;
        for (int i = 0; i < Count; i++)
            yield return from + ((to - from) * (i + 0.5) / Count);
    }

    private static string Above(Lock held) => held.Depth <= Touch ? "" : string.Create(
        CultureInfo.InvariantCulture, $"{Math.Abs(held.At):0.##} mm {(held.At < 0 ? "below" : "above")} the pivot");

    private static Length Mm(double millimetres) => Length.FromMillimetres(Math.Max(0, millimetres));

    private readonly record struct Lock(double Depth, double At)
    {
        public Lock Or(double depth, double at) => depth > Depth ? new Lock(depth, at) : this;
    }
}
