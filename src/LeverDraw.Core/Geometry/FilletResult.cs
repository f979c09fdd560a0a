namespace LeverDraw.Geometry;

/// <summary>Why a corner can't be rounded with the radius asked.</summary>
public enum FilletFault
{
    RadiusNotPositive,

    /// <summary>The incoming edge doesn't end where the outgoing one starts.</summary>
    EdgesDoNotMeet,

    /// <summary>The edges already join without a corner.</summary>
    AlreadyTangent,

    /// <summary>No circle of that radius is tangent to both edges on the inside of the turn.</summary>
    NoTangentCircle,

    /// <summary>The tangent point falls before the incoming edge's start, or nothing of it would be left.</summary>
    IncomingTooShort,

    /// <summary>The tangent point falls past the outgoing edge's end, or nothing of it would be left.</summary>
    OutgoingTooShort,

    BothTooShort,
}

/// <summary>A rounded corner (<see cref="Filleted"/>) or the reason there is none (<see cref="NoFillet"/>).</summary>
public abstract record FilletResult
{
    private protected FilletResult()
    {
    }
}

/// <summary>The incoming edge cut at the tangent point, the arc, and the outgoing edge from the other tangent point on.</summary>
public sealed record Filleted(Edge TrimmedIn, ArcEdge Arc, Edge TrimmedOut) : FilletResult;

public sealed record NoFillet(FilletFault Reason) : FilletResult;
