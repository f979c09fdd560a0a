using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

public enum FoundrySizeKind
{
    /// <summary>Between two faces with the metal between them.</summary>
    Outside,

    /// <summary>Between two faces with the metal outside.</summary>
    Inside,

    /// <summary>Between middles: rapping and stock leave it alone.</summary>
    Distance,

    /// <summary>Of a round.</summary>
    Radius,
}

/// <summary>A group of faces that is machined together.</summary>
public enum MachinedFaces
{
    /// <summary>Left as cast.</summary>
    None,
    Head,
    Pads,
    Tongue,
}

/// <summary>The way a size is measured, as a unit vector: along the pin, square to the arms, along the arms. For a thickness, square to its faces.</summary>
public readonly record struct MeasuredAlong(double X, double N, double Z)
{
    public static MeasuredAlong Pin => new(1, 0, 0);

    public static MeasuredAlong Square => new(0, 1, 0);

    public static MeasuredAlong Arms => new(0, 0, 1);
}

/// <summary>A size that the foundry's states have in common, and how it is measured on the shape itself, so that no table can say what the outline does not.</summary>
/// <param name="Faces">How many of its faces are machined.</param>
/// <param name="IsWall">A wall left as cast, for which the casting tolerance is one grade coarser.</param>
/// <param name="Finished">On the finished lever.</param>
/// <param name="FinishedLeast">Lower limit, where the profile states one.</param>
/// <param name="FinishedMost">Upper limit, where the profile states one.</param>
public sealed record FoundrySize(
    string Name,
    SizeField Field,
    FoundrySizeKind Kind,
    MeasuredAlong Along,
    MachinedFaces Group,
    int Faces,
    bool IsWall,
    Length Finished,
    Length FinishedLeast,
    Length FinishedMost,
    Func<Lever, Length> MeasureOn);
