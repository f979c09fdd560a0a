using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>What two placed annotations cost each other besides, while a drawn view settles: what breaks no rule and is no reason to reduce a scale, but makes a reader look twice. The same both ways round.</summary>
internal static class PairBlemish
{
    /// <summary>Places farther from each other than this have none, millimetres.</summary>
    public const double Farthest = 8;

    public static double Between(Candidate a, Candidate b) => Between(a.Texts, a.Strokes, a.Heads, a.Bounds, b);

    public static double Between(PlaceShape a, Candidate b) => Between(a.Texts, a.Strokes, a.Heads, a.Bounds, b);

    private static double Between(ReadOnlySpan<OrientedBox> texts, ReadOnlySpan<Stroke> strokes, ReadOnlySpan<Stroke> heads, Box2D bounds, Candidate b)
    {
        if (!bounds.Inflated(Farthest).Overlaps(b.Bounds))
            return 0;
        double cost = 0;
        foreach (ref readonly OrientedBox text in texts)
        {
            foreach (ref readonly OrientedBox other in b.Texts.AsSpan())
                cost = Math.Max(cost, PlacingCosts.ReadOn * LetterBlemish.Nearness(text, other));
        }

        foreach (ref readonly Stroke head in heads)
        {
            foreach (ref readonly Stroke other in b.Heads.AsSpan())
            {
                if (HeadBlemish.Meet(head, other))
                    cost += PlacingCosts.HeadsMeet;
            }
        }

        bool its = LetterBlemish.IsNear(b.Texts, bounds), own = LetterBlemish.IsNear(texts, b.Bounds);
        if ((its && LetterBlemish.Underlines(strokes, b.Strokes, b.Texts)) || (own && LetterBlemish.Underlines(b.Strokes, strokes, texts)))
            cost += PlacingCosts.Underlined;
        if ((its && LetterBlemish.IsAt(strokes, b.Strokes, b.Texts)) || (own && LetterBlemish.IsAt(b.Strokes, strokes, texts)))
            cost += PlacingCosts.LetterAtLine;
        if ((its && LetterBlemish.IsBeside(strokes, b.Texts)) || (own && LetterBlemish.IsBeside(b.Strokes, texts)))
            cost += PlacingCosts.BesideDimension;
        if ((its && LetterBlemish.RunsInto(strokes, b.Texts)) || (own && LetterBlemish.RunsInto(b.Strokes, texts)))
            cost += PlacingCosts.RunsInto;
        return cost + (HeadBlemish.Through(heads, b.Strokes, HeadBlemish.IsLeader(strokes)) + HeadBlemish.Through(b.Heads, strokes, HeadBlemish.IsLeader(b.Strokes)) + LineBlemish.Between(strokes, b));
    }
}
