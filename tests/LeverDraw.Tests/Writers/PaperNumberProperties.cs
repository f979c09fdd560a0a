using System.Globalization;
using CsCheck;
using LeverDraw.Writers;

namespace LeverDraw.Tests.Writers;

public class PaperNumberProperties
{
    private static readonly Gen<double> Sizes = Gen.Double[-5000, 5000];

    [Fact]
    public void Paper_AnySize_IsWithinHalfAStep() =>
        Sizes.Sample(v => Math.Abs(Parsed(v, PaperNumber.Paper) - v) <= 0.5e-4 + 1e-8);

    [Fact]
    public void Exact_AnySize_IsWithinHalfAStepAndReadsBackAsRounded() =>
        Sizes.Sample(v =>
        {
            double read = Parsed(v, PaperNumber.Exact);
            return Math.Abs(read - v) <= 0.51e-10 && Math.Abs(read - PaperNumber.RoundedExact(v)) <= 1e-12;
        });

    [Fact]
    public void Full_AnySize_ReadsBackTheSame() => Sizes.Sample(v => Math.Abs(v) < 1e-4 || Parsed(v, PaperNumber.Full).Equals(v));

    private static double Parsed(double value, PaperNumberTests.Form form) =>
        double.Parse(PaperNumberTests.Text(value, form), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
}
