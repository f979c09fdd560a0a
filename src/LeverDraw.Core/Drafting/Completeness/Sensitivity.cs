using System.Collections.Immutable;

namespace LeverDraw.Drafting.Completeness;

/// <summary>How shape and stated sizes change with each parameter, by differences.</summary>
/// <param name="Shape">One row for each number of the shape, one column for each parameter.</param>
/// <param name="Sizes">One row for each size on the sheet.</param>
internal sealed record Sensitivity(double[,] Shape, double[,] Sizes)
{
    /// <summary>Step, in the parameter's unit: the error of a central difference is then about 1e-9 from rounding and less from curvature, but for radii of a few hundredths.</summary>
    private const double Step = 1e-5;

    /// <param name="atEdge">The parameter in whose direction the part changes its form both ways; then there is no result.</param>
    public static Sensitivity? Of(ParametricSheet sheet, out string? atEdge)
    {
        ShapeSample here = sheet.Here;
        atEdge = null;
        int count = sheet.Parameters.Length;
        Sensitivity all = new(new double[here.Shape.Length, count], new double[here.Sizes.Length, count]);
        for (int column = 0; column < count; column++)
        {
            double step = Step * sheet.Parameters[column].Unit;
            ShapeSample? up = Beside(sheet, here, column, step), down = Beside(sheet, here, column, -step);
            if (up is not null && down is not null)
            {
                all.Put(column, here, up, down, 0, 1, -1, 2 * step);
            }
            else
            {
                // On the edge of its form a part moves one way only: the difference of second order on that side.
                double way = up is not null ? step : -step;
                if ((up ?? down) is not { } near || Beside(sheet, here, column, 2 * way) is not { } far)
                {
                    atEdge = sheet.Parameters[column].Name;
                    return null;
                }

                all.Put(column, here, near, far, -3, 4, -1, 2 * way);
            }
        }

        return all;
    }

    private static ShapeSample? Beside(ParametricSheet sheet, ShapeSample here, int column, double step)
    {
        ImmutableArray<double> values = [.. sheet.Parameters.Select((p, i) => i == column ? p.Value + step : p.Value)];
        return sheet.At(values) is { } sample && Comparable(sample, here) ? sample : null;
    }

    private static bool Comparable(ShapeSample a, ShapeSample b) =>
        a.Form == b.Form && a.Shape.Length == b.Shape.Length && a.Sizes.Length == b.Sizes.Length
        && a.Sizes.Zip(b.Sizes).All(p => p.First.Name == p.Second.Name && p.First.Standing == p.Second.Standing);

    private void Put(int column, ShapeSample here, ShapeSample a, ShapeSample b, double w0, double wa, double wb, double over)
    {
        for (int i = 0; i < here.Shape.Length; i++)
            Shape[i, column] = ((w0 * here.Shape[i]) + (wa * a.Shape[i]) + (wb * b.Shape[i])) / over;
        for (int i = 0; i < here.Sizes.Length; i++)
            Sizes[i, column] = ((w0 * here.Sizes[i].Value) + (wa * a.Sizes[i].Value) + (wb * b.Sizes[i].Value)) / over;
    }
}
