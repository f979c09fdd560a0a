using System.Collections.Immutable;
using LeverDraw.Drafting.Lettering.Shapes;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Lettering;

/// <summary>Sets letters side by side for a capital height of 1 and hands them on at the wanted height. With no list to fill it only measures.</summary>
internal ref struct LineLayout
{
    private const double LetterGap = LetteringMetrics.LetterGapRatio;
    private const double BlankGap = LetteringMetrics.WordGapRatio - LetteringMetrics.LetterGapRatio;

    private readonly double height;
    private readonly ImmutableArray<PlotGlyph>.Builder? placed;
    private double gap;
    private char lastCharacter;
    private double lastStart;
    private Glyph? last;

    public LineLayout(double height, ImmutableArray<PlotGlyph>.Builder? placed)
    {
        this.height = height;
        this.placed = placed;
    }

    /// <summary>Right edge of the last cell, for a height of 1.</summary>
    public double Right { get; private set; }

    public void Add(ReadOnlySpan<char> text, bool stackFractions, bool stackTolerances = false)
    {
        GlyphTable table = GlyphTable.Instance;
        int at = 0;
        while (at < text.Length)
        {
            char character = text[at];
            if (stackTolerances && (char.IsAsciiDigit(character) || character == '.' || StackToken.IsSign(character)) && StackToken.TryRead(text, at, out StackToken pair))
            {
                AddPair(text[pair.Start..pair.Slash], text[(pair.Slash + 1)..pair.End]);
                at = pair.End;
                continue;
            }

            if (stackFractions && char.IsAsciiDigit(character) && FractionToken.TryRead(text, at, out FractionToken token))
            {
                bool mixed = at >= 2 && char.IsWhiteSpace(text[at - 1]) && char.IsAsciiDigit(text[at - 2]);
                AddFraction(text[token.Start..token.Slash], text[(token.Slash + 1)..token.End], mixed);
                at = token.End;
                continue;
            }

            at++;
            if (table.Find(character) is { } glyph)
                Add(character, glyph);
            else if (AddUncommon(character))
                continue;
            else if (char.IsHighSurrogate(character) && at < text.Length && char.IsLowSurrogate(text[at]))
                at++;
        }
    }

    private void Add(char character, Glyph glyph)
    {
        Right += gap > 0 && gap == LetterGap && LetterPairs.IsClose(lastCharacter, character) ? LetterGap / 2 : gap;
        lastStart = Right;
        Place(glyph.Shape, Right - glyph.Left, 0, 1);
        Right += glyph.Width;
        gap = LetterGap;
        lastCharacter = character;
        last = glyph;
    }

    /// <returns>False when a substitute was set.</returns>
    private bool AddUncommon(char character)
    {
        if (CharacterKinds.IsBlank(character))
        {
            gap += BlankGap;
            last = null;
            return true;
        }

        if (CharacterKinds.IsInvisible(character))
            return true;

        (string numerator, string denominator) = FractionToken.PartsOf(character);
        if (numerator.Length > 0)
        {
            AddFraction(numerator, denominator, char.IsAsciiDigit(lastCharacter) && last is not null);
            return true;
        }

        if (last is not null && GlyphTable.Instance.TryFindMark(character, out (Glyph Glyph, MarkPlace Place) mark))
        {
            AddMark(character, last, mark.Glyph, mark.Place);
            return true;
        }

        Add(character, GlyphTable.Substitute);
        return false;
    }

    /// <summary>Over the letter before: one shape for both where there is one, else the mark by itself.</summary>
    private void AddMark(char character, Glyph letter, Glyph mark, MarkPlace place)
    {
        if (GlyphTable.Instance.FindPair(lastCharacter, character) is { } joined)
        {
            placed?.RemoveAt(placed.Count - 1);
            Place(joined.Shape, lastStart - joined.Left, 0, 1);
            Right = lastStart + joined.Width;
            lastCharacter = joined.Shape.Character[0];
            last = joined;
            return;
        }

        Transform2D move = AccentedGlyph.PlaceOn(letter, place);
        Place(mark.Shape, lastStart - letter.Left + move.Translation.X, move.Translation.Y, 1);
    }

    private void AddFraction(ReadOnlySpan<char> numerator, ReadOnlySpan<char> denominator, bool afterWhole)
    {
        Right += afterWhole ? StackedFraction.GapAfterWhole : gap;
        double barFoot = Right + StackedFraction.WidthOf(numerator) + StackedFraction.NumeralToBar;
        SetNumerals(numerator, Right, StackedFraction.NumeratorBaseline);
        Place(StackedFraction.Bar.Shape, barFoot, 0, 1);
        double denominatorStart = barFoot + StackedFraction.BarToDenominator;
        SetNumerals(denominator, denominatorStart, StackedFraction.DenominatorBaseline);
        Right = denominatorStart + StackedFraction.WidthOf(denominator);
        gap = LetterGap;
        last = null;
    }

    /// <summary>Signs stand under signs; a 0, which has none, under the other's first figure.</summary>
    private void AddPair(ReadOnlySpan<char> upper, ReadOnlySpan<char> lower)
    {
        Right += gap;
        double width = Math.Max(SetNumber(upper, Right, StackedPair.UpperBaseline, lower), SetNumber(lower, Right, StackedPair.LowerBaseline, upper));
        Right += width;
        gap = LetterGap;
        last = null;
    }

    private readonly double SetNumber(ReadOnlySpan<char> number, double start, double baseline, ReadOnlySpan<char> other)
    {
        double x = start + (StackToken.IsSign(other[0]) && !StackToken.IsSign(number[0]) ? StackedPair.AdvanceOf(other[0]) : 0);
        double end = x + StackedPair.WidthOf(number);
        foreach (char character in number)
        {
            Glyph glyph = GlyphTable.Instance.Find(character)!;
            Place(glyph.Shape, x + StackedPair.OffsetOf(glyph), baseline, StackedPair.Scale);
            x += StackedPair.AdvanceOf(character);
        }

        return end - start;
    }

    private readonly void SetNumerals(ReadOnlySpan<char> digits, double x, double baseline)
    {
        foreach (char digit in digits)
        {
            Glyph glyph = GlyphTable.Instance.Find(digit)!;
            Place(glyph.Shape, x + StackedFraction.OffsetOf(glyph), baseline, StackedFraction.NumeralScale);
            x += StackedFraction.Advance;
        }
    }

    private readonly void Place(PlotGlyphShape shape, double x, double y, double scale) =>
        placed?.Add(new PlotGlyph(shape, x * height, y * height, scale * height));
}
