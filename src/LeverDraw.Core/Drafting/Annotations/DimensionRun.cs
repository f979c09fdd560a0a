using System.Collections.Immutable;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>How a run of parallel sizes is drawn (arrangements of ISO 129-1, from memory).</summary>
public enum RunForm
{
    /// <summary>End to end on one line; each size from the point before.</summary>
    Chain,

    /// <summary>One above the other in even tiers, the shortest nearest; each size from the datum.</summary>
    Baseline,

    /// <summary>No dimension lines: the distance from the zero mark stands at the end of each extension line.</summary>
    Ordinate,

    /// <summary>As <see cref="Ordinate"/>, with one line that starts in a small circle at the zero mark and has an arrow at each extension line.</summary>
    Running,
}

/// <summary>Several parallel sizes placed as one body, so that they stay on one line or in even tiers. Each is a dimension of its own in the written files.</summary>
/// <param name="Datum">Where the first size of a chain starts, or all sizes of the other forms.</param>
/// <param name="Direction">Measuring direction, radians.</param>
/// <param name="Members">At least one. Those of a chain follow each other one way along the direction; those of a baseline lie on one side of the datum.</param>
public sealed record DimensionRun(RunForm Form, Point2D Datum, double Direction, ImmutableArray<RunMember> Members)
    : Annotation(Members[0].Name, Members[0].Value, Members[0].Label)
{
    /// <summary>Where it may stand.</summary>
    public DimensionSides Sides { get; init; } = DimensionSides.Both;

    /// <summary>Each size as a dimension by itself: the same points and the same meaning.</summary>
    public ImmutableArray<LinearDimension> Single() =>
        [.. Members.Select((m, i) => new LinearDimension(m.Name, m.Value, m.Label, Form == RunForm.Chain && i > 0 ? Members[i - 1].To : Datum, m.To, Direction) { Sides = Sides })];
}

/// <summary>One size of a run.</summary>
/// <param name="Value">Millimetres, from the point that the run's form measures from.</param>
public sealed record RunMember(string Name, double Value, Label Label, Point2D To);
