using System.Collections.Immutable;
using LeverDraw.Drafting.Lettering.Shapes;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Lettering;

/// <summary>Puts a mark on a letter.</summary>
internal static class AccentedGlyph
{
    /// <summary>How much higher a mark stands over a tall letter.</summary>
    private const double Lift = 0.32;

    /// <summary>Clear of the letter's centre line, for a mark beside it.</summary>
    private const double SideGap = 0.18;

    /// <summary>A letter reaching above this is tall.</summary>
    private const double TallFrom = 0.85;

    public static Glyph Make(string character, Glyph letter, Glyph mark, MarkPlace place)
    {
        Transform2D move = PlaceOn(letter, place);
        ImmutableArray<ImmutableArray<Edge>>.Builder strokes = letter.Shape.Strokes.ToBuilder();
        foreach (ImmutableArray<Edge> stroke in mark.Shape.Strokes)
        {
            ImmutableArray<Edge>.Builder moved = ImmutableArray.CreateBuilder<Edge>(stroke.Length);
            foreach (Edge edge in stroke)
                moved.Add(edge.Transformed(move));
            strokes.Add(moved.MoveToImmutable());
        }

        Glyph joined = Glyph.FromStrokes(character, strokes.ToImmutable());
        return place is MarkPlace.Beside
            ? joined
            : joined with { Left = Math.Min(letter.Left, joined.Left), Right = Math.Max(letter.Right, joined.Right) };
    }

    /// <summary>Where the mark's own origin goes.</summary>
    public static Transform2D PlaceOn(Glyph letter, MarkPlace place) => place switch
    {
        MarkPlace.Above => Transform2D.Move(letter.Lines.Centre.X, letter.Lines.MaxY > TallFrom ? Lift : 0),
        MarkPlace.Below => Transform2D.Move(letter.Lines.Centre.X, 0),
        MarkPlace.BelowRight => Transform2D.Move(letter.Lines.MaxX, 0),
        _ => Transform2D.Move(RightAtTop(letter) + SideGap, 0),
    };

    /// <summary>Where the letter ends at the mark's height: a foot or a crossbar below does not push the mark away.</summary>
    private static double RightAtTop(Glyph letter) =>
        letter.Shape.Strokes.SelectMany(stroke => stroke).Select(edge => edge.Box).Where(box => box.MaxY > TallFrom).Max(box => box.MaxX);
}
