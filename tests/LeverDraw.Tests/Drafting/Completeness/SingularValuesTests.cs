using LeverDraw.Drafting.Completeness;

namespace LeverDraw.Tests.Drafting.Completeness;

public sealed class SingularValuesTests
{
    [Fact]
    public void Of_ThreeByTwo_HasTheValuesFoundByHand()
    {
        // AᵀA = [[11, 1], [1, 11]] has the eigenvalues 12 and 10.
        double[] values = [.. SingularValues.Of(new double[,] { { 3, 1 }, { -1, 3 }, { 1, 1 } }).Values.OrderDescending()];
        Assert.Equal(Math.Sqrt(12), values[0], 1e-14);
        Assert.Equal(Math.Sqrt(10), values[1], 1e-14);
    }

    [Fact]
    public void Of_WideMatrix_HasAZeroForEachColumnTooMany()
    {
        // Rows (1, 1, 0) and (0, 1, 1): AAᵀ = [[2, 1], [1, 2]] has 3 and 1; what neither row sees is (1, −1, 1).
        SingularValues parts = SingularValues.Of(new double[,] { { 1, 1, 0 }, { 0, 1, 1 } });
        Assert.Equal([0, 1, Math.Sqrt(3)], parts.Values.Order().Select(v => Math.Round(v, 14)), (a, b) => Math.Abs(a - b) < 1e-13);
        int zero = Array.IndexOf(parts.Values, parts.Values.Min());
        Assert.Equal(1 / Math.Sqrt(3), Math.Abs(parts.Right[0, zero]), 1e-14);
        Assert.Equal(parts.Right[0, zero], -parts.Right[1, zero], 1e-14);
        Assert.Equal(parts.Right[0, zero], parts.Right[2, zero], 1e-14);
    }
}
