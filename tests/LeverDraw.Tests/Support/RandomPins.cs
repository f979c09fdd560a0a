using CsCheck;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Standards;
using LeverDraw.Units;
using static LeverDraw.Parts.PivotPin.PinFields;

namespace LeverDraw.Tests.Support;

/// <summary>Random pins that can be built.</summary>
internal static class RandomPins
{
    public static Gen<ValueBag> Values { get; } =
        from seed in Gen.Int[0, int.MaxValue - 1]
        let values = Draw(new Dice(seed))
        where PinPart.Build(values).Ok
        select values;

    public static Gen<Pin> Pins { get; } = Values.Select(v => PinPart.Build(v).Value!);

    public static ValueBag Draw(Dice dice)
    {
        double large = dice.Between(1.5, 6);
        return new ValueBag()
            .With(Series, dice.Of(Inch, Metric, Free)).With(Number, InchTaperPins.All[(int)dice.Between(0, 10)].Number)
            .With(SmallEnd, dice.Of(1.0, 1.5, 2.0, 2.5, 3.0, 4.0)).With(LargeEnd, large).With(PinFields.Taper, dice.Of(LeverDraw.Units.Taper.InchPins, LeverDraw.Units.Taper.Parallel, LeverDraw.Units.Taper.OneIn(30)))
            .With(PinFields.Length, dice.Between(8, 25)).With(Ends, dice.Of(Crowned, Chamfered, Flat)).With(Chamfer, dice.Between(0.1, 0.4)).With(GaugePlane, dice.Between(0, 8))
            .With(LargeEndSide, dice.Of(Left, Right));
    }
}
