using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>Lines that touch, carry on or cross each other so that one reads as part of the other.</summary>
internal static class LineBlemish
{
    /// <summary>Nearer than this, end to end, a leader's shoulder and a dimension line in one line read as one, millimetres.</summary>
    private const double CarriesOn = 8;

    /// <summary>Off each other by less, a shoulder and a dimension line look like one drawn askew, millimetres.</summary>
    private const double NearlyInLine = 1.4;

    /// <summary>Off each other by less, lines at one slant are in one line, millimetres.</summary>
    private const double InOneLine = 0.4;

    /// <summary>Leaders that cross a dimension line, only just touch it, or whose shoulder carries it on; dimension lines in one line with an extension line: each once.</summary>
    public static double Between(ReadOnlySpan<Stroke> strokes, Candidate b)
    {
        bool touches = false, grazes = false, goesOn = false, crosses = false, carriesOn = false;
        foreach (ref readonly Stroke s in strokes)
        {
            if (!s.Bounds.Inflated(CarriesOn).Overlaps(b.Bounds))
                continue;
            foreach (ref readonly Stroke t in b.Strokes.AsSpan())
            {
                if (!s.IsNear(t, CarriesOn))
                    continue;
                switch (s.Kind, t.Kind)
                {
                    case (StrokeKind.DimensionLine, StrokeKind.ExtensionLine):
                        goesOn |= s.RunsAlong(t, InOneLine);
                        break;
                    case (StrokeKind.ExtensionLine, StrokeKind.DimensionLine):
                        goesOn |= t.RunsAlong(s, InOneLine);
                        break;
                    case (StrokeKind.Leader, StrokeKind.ExtensionLine):
                        grazes |= Grazes(s, t);
                        break;
                    case (StrokeKind.ExtensionLine, StrokeKind.Leader):
                        grazes |= Grazes(t, s);
                        break;
                    case (StrokeKind.Leader, StrokeKind.Leader) or (StrokeKind.Leader, StrokeKind.Mark) or (StrokeKind.Mark, StrokeKind.Leader):
                        touches |= !s.Crosses(t) && Touch(s, t);
                        break;
                    case (StrokeKind.Leader, StrokeKind.DimensionLine) or (StrokeKind.DimensionLine, StrokeKind.Leader):
                        carriesOn |= Continues(s, t);
                        if (s.Crosses(t))
                            crosses = true;
                        else
                            touches |= Touch(s, t);
                        break;
                }
            }
        }

        return (touches ? PlacingCosts.Touches : grazes ? PlacingCosts.Grazes : 0) + (goesOn ? PlacingCosts.OnExtension : 0) + (crosses ? PlacingCosts.SeenAcross : 0) + (carriesOn ? PlacingCosts.CarriedOn : 0);
    }

    /// <summary>Lines of a cutting plane's end, a view's arrow, a mould's joint.</summary>
    public static bool IsMark(ReadOnlySpan<Stroke> strokes) => !strokes.IsEmpty && strokes[0].Kind == StrokeKind.Mark;

    /// <summary>Cutting planes' ends, and other marks, on another's extension line. One of the two is such a mark.</summary>
    public static double OfMark(ReadOnlySpan<Stroke> strokes, Candidate b)
    {
        foreach (ref readonly Stroke s in strokes)
        {
            foreach (ref readonly Stroke t in b.Strokes.AsSpan())
            {
                if ((s.Kind, t.Kind) is (StrokeKind.Mark, StrokeKind.ExtensionLine) or (StrokeKind.ExtensionLine, StrokeKind.Mark) && s.RunsAlong(t, InOneLine))
                    return PlacingCosts.MarkOnExtension;
            }
        }

        return 0;
    }

    /// <summary>A leader or its shoulder that touches an extension line, or crosses it where it bends or ends.</summary>
    private static bool Grazes(in Stroke leader, in Stroke extension) =>
        leader.Crosses(extension) ? leader.FromEnd(extension) < PlacingCosts.Touching : Touch(leader, extension);

    private static bool Touch(in Stroke a, in Stroke b) =>
        a.IsNear(b, PlacingCosts.Touching) && Stroke.Distance(a.A, a.B, b.A, b.B) < PlacingCosts.Touching;

    /// <summary>Two lines in one line, end near end.</summary>
    private static bool Continues(in Stroke a, in Stroke b)
    {
        Vector2D along = (a.B - a.A).Unit();
        Vector2D from = b.A - a.A, to = b.B - a.A;
        return Math.Abs(along.Cross(from)) < NearlyInLine && Math.Abs(along.Cross(to)) < NearlyInLine;
    }
}
