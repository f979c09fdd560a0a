using System.Collections.Immutable;
using System.Text;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Lettering;

/// <summary>Text as pen strokes in our own single-stroke upright letters, with their own widths (proportions of <see cref="Standards.Iso3098Lettering"/>).</summary>
/// <remarks>
/// Letters stand clear of each other by 2/10 h and words by 6/10 h; figures all take the same room, so columns of them line up.
/// A fraction that stands by itself ("1 3/16", "9/16") is drawn with small numerals about a slanted bar, see <see cref="FractionToken"/>; the plain string stays in <see cref="PlotText.Text"/>.
/// A character without a shape is drawn as a crossed box; ask <see cref="Supports(Rune)"/> beforehand.
/// </remarks>
public static class StrokeLettering
{
    /// <summary>Width from the first to the last stroke's edge, millimetres, pen width included. A figure counts with its whole cell, blanks at the end do not count.</summary>
    /// <param name="height">Of the capitals, millimetres, above zero.</param>
    public static double WidthOf(string text, double height, bool stackFractions = true, bool stackTolerances = false)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(height);
        LineLayout line = new(height, null);
        line.Add(text, stackFractions, stackTolerances);
        return line.Right * height;
    }

    /// <summary>The same for a height of 1, of a piece of a longer text.</summary>
    internal static double RatioOf(ReadOnlySpan<char> text)
    {
        LineLayout line = new(1, null);
        line.Add(text, stackFractions: true);
        return line.Right;
    }

    /// <summary>A line of lettering whose baseline starts at <paramref name="anchor"/>: the ink of the first letter begins there. Line ends are set as blanks.</summary>
    /// <param name="height">Of the capitals, millimetres, above zero.</param>
    /// <param name="angle">Radians, counter-clockwise.</param>
    /// <param name="stackFractions">False where a slash between numbers is no fraction, such as a sheet's number.</param>
    /// <param name="stackTolerances">True for a dimension's text: <c>9.5 0/−0.1</c> is drawn with its deviations one above the other; the plain string stays.</param>
    public static PlotText Compose(
        string text,
        Point2D anchor,
        double height,
        double angle = 0,
        string? owner = null,
        string? view = null,
        bool stackFractions = true,
        bool stackTolerances = false)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(height);
        ImmutableArray<PlotGlyph>.Builder glyphs = ImmutableArray.CreateBuilder<PlotGlyph>(text.Length);
        LineLayout line = new(height, glyphs);
        line.Add(text, stackFractions, stackTolerances);
        double? level = stackTolerances && HasStack(text) ? WidthOf(text, height, stackFractions) : null;
        return new PlotText(LineRole.Lettering, text, anchor, height, angle, line.Right * height, glyphs.DrainToImmutable(), owner, view) { LevelWidth = level };
    }

    /// <summary>True when two deviations or limits would stand one above the other: the line is then higher, see <see cref="StackStandsOut"/>.</summary>
    public static bool HasStack(string text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            if (StackToken.TryRead(text, i, out _))
                return true;
        }

        return false;
    }

    /// <summary>How far stacked deviations stand out above the capitals and below the baseline, in lettering heights.</summary>
    public const double StackStandsOut = StackedPair.StandsOut;

    /// <summary>True when the character is drawn as itself or needs no ink.</summary>
    public static bool Supports(Rune character) => character.IsBmp && Supports((char)character.Value);

    /// <inheritdoc cref="Supports(Rune)"/>
    public static bool Supports(char character) =>
        GlyphTable.Instance.Find(character) is not null
        || CharacterKinds.IsBlank(character)
        || CharacterKinds.IsInvisible(character)
        || FractionToken.PartsOf(character).Numerator.Length > 0
        || GlyphTable.Instance.TryFindMark(character, out _);

    /// <summary>The characters of a text that would be drawn as a crossed box, each once, in order of appearance.</summary>
    public static ImmutableArray<Rune> Unsupported(string text) =>
        [.. text.EnumerateRunes().Where(rune => !Supports(rune)).Distinct()];
}
