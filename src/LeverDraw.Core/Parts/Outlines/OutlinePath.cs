using System.Collections.Immutable;
using LeverDraw.Geometry;

namespace LeverDraw.Parts.Outlines;

/// <summary>A piece of an outline with the name of what it is on the part, such as <c>crown-right</c>.</summary>
public readonly record struct NamedEdge(string Name, Edge Edge);

/// <summary>A piece that would have to run backwards: the blends at its two ends take more length than there is.</summary>
/// <param name="Short">By how much, millimetres.</param>
internal readonly record struct PathFault(string Name, double Short);

/// <summary>Collects an outline piece by piece, each beginning where the last one ended; tells the pieces that have no room.</summary>
internal sealed class OutlinePath(Point2D start)
{
    private readonly List<NamedEdge> _edges = [];
    private readonly List<PathFault> _faults = [];

    public Point2D At { get; private set; } = start;

    public IReadOnlyList<NamedEdge> Edges => _edges;

    public IReadOnlyList<PathFault> Faults => _faults;

    /// <summary>On along a carrier, the way it runs, as far as <paramref name="to"/>.</summary>
    public void Along(string name, Edge carrier, Point2D to)
    {
        if (carrier is ArcEdge arc)
            Turn(name, arc.Centre, to, arc.Sweep > 0);
        else
            Straight(name, carrier.TangentAt(0), to);
    }

    public void To(string name, Point2D to)
    {
        if (At.DistanceTo(to) > Coincidence.Distance)
            _edges.Add(new NamedEdge(name, new LineEdge(At, to)));
        At = to;
    }

    /// <summary>The fillet or round, entered where it touches its first carrier.</summary>
    public void Blend(string name, Blend blend)
    {
        Turn(name, blend.Centre, blend.To, !blend.Concave);
    }

    public void Turn(string name, Point2D centre, Point2D to, bool counterClockwise)
    {
        if (At.DistanceTo(to) > Coincidence.Distance)
        {
            ArcEdge arc = ArcEdge.Between(centre, At, to, counterClockwise);
            // Nothing on a lever turns this far: the end lies before the start.
            if (Math.Abs(arc.Sweep) > 1.85 * Math.PI)
                _faults.Add(new PathFault(name, ((2 * Math.PI) - Math.Abs(arc.Sweep)) * arc.Radius));
            else
                _edges.Add(new NamedEdge(name, arc));
        }

        At = to;
    }

    public ImmutableArray<NamedEdge> Done() => [.. _edges];

    private void Straight(string name, Vector2D along, Point2D to)
    {
        double run = (to - At).Dot(along);
        if (run < -Coincidence.Distance)
            _faults.Add(new PathFault(name, -run));
        To(name, to);
    }
}
