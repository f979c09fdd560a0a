namespace LeverDraw.Drafting.Completeness;

/// <summary>Singular values and right singular vectors of a small matrix, by one-sided Jacobi rotations (Hestenes 1958; Golub and Van Loan, Matrix Computations, 8.6).</summary>
/// <param name="Values">In no order, one for each column.</param>
/// <param name="Right">Column j belongs to value j; orthonormal.</param>
internal sealed record SingularValues(double[] Values, double[,] Right)
{
    private const int MostSweeps = 60;

    /// <summary>Columns this nearly square to each other are left alone; and columns this small are zero.</summary>
    private const double Square = 1e-15, Nothing = 1e-30;

    public static SingularValues Of(double[,] matrix)
    {
        int rows = matrix.GetLength(0), columns = matrix.GetLength(1);
        double[][] a = new double[columns][], v = new double[columns][];
        for (int j = 0; j < columns; j++)
        {
            a[j] = new double[rows];
            for (int i = 0; i < rows; i++)
                a[j][i] = matrix[i, j];
            v[j] = new double[columns];
            v[j][j] = 1;
        }

        bool turned = true;
        for (int sweep = 0; sweep < MostSweeps && turned; sweep++)
        {
            turned = false;
            for (int p = 0; p < columns; p++)
            {
                for (int q = p + 1; q < columns; q++)
                {
                    double pp = Dot(a[p], a[p]), qq = Dot(a[q], a[q]), pq = Dot(a[p], a[q]);
                    if (Math.Abs(pq) <= Math.Max(Square * Math.Sqrt(pp * qq), Nothing))
                        continue;
                    turned = true;
                    double zeta = (qq - pp) / (2 * pq);
                    double t = (zeta < 0 ? -1 : 1) / (Math.Abs(zeta) + Math.Sqrt(1 + (zeta * zeta)));
                    double c = 1 / Math.Sqrt(1 + (t * t));
                    Turn(a[p], a[q], c, c * t);
                    Turn(v[p], v[q], c, c * t);
                }
            }
        }

        double[,] right = new double[columns, columns];
        for (int j = 0; j < columns; j++)
        {
            for (int i = 0; i < columns; i++)
                right[i, j] = v[j][i];
        }

        return new SingularValues([.. a.Select(x => Math.Sqrt(Dot(x, x)))], right);
    }

    private static double Dot(double[] x, double[] y)
    {
        double sum = 0;
        for (int i = 0; i < x.Length; i++)
            sum += x[i] * y[i];
        return sum;
    }

    private static void Turn(double[] x, double[] y, double c, double s)
    {
        for (int i = 0; i < x.Length; i++)
            (x[i], y[i]) = ((c * x[i]) - (s * y[i]), (s * x[i]) + (c * y[i]));
    }
}
