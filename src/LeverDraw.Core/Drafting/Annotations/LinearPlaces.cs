using LeverDraw.Drafting.Layout;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>The places of a linear dimension.</summary>
internal sealed class LinearPlaces(LinearFrame frame) : PlaceSet(frame.Places.Costs, frame.Lines)
{
    public override void LineGroup(int group, PlaceShape shape) => frame.LineGroup(group, shape);

    protected override double BlemishOf(int place) => frame.BlemishOf(frame.Places[place]);

    protected override bool WaitsOnNarrowPaper(int place) => frame.WaitsOnNarrowPaper(frame.Places[place]);

    protected override int GroupOf(int place) => frame.Places[place].Line;

    protected override Point2D? PointOf(int place) => frame.PointOf(frame.Places[place]);

    protected override bool LetterPlace(int place, PlaceShape shape) => frame.Letter(frame.Places[place], shape);

    protected override bool LinePlace(int place, PlaceShape shape) => frame.Line(frame.Places[place], shape);

    protected override AnnotationInk InkOf(int place) => frame.Ink(frame.Places[place]);
}

/// <summary>One place of a linear dimension.</summary>
/// <param name="TextAt">Middle of its number along the dimension; NaN for a number on a leader.</param>
/// <param name="Line">Which of the frame's dimension lines it stands on.</param>
/// <param name="Extra">Which of the frame's extras it carries, or which of its leaders.</param>
internal readonly record struct LinearPlace(double TextAt, short Line, short Extra);
