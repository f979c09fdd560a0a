using System.Collections.Immutable;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Lettering;

/// <summary>Draws a letter's strokes on the letter grid (ten units to the capital height) and keeps the pen's place and direction, so that a curve leaves the last edge tangentially by construction.</summary>
internal sealed class GlyphPen
{
    /// <summary>A full stop is a small ring that the pen fills: a decimal point must survive copying.</summary>
    private const double DotRadius = 0.2;

    private readonly double unit;
    private readonly ImmutableArray<ImmutableArray<Edge>>.Builder strokes = ImmutableArray.CreateBuilder<ImmutableArray<Edge>>();
    private readonly ImmutableArray<Edge>.Builder stroke = ImmutableArray.CreateBuilder<Edge>();
    private Point2D place;
    private Vector2D heading;

    /// <param name="unit">Size of a grid unit in the finished shape.</param>
    public GlyphPen(double unit) => this.unit = unit;

    public void MoveTo(double x, double y)
    {
        EndStroke();
        place = At(x, y);
        heading = default;
    }

    public void Head(double x, double y) => heading = new Vector2D(x, y).Unit();

    public void LineTo(double x, double y) => AddLine(At(x, y));

    /// <summary>A line that must carry on in the direction the pen has.</summary>
    /// <exception cref="InvalidOperationException">It would make a corner.</exception>
    public void SmoothLineTo(double x, double y)
    {
        Vector2D along = (At(x, y) - place).Unit();
        if (along.Dot(heading) < 0 || Math.Abs(along.Cross(heading)) > Coincidence.Angle)
            throw new InvalidOperationException($"The line to {FormattableString.Invariant($"{x} {y}")} makes a corner.");
        AddLine(At(x, y));
    }

    /// <summary>The one arc that leaves in the pen's direction and ends at the point.</summary>
    public void ArcTo(double x, double y) => AddArc(At(x, y));

    /// <summary>Two arcs, tangent to the pen's direction, to each other and to the end direction (a biarc with equal tangent lengths).</summary>
    public void CurveTo(double x, double y, double headX, double headY)
    {
        Point2D end = At(x, y);
        Vector2D endHeading = new Vector2D(headX, headY).Unit();
        Vector2D chord = end - place;
        double along = chord.Dot(heading + endHeading);
        double bend = 2 * (1 - heading.Dot(endHeading));
        double reach = bend < Coincidence.Angle
            ? chord.Dot(chord) / (2 * along)
            : (Math.Sqrt((along * along) + (bend * chord.Dot(chord))) - along) / bend;
        Point2D middle = Point2D.Lerp(place + (heading * reach), end - (endHeading * reach), 0.5);
        AddArc(middle);
        AddArc(end);
        heading = endHeading;
    }

    /// <summary>An arc of a radius (positive to the left) until the pen looks at the point, then a line to it.</summary>
    public void TurnTowards(double radius, double x, double y)
    {
        Point2D target = At(x, y);
        double r = radius * unit;
        Point2D centre = place + (heading.Left * r);
        Vector2D toTarget = target - centre;
        double side = Math.Sign(r);
        double tangentLength = Math.Sqrt(toTarget.Dot(toTarget) - (r * r));
        double leave = toTarget.Angle - (side * Math.Atan2(tangentLength, Math.Abs(r)));
        AddArc(centre + (Vector2D.FromAngle(leave) * Math.Abs(r)));
        AddLine(target);
    }

    public void Ring(double x, double y, double radius)
    {
        EndStroke();
        stroke.Add(new ArcEdge(At(x, y), radius * unit, 0, Math.PI));
        stroke.Add(new ArcEdge(At(x, y), radius * unit, Math.PI, Math.PI));
        EndStroke();
    }

    public void Dot(double x, double y) => Ring(x, y, DotRadius);

    /// <summary>All strokes so far.</summary>
    public ImmutableArray<ImmutableArray<Edge>> Finish()
    {
        EndStroke();
        return strokes.ToImmutable();
    }

    private Point2D At(double x, double y) => new(x * unit, y * unit);

    private void AddLine(Point2D end)
    {
        heading = (end - place).Unit();
        stroke.Add(new LineEdge(place, end));
        place = end;
    }

    private void AddArc(Point2D end)
    {
        Vector2D chord = end - place;
        double half = Math.Atan2(heading.Cross(chord), heading.Dot(chord));
        if (Math.Abs(half) < Coincidence.Angle)
        {
            AddLine(end);
            return;
        }

        double radius = chord.Length / (2 * Math.Sin(half));
        Point2D centre = place + (heading.Left * radius);
        double start = (place - centre).Angle;
        stroke.Add(new ArcEdge(centre, Math.Abs(radius), start, 2 * half));
        heading = Vector2D.FromAngle(heading.Angle + (2 * half));
        place = end;
    }

    private void EndStroke()
    {
        if (stroke.Count > 0)
            strokes.Add(stroke.ToImmutable());
        stroke.Clear();
    }
}
