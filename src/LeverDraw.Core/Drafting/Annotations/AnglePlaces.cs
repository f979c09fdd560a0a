using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>The places of a dimension whose line is an arc: each of several arcs, its number in the middle, slid, or beside the ends.</summary>
/// <param name="says">What the dimension says when it stands on one of the arcs.</param>
/// <param name="circles">Thin circles in the view, from which arrowheads had better keep off.</param>
internal sealed class AnglePlaces(List<(AngleShape Shape, double Cost)> arcs, ImmutableArray<ArcEdge> circles, string id, string view, Func<int, AngleShape.Meaning> says) : PlaceSet(Costs(arcs), arcs.Count * Sides)
{
    private static ReadOnlySpan<double> Along => [0.5, 0.3, 0.7, 0.15, 0.85, -0.35, 1.35];

    /// <summary>The lines of an arc are one of three: with the number inside the angle, before it or after it.</summary>
    private const int Sides = 3;

    public override void LineGroup(int group, PlaceShape shape) =>
        arcs[group / Sides].Shape.Line(Along[group % Sides == 0 ? 0 : Along.Length - Sides + (group % Sides)], shape);

    protected override int GroupOf(int place) =>
        (place / Along.Length * Sides) + (Along[place % Along.Length] switch { < 0 => 1, > 1 => 2, _ => 0 });

    protected override bool LetterPlace(int place, PlaceShape shape)
    {
        arcs[place / Along.Length].Shape.Letter(Along[place % Along.Length], shape);
        return true;
    }

    protected override bool LinePlace(int place, PlaceShape shape)
    {
        arcs[place / Along.Length].Shape.Line(Along[place % Along.Length], shape);
        return true;
    }

    protected override double BlemishOf(int place)
    {
        AngleShape shape = arcs[place / Along.Length].Shape;
        foreach (ArcEdge circle in circles)
        {
            if (shape.MeetsCircle(circle))
                return PlacingCosts.HeadOnCircle;
        }

        return 0;
    }

    protected override AnnotationInk InkOf(int place) =>
        arcs[place / Along.Length].Shape.Ink(Along[place % Along.Length], id, view, says(place / Along.Length));

    private static double[] Costs(List<(AngleShape Shape, double Cost)> arcs)
    {
        double[] costs = new double[arcs.Count * Along.Length];
        for (int i = 0; i < costs.Length; i++)
        {
            double along = Along[i % Along.Length], cost = arcs[i / Along.Length].Cost;
            costs[i] = (along is < 0 or > 1 ? 2 + cost : cost) + AngleShape.CostOf(along);
        }

        return costs;
    }
}
