using System.Collections.Immutable;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Comparison;

/// <summary>One line of the table: a size, or a figure that follows from sizes, of each variant.</summary>
/// <param name="Name">The field's, or one of our own for what follows: <c>head.over_faces</c>.</param>
/// <param name="Symbol">The trade's short sign, or null.</param>
/// <param name="Matters">Null for a figure that says of itself what it is.</param>
/// <param name="Values">One per variant, in their order; null where it does not apply.</param>
public sealed record ComparedRow(string Name, string? Symbol, Matter? Matters, string Why, ImmutableArray<ComparedValue?> Values)
{
    /// <summary>Each value says how it stands to the other variant: their difference then means nothing.</summary>
    public bool IsMutual { get; init; }

    /// <summary>The second variant's size less the first one's, where both have it; null for all that is no length, and for more than two.</summary>
    public Length? Delta => !IsMutual && Values is [ComparedSize a, ComparedSize b] ? b.Size.Nominal - a.Size.Nominal : null;

    /// <summary>As <see cref="Delta"/>, of angles.</summary>
    public Angle? AngleDelta => Values is [ComparedAngle a, ComparedAngle b] ? Angle.FromRadians(b.Angle.Radians - a.Angle.Radians) : null;

    /// <summary>As <see cref="Delta"/>, of figures, in their own unit.</summary>
    public ComparedFigure? FigureDelta => !IsMutual && Values is [ComparedFigure a, ComparedFigure b] ? a with { Value = b.Value - a.Value } : null;

    public bool Differs => Values.Any(v => !ComparedValue.Same(v, Values[0]));

    /// <summary>The tolerances differ, or one is a fit, which is never left out: the texts then say them.</summary>
    internal bool ShowsTolerances => Values.Any(v => v is ComparedSize { Size.Tolerance: ZoneTolerance }) || Values.OfType<ComparedSize>().Any(s => !ComparedValue.SameTolerance(s.Size.Tolerance, Values.OfType<ComparedSize>().First().Size.Tolerance));
}
