using CsCheck;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Units;
using static LeverDraw.Parts.AdjustingLever.LeverFields;

namespace LeverDraw.Tests.Support;

/// <summary>Random levers whose sizes go together: each is built once here, so what is generated is valid.</summary>
internal static class RandomLevers
{
    public static Gen<ValueBag> Values { get; } =
        from seed in Gen.Int[0, int.MaxValue - 1]
        let values = Draw(new Dice(seed))
        where LeverPart.Build(values).Ok
        select values;

    public static Gen<Lever> Levers { get; } = Values.Select(v => LeverPart.Build(v).Value!);

    public static string Print(Lever lever) =>
        string.Join(", ", All.OfType<LeverDraw.Profiles.SizeField>().Select(f => f.Name + "=" + (lever.Sizes.Find(f)?.Millimetres.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "-"))) + " " + lever.Forms;

    /// <summary>Sizes drawn in proportion to each other; perhaps impossible all the same.</summary>
    public static ValueBag Draw(Dice dice)
    {
        double depth = dice.Between(6, 9.5), height = Math.Max(depth, dice.Between(7, 10.5)), width = dice.Between(7, 10.5);
        double arm = depth * dice.Between(0.38, 0.5), tongue = dice.Between(3, 0.52 * depth), pad = arm * dice.Between(0.72, 0.95), padLength = dice.Between(4.5, 7);
        double gap = dice.Between(10.5, 16), crown = Math.Max(dice.Between(5, 12), 0.95 * padLength);
        string form = dice.Of(Stepped, Tapered, Curved), nose = dice.Of(GearTooth, LeverFields.Parallel, Cam, Bulb);
        ValueBag v = new ValueBag()
            .With(HeadForm, dice.Of(Round, Round, Block)).With(HeadDepth, depth).With(HeadHeight, height).With(HeadWidth, width).With(HeadCornerRadius, dice.Between(0.6, 2))
            .With(HoleDiameter, depth * dice.Between(0.3, 0.4)).With(HoleTaper, dice.Of(Taper.InchPins, Taper.MetricPins, Taper.Parallel)).With(HoleLargeEnd, dice.Of(Left, Right))
            .With(ArmForm, form).With(ArmThickness, arm).With(ArmWidth, dice.Between(4, 6.5)).With(ArmLength, dice.Between(16, 26)).With(ArmSagitta, dice.Between(-0.6, 1.2)).With(ArmEnd, dice.Of(Square, Round))
            .With(ForkGap, gap).With(CrotchRadius, dice.Between(0.6, 1) * gap / 2).With(Web, dice.Between(0, 3))
            .With(ShoulderForm, dice.Of(Straight, Straight, Concave)).With(ShoulderRadius, dice.Between(12, 25)).With(ShoulderStart, dice.Of(0, 0.8))
            .With(PadThickness, pad).With(PadLength, padLength).With(CrownRadius, crown).With(PadEnd, dice.Of(Square, Square, Round)).With(PadEndCorner, dice.Of(0, 0.3, 0.5))
            .With(Sweep, dice.Between(15, 45)).With(TongueLength, dice.Between(8.5, 12)).With(TongueWidth, width * dice.Between(0.6, 0.8)).With(TongueThickness, tongue)
            .With(TongueForm, nose).With(FlankTaper, dice.Between(0, 8)).With(CamRadius, dice.Between(25, 60)).With(NeckThickness, tongue * dice.Between(0.7, 0.9)).With(NoseRadius, tongue * dice.Between(0.1, 0.5))
            .With(HeadFillet, dice.Between(2, 5)).With(Fillet, dice.Of(0, dice.Between(0.6, 1.6))).With(EdgeRound, dice.Between(0.3, 0.9));
        if (dice.Between(0, 1) < 0.3)
            v.With(BossSides, Both).With(BossDiameter, depth * 0.9).With(BossHeight, dice.Between(0.3, 0.8));
        if (dice.Between(0, 1) < 0.4)
            v.With(FootFillet, dice.Of(0, dice.Between(0.3, 2)));
        return v;
    }
}

/// <summary>A small repeatable source of numbers (SplitMix64).</summary>
internal sealed class Dice(long seed)
{
    private ulong _state = (ulong)seed;

    public double Between(double low, double high) => low + ((high - low) * Next());

    public T Of<T>(params T[] choices) => choices[(int)(Next() * choices.Length)];

    private double Next()
    {
        _state += 0x9E3779B97F4A7C15;
        ulong z = _state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return ((z ^ (z >> 31)) >> 11) * (1.0 / (1UL << 53));
    }
}
