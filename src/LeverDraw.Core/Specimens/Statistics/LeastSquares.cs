namespace LeverDraw.Specimens.Statistics;

/// <summary>What a least-squares fit gave.</summary>
/// <param name="Values">The parameters.</param>
/// <param name="Deviations">Their standard uncertainties, for residuals of standard uncertainty one.</param>
/// <param name="SquareSum">Of the residuals.</param>
internal sealed record LeastSquaresFit(double[] Values, double[] Deviations, double SquareSum);

/// <summary>Weighted least squares, linear or not: damped Gauss–Newton steps (Levenberg and Marquardt's damping), each solved by Householder reflections, so the normal equations' loss of digits is not met.</summary>
internal static class LeastSquares
{
    private const int MostSteps = 2000;

    /// <param name="start">Start values; none zero where the scale of a parameter is to be known.</param>
    /// <param name="residuals">Model less reading, each over its own standard uncertainty.</param>
    /// <returns>Null when the parameters cannot be told apart, or nothing settles.</returns>
    public static LeastSquaresFit? Fit(double[] start, Func<double[], double[]> residuals)
    {
        double[] x = [.. start];
        double[] r = residuals(x);
        double sum = Squares(r), damping = 1e-3;
        int settled = 0;
        for (int step = 0; step < MostSteps && settled < 3; step++)
        {
            double[][] jacobian = Jacobian(x, residuals, r.Length);
            double[] sizes = [.. jacobian.Select(column => Math.Sqrt(Squares(column)))];
            if (sizes.Any(s => s == 0 || !double.IsFinite(s)))
                return null;
            double[]? move = Solve(jacobian, r, [.. sizes.Select(s => s * Math.Sqrt(damping))]);
            double[] next = move is null ? x : [.. x.Zip(move, (a, b) => a - b)];
            double[] nextR = move is null ? r : residuals(next);
            double nextSum = Squares(nextR);
            if (move is null || !double.IsFinite(nextSum) || nextSum > sum)
            {
                damping *= 10;
                if (damping > 1e12)
                    break;
                continue;
            }

            bool still = sum - nextSum <= 1e-15 * sum && move.Zip(next, (m, v) => Math.Abs(m) <= 1e-11 * Math.Max(Math.Abs(v), 1e-30)).All(small => small);
            settled = still || nextSum == 0 ? settled + 1 : 0;
            (x, r, sum) = (next, nextR, nextSum);
            damping = Math.Max(damping / 10, 1e-15);
        }

        return Spread(Jacobian(x, residuals, r.Length)) is { } spread ? new LeastSquaresFit(x, spread, sum) : null;
    }

    private static double Squares(double[] v) => v.Sum(a => a * a);

    /// <summary>Columns; by differences on both sides, corrected once (Richardson).</summary>
    private static double[][] Jacobian(double[] x, Func<double[], double[]> residuals, int count)
    {
        double[][] columns = new double[x.Length][];
        for (int j = 0; j < x.Length; j++)
        {
            double h = 1e-3 * (x[j] == 0 ? 1 : Math.Abs(x[j]));
            double[] wide = Slope(x, j, h, residuals), narrow = Slope(x, j, h / 2, residuals);
            columns[j] = new double[count];
            for (int i = 0; i < count; i++)
                columns[j][i] = ((4 * narrow[i]) - wide[i]) / 3;
        }

        return columns;
    }

    private static double[] Slope(double[] x, int j, double h, Func<double[], double[]> residuals)
    {
        double[] up = [.. x], down = [.. x];
        up[j] += h;
        down[j] -= h;
        return [.. residuals(up).Zip(residuals(down), (a, b) => (a - b) / (up[j] - down[j]))];
    }

    /// <summary>The step that makes the linearised residuals, with the damping as further rows, least.</summary>
    private static double[]? Solve(double[][] jacobian, double[] r, double[] damping)
    {
        int n = jacobian.Length, m = r.Length;
        double[][] a = [.. jacobian.Select((column, j) =>
        {
            double[] longer = new double[m + n];
            column.CopyTo(longer, 0);
            longer[m + j] = damping[j];
            return longer;
        })];
        double[] b = new double[m + n];
        r.CopyTo(b, 0);
        return Triangulate(a, b) ? Back(a, b) : null;
    }

    /// <summary>Square roots of the diagonal of (JᵀJ)⁻¹, from the triangle R: the rows of R⁻¹.</summary>
    private static double[]? Spread(double[][] jacobian)
    {
        int n = jacobian.Length;
        double[][] a = [.. jacobian.Select(c => (double[])[.. c])];
        if (jacobian[0].Length < n || !Triangulate(a, new double[jacobian[0].Length]))
            return null;
        double[] spread = new double[n];
        for (int k = 0; k < n; k++)
        {
            double[] unit = new double[n];
            unit[k] = 1;
            double[] column = Back(a, unit);
            for (int i = 0; i < n; i++)
                spread[i] += column[i] * column[i];
        }

        return [.. spread.Select(Math.Sqrt)];
    }

    private static bool Triangulate(double[][] a, double[] b)
    {
        for (int k = 0; k < a.Length; k++)
        {
            double whole = Math.Sqrt(Squares(a[k]));
            double norm = 0;
            for (int i = k; i < b.Length; i++)
                norm += a[k][i] * a[k][i];
            norm = Math.Sqrt(norm);
            if (norm <= 1e-13 * whole)
                return false;
            double[] v = new double[b.Length];
            Array.Copy(a[k], k, v, k, b.Length - k);
            v[k] += v[k] < 0 ? -norm : norm;
            double square = Squares(v);
            for (int j = k; j < a.Length; j++)
                Reflect(a[j], v, square, k);
            Reflect(b, v, square, k);
        }

        return true;
    }

    private static void Reflect(double[] column, double[] v, double square, int from)
    {
        double dot = 0;
        for (int i = from; i < column.Length; i++)
            dot += column[i] * v[i];
        double share = 2 * dot / square;
        for (int i = from; i < column.Length; i++)
            column[i] -= share * v[i];
    }

    private static double[] Back(double[][] a, double[] b)
    {
        double[] x = new double[a.Length];
        for (int i = a.Length - 1; i >= 0; i--)
        {
            double rest = b[i];
            for (int j = i + 1; j < a.Length; j++)
                rest -= a[j][i] * x[j];
            x[i] = rest / a[i][i];
        }

        return x;
    }
}
