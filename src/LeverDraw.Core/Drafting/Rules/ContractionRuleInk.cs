using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;
using LeverDraw.Units;

namespace LeverDraw.Drafting.Rules;

/// <summary>A rule that is long by a contraction: millimetres along its upper edge, inches and sixteenths along its lower. Everything is paper millimetres, whatever the drawing's scale.</summary>
public static class ContractionRuleInk
{
    /// <summary>Greatest lengths of graduations from the edge inwards.</summary>
    private const double Longest = 5, Edge = 0;

    private const double Lettering = 2.5, Gap = 1.1, UnitRoom = 6;

    /// <summary>From edge to edge.</summary>
    public const double Height = (2 * (Longest + Gap + Lettering)) + Lettering + (2 * 1.6);

    /// <param name="factor">Length on the rule by length it stands for: 1 + contraction.</param>
    /// <param name="millimetres">Of the upper scale, a whole number of tens.</param>
    /// <param name="inches">Of the lower scale.</param>
    /// <param name="words">Between the two.</param>
    public static PaperBlock Build(string name, double factor, int millimetres, int inches, string words)
    {
        var items = ImmutableArray.CreateBuilder<PlotItem>();
        double long1 = millimetres * factor, long2 = inches * Length.MillimetresPerInch * factor, width = Math.Max(long1, long2);
        items.Add(Line(new(0, Height), new(long1, Height)));
        items.Add(Line(new(0, Edge), new(long2, Edge)));
        for (int i = 0; i <= millimetres; i++)
        {
            double length = i % 10 == 0 ? Longest : i % 5 == 0 ? 3.8 : 2.5;
            items.Add(Line(new(i * factor, Height), new(i * factor, Height - length)));
            if (i % 10 == 0)
                items.Add(Numbered(i, millimetres, "mm", i * factor, Height - Longest - Gap - Lettering));
        }

        for (int i = 0; i <= inches * 16; i++)
        {
            double x = i / 16.0 * Length.MillimetresPerInch * factor;
            double length = i % 16 == 0 ? Longest : i % 8 == 0 ? 4 : i % 4 == 0 ? 3.3 : i % 2 == 0 ? 2.6 : 1.9;
            items.Add(Line(new(x, Edge), new(x, length)));
            if (i % 16 == 0)
                items.Add(Numbered(i / 16, inches, "in", x, Longest + Gap));
        }

        PlotText text = StrokeLettering.Compose(words, new Point2D(4, (Height - Lettering) / 2), Lettering);
        items.Add(text);
        // Room for the unit beside the last number.
        return new PaperBlock(name, new Box2D(-4, -1, Math.Max(width + UnitRoom, 4 + text.Width) + 4, Height + 1), items.ToImmutable(), []);
    }

    private static PlotStroke Line(Point2D from, Point2D to) => new(LineRole.Dimension, new LineEdge(from, to));

    /// <summary>Under its graduation; the unit follows the last number, as on a rule.</summary>
    private static PlotText Numbered(int number, int last, string unit, double x, double baseline)
    {
        string digits = number.ToString(CultureInfo.InvariantCulture);
        return StrokeLettering.Compose(number == last ? digits + " " + unit : digits, new Point2D(x - (StrokeLettering.WidthOf(digits, Lettering) / 2), baseline), Lettering);
    }
}
