using LeverDraw.Specimens.Statistics;

namespace LeverDraw.Tests.Specimens.Statistics;

/// <summary>NIST's Statistical Reference Datasets for nonlinear regression (numbers carried by three public repositories, equal to the byte).</summary>
public sealed class LeastSquaresTests
{
    private static readonly double[] Misra1aX = [77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0];
    private static readonly double[] Misra1aY = [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78];
    private static readonly double[] Rat42X = [9, 14, 21, 28, 42, 57, 63, 70, 79];
    private static readonly double[] Rat42Y = [8.93, 10.80, 18.59, 22.33, 39.35, 56.11, 61.73, 64.62, 67.08];
    private static readonly double[] Mgh09X = [4, 2, 1, 0.5, 0.25, 0.167, 0.125, 0.1, 0.0833, 0.0714, 0.0625];
    private static readonly double[] Mgh09Y = [0.1957, 0.1947, 0.1735, 0.16, 0.0844, 0.0627, 0.0456, 0.0342, 0.0323, 0.0235, 0.0246];

    [Theory]
    [InlineData(500, 0.0001)]
    [InlineData(250, 0.0005)]
    public void Fit_Misra1a_GivesTheCertifiedValues(double b1, double b2) => Certified(
        [b1, b2], Misra1aX, Misra1aY, (b, x) => b[0] * (1 - Math.Exp(-b[1] * x)),
        [2.3894212918E+02, 5.5015643181E-04], [2.7070075241E+00, 7.2668688436E-06], 1.2455138894E-01);

    [Theory]
    [InlineData(100, 1, 0.1)]
    [InlineData(75, 2.5, 0.07)]
    public void Fit_Rat42_GivesTheCertifiedValues(double b1, double b2, double b3) => Certified(
        [b1, b2, b3], Rat42X, Rat42Y, (b, x) => b[0] / (1 + Math.Exp(b[1] - (b[2] * x))),
        [7.2462237576E+01, 2.6180768402E+00, 6.7359200066E-02], [1.7340283401E+00, 8.8295217536E-02, 3.4465663377E-03], 8.0565229338E+00);

    /// <summary>From the nearer start; the farther one is known to lead elsewhere.</summary>
    [Fact]
    public void Fit_Mgh09_GivesTheCertifiedValues() => Certified(
        [0.25, 0.39, 0.415, 0.39], Mgh09X, Mgh09Y, (b, x) => b[0] * ((x * x) + (x * b[1])) / ((x * x) + (x * b[2]) + b[3]),
        [1.9280693458E-01, 1.9128232873E-01, 1.2305650693E-01, 1.3606233068E-01], [1.1435312227E-02, 1.9633220911E-01, 8.0842031232E-02, 9.0025542308E-02], 3.0750560385E-04);

    /// <summary>By hand: 10 ± 1 and 20 ± 1 beside their sum 33 ± 1 give 11, 21 and 32; square sum 1 + 1 + 1; each within √(2/3).</summary>
    [Fact]
    public void Fit_TiedSum_SharesTheMisclosureEvenly()
    {
        LeastSquaresFit fit = LeastSquares.Fit([10, 20], x => [x[0] - 10, x[1] - 20, x[0] + x[1] - 33])!;
        Assert.Equal(11, fit.Values[0], 1e-9);
        Assert.Equal(21, fit.Values[1], 1e-9);
        Assert.Equal(3, fit.SquareSum, 1e-9);
        Assert.Equal(Math.Sqrt(2.0 / 3), fit.Deviations[0], 1e-9);
    }

    [Fact]
    public void Fit_ParametersThatCannotBeToldApart_IsNull() =>
        Assert.Null(LeastSquares.Fit([1, 2], x => [x[0] + x[1] - 3, (2 * (x[0] + x[1])) - 6.1, x[0] + x[1] - 2.9]));

    private static void Certified(double[] start, double[] xs, double[] ys, Func<double[], double, double> model, double[] values, double[] deviations, double squares)
    {
        LeastSquaresFit fit = LeastSquares.Fit(start, b => [.. xs.Select((x, i) => model(b, x) - ys[i])])!;
        // The standard deviations of NIST are for residuals of the fit's own spread.
        double spread = Math.Sqrt(squares / (xs.Length - values.Length));
        for (int i = 0; i < values.Length; i++)
        {
            Assert.Equal(1, fit.Values[i] / values[i], 1e-7);
            Assert.Equal(1, spread * fit.Deviations[i] / deviations[i], 1e-5);
        }

        Assert.Equal(1, fit.SquareSum / squares, 1e-9);
    }
}
