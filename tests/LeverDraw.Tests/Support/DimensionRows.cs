using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Support;

/// <summary>Looks on the finished ink at linear dimensions beside each other in a view: whose number stands where another's span is, and which of two stands outside. Blind to how they were placed.</summary>
internal static class DimensionRows
{
    /// <summary>Rows farther apart than this, millimetres, are not read together.</summary>
    private const double Apart = 20;

    /// <summary>Numbers beside their own extension lines that stand within the span of a neighbouring parallel dimension.</summary>
    public static IEnumerable<string> Claimed(PlotSheet sheet) =>
        from pair in Pairs(sheet)
        let at = Along(pair.One, pair.One.TextMiddle)
        where IsOnLine(sheet, pair.One) && (at < pair.Own.From || at > pair.Own.To)
        where at > pair.Others.From && at < pair.Others.To
        let out1 = pair.Level - pair.Reach
        let out2 = pair.OthersLevel - pair.OthersReach
        // Near by, or between the other's extension lines, which run on to a line farther out.
        where Math.Abs(pair.Level - pair.OthersLevel) < Apart || (out1 * out2 > 0 && (pair.OthersLevel - pair.Level) * Math.Sign(out2) > 0)
        select $"{pair.One.Name} {pair.One.Text.Split('\n')[0]} stands in {pair.Other.Name}";

    /// <summary>Dimensions that stand outside a longer parallel one on the same side, with its span round theirs.</summary>
    public static IEnumerable<string> OutsideLonger(PlotSheet sheet) =>
        from pair in Pairs(sheet)
        where pair.Own.From > pair.Others.From - 0.1 && pair.Own.To < pair.Others.To + 0.1 && pair.Own.To - pair.Own.From < pair.Others.To - pair.Others.From - 0.3
        let out1 = pair.Level - pair.Reach
        let out2 = pair.OthersLevel - pair.OthersReach
        where out1 * out2 > 0 && (pair.Level - pair.OthersLevel) * Math.Sign(out1) > 1 && Math.Abs(pair.Level - pair.OthersLevel) < 1.5 * Apart
        select $"{pair.One.Name} {pair.One.Text.Split('\n')[0]} outside {pair.Other.Name}";

    private static IEnumerable<Row> Pairs(PlotSheet sheet)
    {
        PlotDimension[] linear = [.. sheet.Dimensions.Where(d => d.Kind == PlotDimensionKind.Linear)];
        foreach (PlotDimension one in linear)
        {
            foreach (PlotDimension other in linear)
            {
                if (other.Id == one.Id || other.View != one.View || Math.Abs(Math.Sin(one.Direction - other.Direction)) > 1e-6)
                    continue;
                double[] own = [Along(one, one.Points[0]), Along(one, one.Points[1])], its = [Along(one, other.Points[0]), Along(one, other.Points[1])];
                yield return new Row(one, other, (own.Min(), own.Max()), (its.Min(), its.Max()), Across(one, one.Points[2]), Across(one, other.Points[2]), Reach(one, one), Reach(one, other));
            }
        }
    }

    /// <summary>The measured point that lies nearest to the dimension line.</summary>
    private static double Reach(PlotDimension frame, PlotDimension d)
    {
        double a = Across(frame, d.Points[0]), b = Across(frame, d.Points[1]), level = Across(frame, d.Points[2]);
        return Math.Abs(a - level) < Math.Abs(b - level) ? a : b;
    }

    /// <summary>The number stands on its dimension line, not on a leader.</summary>
    private static bool IsOnLine(PlotSheet sheet, PlotDimension d)
    {
        double height = sheet.Items.OfType<PlotText>().First(t => t.Owner == d.Id).Height;
        return Math.Abs(Across(d, d.TextMiddle) - Across(d, d.Points[2])) < 3 * height;
    }

    private static double Along(PlotDimension d, Point2D p) => Vector2D.FromAngle(d.Direction).Dot(p - Point2D.Origin);

    private static double Across(PlotDimension d, Point2D p) => Vector2D.FromAngle(d.Direction).Left.Dot(p - Point2D.Origin);

    private sealed record Row(PlotDimension One, PlotDimension Other, (double From, double To) Own, (double From, double To) Others, double Level, double OthersLevel, double Reach, double OthersReach);
}
