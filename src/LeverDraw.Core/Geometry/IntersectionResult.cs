using System.Collections.Immutable;

namespace LeverDraw.Geometry;

/// <summary>A point two edges share, with its parameter on each (0 at the edge's start, 1 at its end).</summary>
/// <param name="Crosses">True when each edge passes to the other's far side here; false where one ends or the two are tangent.</param>
public readonly record struct Meeting(Point2D Point, double Ta, double Tb, bool Crosses);

/// <summary>A stretch two edges share. <paramref name="TaFrom"/> &lt; <paramref name="TaTo"/>; the parameters on the other edge fall when the two run against each other.</summary>
public readonly record struct SharedPiece(double TaFrom, double TaTo, double TbFrom, double TbTo);

/// <summary>How two edges meet: <see cref="NoIntersection"/>, <see cref="Touch"/>, <see cref="Crossings"/> or <see cref="Overlap"/>, and nothing else.</summary>
public abstract record IntersectionResult
{
    private protected IntersectionResult(ImmutableArray<Meeting> meetings) => Meetings = meetings;

    /// <summary>The single points met, in order along the first edge. Shared stretches are not among them.</summary>
    public ImmutableArray<Meeting> Meetings { get; }

    internal static IntersectionResult Of(ImmutableArray<Meeting> meetings)
    {
        foreach (Meeting meeting in meetings)
        {
            if (meeting.Crosses)
                return new Crossings(meetings);
        }

        return meetings.IsEmpty ? NoIntersection.Instance : new Touch(meetings);
    }
}

public sealed record NoIntersection : IntersectionResult
{
    private NoIntersection()
        : base([])
    {
    }

    public static NoIntersection Instance { get; } = new();
}

/// <summary>The edges meet, but only where one of them ends or where they are tangent.</summary>
public sealed record Touch : IntersectionResult
{
    internal Touch(ImmutableArray<Meeting> points)
        : base(points)
    {
    }
}

/// <summary>The edges cross at one or two points; a further point where they only touch may be among the meetings.</summary>
public sealed record Crossings : IntersectionResult
{
    internal Crossings(ImmutableArray<Meeting> points)
        : base(points)
    {
    }
}

/// <summary>The edges run along each other.</summary>
public sealed record Overlap : IntersectionResult
{
    internal Overlap(ImmutableArray<SharedPiece> pieces, ImmutableArray<Meeting> meetings)
        : base(meetings) => Pieces = pieces;

    /// <summary>The shared stretches in order along the first edge; empty between carriers, which are then one and the same.</summary>
    public ImmutableArray<SharedPiece> Pieces { get; }
}
