using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Lettering;

/// <summary>
/// The notation the letter files are written in: a command letter and numbers, separated by blanks, on a grid of ten units to the capital height, baseline at 0, centre line of the pen.
/// <c>M x y</c> start a stroke · <c>D dx dy</c> set the direction · <c>L x y</c> line · <c>K x y</c> line without a corner (checked) ·
/// <c>T x y</c> arc tangent to the direction · <c>B x y dx dy</c> smooth curve of two arcs that ends in a direction ·
/// <c>A r x y</c> turn on radius r (positive left) until the line to the point is tangent · <c>O x y r</c> circle · <c>P x y</c> dot.
/// </summary>
internal static class GlyphPath
{
    private const double GridUnit = 0.1;

    /// <exception cref="FormatException">The text is not in the notation: a fault in a letter file.</exception>
    public static ImmutableArray<ImmutableArray<Edge>> Parse(string path)
    {
        GlyphPen pen = new(GridUnit);
        string[] words = path.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        int at = 0;
        while (at < words.Length)
        {
            string command = words[at++];
            switch (command)
            {
                case "M":
                    pen.MoveTo(Next(), Next());
                    break;
                case "D":
                    pen.Head(Next(), Next());
                    break;
                case "L":
                    pen.LineTo(Next(), Next());
                    break;
                case "K":
                    pen.SmoothLineTo(Next(), Next());
                    break;
                case "T":
                    pen.ArcTo(Next(), Next());
                    break;
                case "B":
                    pen.CurveTo(Next(), Next(), Next(), Next());
                    break;
                case "A":
                    pen.TurnTowards(Next(), Next(), Next());
                    break;
                case "O":
                    pen.Ring(Next(), Next(), Next());
                    break;
                case "P":
                    pen.Dot(Next(), Next());
                    break;
                default:
                    throw new FormatException($"Unknown command {command} in the letter path {path}");
            }
        }

        return pen.Finish();

        double Next() => double.Parse(words[at++], NumberStyles.Float, CultureInfo.InvariantCulture);
    }
}
