using CsCheck;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Readings;
using LeverDraw.Specimens.Reconstruction;

namespace LeverDraw.Tests.Specimens.Reconstruction;

public sealed class SizeEstimatorProperties
{
    private static readonly Measurand Pad = Measurands.Find("pads.thickness")!, Arm = Measurands.Find("arms.thickness")!;

    /// <summary>All sizes moved by one amount move the estimate and its interval by that amount.</summary>
    [Fact]
    public void Of_Moved_MovesAlong() =>
        Gen.Select(Gen.Double[2.4, 3.3].Array[1, 8], Gen.Double[-0.3, 0.3], Gen.Bool).Sample((values, by, worn) =>
        {
            SizeEstimate a = Of(values, worn), b = Of([.. values.Select(v => v + by)], worn);
            return Math.Abs(b.Value - a.Value - by) < 1e-9 && Math.Abs(b.From - a.From - by) < 1e-6 && Math.Abs(b.To - a.To - by) < 1e-6;
        });

    /// <summary>A further, more worn specimen never makes the estimate of few smaller.</summary>
    [Fact]
    public void Of_OneMoreWorn_NeverLowersTheEstimateOfUpToFive() =>
        Gen.Select(Gen.Double[2.4, 3.3].Array[1, 4], Gen.Double[0, 1]).Sample((values, less) =>
            Of([.. values, values.Min() - less], true).Value >= Of(values, true).Value);

    [Fact]
    public void Of_Order_DoesNotMatter() =>
        Gen.Double[2.4, 3.3].Array[1, 9].Sample(values => Of(values, true) == Of([.. values.Reverse()], true));

    private static SizeEstimate Of(double[] values, bool worn) => SizeEstimator.Of(worn ? Pad : Arm, [.. values.Select(v => new SpecimenValue("x", v, worn, 0.003, 0.0115, 1))]);
}
