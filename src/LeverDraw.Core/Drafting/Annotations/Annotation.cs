using System.Collections.Immutable;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>Something to be said about a view: what, where it points, not yet where it stands. Points are in the view's own millimetres.</summary>
/// <param name="Name">The field's full name, or one of the part's own for derived sizes.</param>
/// <param name="Value">Millimetres, or radians for an angle; exactly what the geometry has.</param>
public abstract record Annotation(string Name, double Value, Label Label)
{
    /// <summary>Sizes the label states beside <see cref="Value"/>.</summary>
    public ImmutableArray<StatedSize> Further { get; init; } = [];
}

/// <summary>A distance between two points, measured along a direction.</summary>
/// <param name="Direction">Measuring direction, radians: 0 along x, π/2 along y.</param>
public sealed record LinearDimension(string Name, double Value, Label Label, Point2D First, Point2D Second, double Direction)
    : Annotation(Name, Value, Label)
{
    /// <summary>The direction along y.</summary>
    public const double Upright = Math.PI / 2;

    /// <summary>Where dimension lines may stand.</summary>
    public DimensionSides Sides { get; init; } = DimensionSides.Both;

    /// <summary>Of its sides the one on which it reads better: the other is dearer.</summary>
    public DimensionSides Better { get; init; } = DimensionSides.Both;

    /// <summary>It stands outside the view, not in a hollow of it: there it would seem to measure what it crosses.</summary>
    public bool OnlyOutside { get; init; }

    /// <summary>The same two levels at the part's other edge: a dimension line on that side is measured from there.</summary>
    public (Point2D First, Point2D Second)? AtOtherEdge { get; init; }

    /// <summary>Set when the measured faces run on square to the direction: the dimension may then stand on the feature itself, moved by an amount in this range (millimetres, along the left of the direction).</summary>
    public (double From, double To)? Slide { get; init; }

    /// <summary>The true distance between two points, measured along the line between them.</summary>
    public static LinearDimension Aligned(string name, Label label, Point2D first, Point2D second) =>
        new(name, (second - first).Length, label, first, second, (second - first).Angle);
}

/// <summary>On which sides of a view a dimension may stand, looking along its direction.</summary>
[Flags]
public enum DimensionSides
{
    /// <summary>Neither: on the feature itself.</summary>
    None = 0,

    /// <summary>Below a horizontal dimension, right of an upward one.</summary>
    Right = 1,

    /// <summary>Above a horizontal dimension, left of an upward one.</summary>
    Left = 2,
    Both = 3,
}

/// <summary>A circle's diameter, by a leader in line with its centre.</summary>
public sealed record DiameterDimension(string Name, double Value, Label Label, Point2D Centre, double Radius)
    : Annotation(Name, Value, Label)
{
    /// <summary>The parts of the circle that are drawn, where the arrow may touch; empty for a whole circle.</summary>
    public ImmutableArray<ArcEdge> Arcs { get; init; } = [];

    /// <summary>The label is a callout about the circle (a hole note), not the diameter of this very circle.</summary>
    public bool IsCallout { get; init; }
}

/// <summary>The letter of a detail, beside the circle that marks it. Says no size.</summary>
/// <param name="Part">The outline off which the letter had better stand.</param>
public sealed record DetailLetter(string Name, string Letter, Point2D Centre, double Radius, Contour Part)
    : Annotation(Name, 0, Label.Of(Letter));

/// <summary>An arc's radius, by a leader in line with its centre. Any of the arcs may carry it (equal features).</summary>
public sealed record RadiusDimension(string Name, double Value, Label Label, ImmutableArray<ArcEdge> Arcs)
    : Annotation(Name, Value, Label)
{
    /// <summary>On which side of the arc the material lies: the centre's, as at a rounded corner, or the other, as at a fillet. The arrow had better not come through the part. Null where that shows by itself, because it would cross an outline.</summary>
    public bool? MaterialAtCentre { get; init; }

    /// <summary>The arrow never comes through the part: inside there is no room for a label, or it would stand where it reads as another size's.</summary>
    public bool OnlyFromOutside { get; init; }
}

/// <summary>The angle at a vertex, counter-clockwise from the first direction to the second.</summary>
/// <param name="FirstFrom">Distance from the vertex where the first side's extension line starts; null when a line is there already.</param>
public sealed record AngleDimension(string Name, double Value, Label Label, Point2D Vertex, double FirstDirection, double SecondDirection, double? FirstFrom, double? SecondFrom)
    : Annotation(Name, Value, Label)
{
    /// <summary>Least and greatest distance of the dimension arc from the vertex, view millimetres; null: anywhere that is clear.</summary>
    public (double From, double To)? Reach { get; init; }
}

/// <summary>The length of an arc, along it.</summary>
/// <param name="Arc">The measured arc, less than a full circle; the dimension stands outside it.</param>
public sealed record ArcLengthDimension(string Name, double Value, Label Label, ArcEdge Arc)
    : Annotation(Name, Value, Label);

/// <summary>A note with a leader to one of several points.</summary>
public sealed record LeaderNote(string Name, double Value, Label Label, ImmutableArray<Point2D> Targets)
    : Annotation(Name, Value, Label)
{
    /// <summary>For each target the way off its line, length one, near which a leader had better come; none when all ways are alike.</summary>
    public ImmutableArray<Vector2D> Outward { get; init; } = [];

    /// <summary>For each target a line that is drawn with the leader, from its tip to a dot, such as the distance it speaks of; none when there is no such line.</summary>
    public ImmutableArray<LineEdge> Lines { get; init; } = [];

    /// <summary>From this target on they are for want of better: a leader goes there where the ones before have no good place.</summary>
    public int SecondBest { get; init; } = int.MaxValue;

    /// <summary>The leader ends in a dot inside a face, not in an arrow on an edge.</summary>
    public bool OnFace { get; init; }

    /// <summary>The way the face's edges run, where they are straight: a leader along them would be taken for one.</summary>
    public Vector2D? Grain { get; init; }
}

/// <summary>One end of a cutting plane: a thick stroke outside the feature, an arrow the way one looks, a letter.</summary>
/// <param name="At">Where the feature ends on the plane's line.</param>
/// <param name="Outward">Along the line, away from the feature, length one.</param>
/// <param name="Looking">Direction one looks, length one.</param>
public sealed record SectionEnd(string Name, string Letter, Point2D At, Vector2D Outward, Vector2D Looking)
    : Annotation(Name, 0, Label.Of(Letter));

/// <summary>The arrow that shows from where an auxiliary view looks, with the view's letter. Says no size.</summary>
/// <param name="Face">The piece of the face looked at that the arrow may aim at.</param>
/// <param name="Looking">Direction one looks, length one.</param>
public sealed record ViewArrow(string Name, string Letter, LineEdge Face, Vector2D Looking)
    : Annotation(Name, 0, Label.Of(Letter));

/// <summary>Where the joint of a mould leaves a view: a chain line outward with P.L. at its end, and an arrow into each half with the half's name. Says no size.</summary>
/// <param name="At">Where the joint's line leaves the feature.</param>
/// <param name="Outward">Along the line, away from the feature, length one.</param>
/// <param name="Toward">Into the half named <paramref name="Ahead"/>, square to the line, length one; the other half is <paramref name="Behind"/>; without names there are no arrows.</param>
public sealed record MouldJoint(string Name, Point2D At, Vector2D Outward, Vector2D Toward, string Ahead, string Behind)
    : Annotation(Name, 0, Label.Of("P.L."))
{
    /// <summary>Distances into the half ahead, negative ones behind, at which other lines are likely to stand beside the feature: no arrow should end on these.</summary>
    public ImmutableArray<double> Levels { get; init; } = [];
}

/// <summary>A place on a surface as the view shows it.</summary>
/// <param name="At">On the outline.</param>
/// <param name="Outward">Away from the material, square to the surface, length one.</param>
public readonly record struct SurfacePoint(Point2D At, Vector2D Outward);

/// <summary>A surface-texture sign that stands on the surface itself, or at the end of a leader to it. Says no size.</summary>
public sealed record SurfaceTexture(string Name, TextureSign Sign, ImmutableArray<SurfacePoint> Places)
    : Annotation(Name, 0, Label.Of(Sign.Text));

/// <summary>A datum feature's letter with its triangle on the surface's outline: the surface itself is the datum. Says no size.</summary>
public sealed record DatumFeature(string Name, string Letter, ImmutableArray<SurfacePoint> Places)
    : Annotation(Name, 0, Label.Of(Letter));
