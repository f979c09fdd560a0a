using LeverDraw.Units;
using static LeverDraw.Parts.AdjustingLever.LeverFields;

namespace LeverDraw.Tests.Support;

/// <summary>The invented maker's variants, typed from the trade notes' table of eras (all invented).</summary>
internal static class DemoLevers
{
    public static TheoryData<string> Names => ["early", "middle", "late", "smallest", "rare"];

    public static ValueBag Early() => new ValueBag()
        .With(ArmThickness, 4.2).With(HeadDepth, 9).With(HeadWidth, 9.5).With(HeadHeight, 10)
        .With(ArmWidth, 5.5).With(ForkGap, 14).With(ArmLength, 21).With(ArmForm, Stepped)
        .With(PadThickness, 3.3).With(PadLength, 6.5).With(CrownRadius, 6)
        .With(HoleDiameter, 3.423).With(HoleTaper, Taper.InchPins)
        .With(TongueThickness, 4.1).With(TongueLength, 11.3).With(FlankTaper, 8).With(TongueWidth, 6.4).With(FootFillet, 0.8)
        .With(Sweep, 40).With(HeadFillet, 5).With(CrotchRadius, 6.5).With(Fillet, 1.5).With(EdgeRound, 0.6);

    public static ValueBag Middle() => Early()
        .With(ArmThickness, 3.6).With(HeadDepth, 8.2).With(HeadHeight, 9.5).With(ArmWidth, 5.2)
        .With(PadThickness, 3.05).With(PadLength, 6).With(HoleDiameter, 3.057).With(TongueThickness, 4);

    public static ValueBag Late() => Middle()
        .With(ArmThickness, 3).With(HeadDepth, 7.2).With(HeadWidth, 9.2).With(HeadHeight, 9).With(ArmWidth, 5).With(ArmForm, Tapered)
        .With(PadThickness, 2.75).With(PadLength, 5.5).With(CrownRadius, 5).With(HoleDiameter, 2.8).With(HoleTaper, Taper.Parallel)
        .With(TongueThickness, 3.85).With(TongueWidth, 6.2).With(Fillet, 1.2).With(EdgeRound, 0.5);

    public static ValueBag Smallest() => Late()
        .With(ArmThickness, 2.8).With(HeadDepth, 6.4).With(HeadWidth, 7.6).With(HeadHeight, 7.5).With(ArmWidth, 4.2).With(ForkGap, 11.4)
        .With(ArmLength, 16).With(PadThickness, 2.45).With(PadLength, 5).With(HoleDiameter, 2.36)
        .With(TongueThickness, 3.1).With(TongueLength, 8.8).With(TongueWidth, 4.8).With(FootFillet, 0.7).With(HeadFillet, 4).With(CrotchRadius, 5).With(Fillet, 1);

    public static ValueBag Rare() => Early()
        .With(ArmForm, Curved).With(ArmSagitta, 0.9).With(TongueForm, Bulb).With(NeckThickness, 3.3).With(TongueThickness, 4.2).With(FlankTaper, 5)
        .With(HoleTaper, Taper.Parallel).With(HoleDiameter, 3.5).With(ShoulderForm, Concave).With(ShoulderRadius, 12)
        .With(BossSides, Both).With(BossDiameter, 8).With(BossHeight, 0.5).With(ArmEnd, Round).With(PadEnd, Round).With(CrownRadius, 8).With(CrotchRadius, 7).With(Fillet, 1);

    public static ValueBag Named(string name) => name switch
    {
        "early" => Early(),
        "middle" => Middle(),
        "late" => Late(),
        "smallest" => Smallest(),
        _ => Rare(),
    };
}
