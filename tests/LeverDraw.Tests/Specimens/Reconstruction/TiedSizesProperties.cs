using System.Collections.Immutable;
using CsCheck;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Readings;
using LeverDraw.Specimens.Reconstruction;

namespace LeverDraw.Tests.Specimens.Reconstruction;

public sealed class TiedSizesProperties
{
    private static readonly Gen<(double Gap, double Arm, double Misfit)[]> Forks = Gen.Select(Gen.Double[13, 15], Gen.Double[4.5, 6], Gen.Double[-0.3, 0.3]).Array[1, 5];

    /// <summary>Readings that fit already stay as they are.</summary>
    [Fact]
    public void Adjust_ReadingsThatFit_StayAndAgree() => Forks.Sample(forks =>
    {
        var values = Values(forks, misfits: false);
        ImmutableArray<TieGroup> ties = Adjust(values);
        return ties.All(t => t.Agrees && t.ChiSquare < 1e-12)
            && forks.Select((f, i) => Of(values, "fork.gap", i) is var gap && Math.Abs(gap.Value - f.Gap) < 1e-7).All(same => same);
    });

    /// <summary>However they misfit, afterwards a width over all is its parts, and each specimen keeps to its own readings.</summary>
    [Fact]
    public void Adjust_AnyReadings_FitAfterwards_SpecimenBySpecimen() => Forks.Sample(forks =>
    {
        var values = Values(forks, misfits: true);
        ImmutableArray<TieGroup> ties = Adjust(values);
        return forks.Select((f, i) =>
        {
            var alone = Values([f], misfits: true);
            Adjust(alone);
            double gap = Of(values, "fork.gap", i).Value, arm = Of(values, "arms.width", i).Value;
            return Math.Abs(ties[i].Residuals.Single(r => r.Name == "fork.outside").Adjusted - gap - (2 * arm)) < 1e-7 && Math.Abs(Of(alone, "fork.gap", 0).Value - gap) < 1e-7;
        }).All(good => good);
    }, iter: 40);

    private static ImmutableArray<TieGroup> Adjust(Dictionary<string, ImmutableArray<SpecimenValue>> values) =>
        TiedSizes.Adjust([.. values["fork.gap"].Select(v => v.Specimen)], values, Measurands.Lever, 1.0 / 48);

    private static SpecimenValue Of(Dictionary<string, ImmutableArray<SpecimenValue>> values, string name, int specimen) => values[name].Single(v => v.Specimen == Name(specimen));

    private static Dictionary<string, ImmutableArray<SpecimenValue>> Values((double Gap, double Arm, double Misfit)[] forks, bool misfits)
    {
        return new(StringComparer.Ordinal)
        {
            ["fork.gap"] = All(f => f.Gap),
            ["arms.width"] = All(f => f.Arm),
            ["fork.outside"] = All(f => f.Gap + (2 * f.Arm) + (misfits ? f.Misfit : 0)),
        };

        ImmutableArray<SpecimenValue> All(Func<(double Gap, double Arm, double Misfit), double> size) => [.. forks.Select((f, i) => new SpecimenValue(Name(i), size(f), false, 0.003, 0.0115, 1))];
    }

    private static string Name(int specimen) => ((char)('A' + specimen)).ToString();
}
