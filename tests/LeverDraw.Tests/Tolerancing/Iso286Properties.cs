using CsCheck;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Tests.Tolerancing;

public sealed class Iso286Properties
{
    private static readonly double[] _borders =
        [3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500];

    private static readonly Gen<ToleranceZone> _zone =
        Gen.Select(Gen.Bool, Gen.Enum<DeviationLetter>(), Gen.Int[1, 18], (hole, letter, grade) =>
            hole ? ToleranceZone.Hole(letter, grade) : ToleranceZone.Shaft(letter, grade));

    [Fact]
    public void Deviations_Border_BelongsToTheStepBelowIt() =>
        Gen.Select(_zone, Gen.Int[0, _borders.Length - 2]).Sample((zone, i) =>
        {
            // "Over" is open and "up to" is closed, so the border sides with the sizes below it, in every zone.
            AssertSame(At(zone, _borders[i]), At(zone, _borders[i] - 0.001));
            AssertSame(At(zone, _borders[i] + 0.001), At(zone, _borders[i + 1]));
        });

    [Fact]
    public void Deviations_LastBitErrors_DoNotChangeTheStep() =>
        Gen.Select(_zone, Gen.Int[0, _borders.Length - 1]).Sample((zone, i) =>
        {
            double border = _borders[i];
            AssertSame(At(zone, border), At(zone, Math.BitIncrement(border)));
            AssertSame(At(zone, border), At(zone, Math.BitDecrement(border)));
        });

    [Fact]
    public void Deviations_Width_IsTheGrade() =>
        Gen.Select(_zone, Gen.Double[0.001, 500]).Sample((zone, mm) =>
        {
            Answer<LimitDeviations> found = At(zone, mm);
            if (found.IsGiven)
                Assert.Equal(Iso286Grades.Width(zone.Grade, Length.FromMillimetres(mm)).Value.Millimetres, found.Value.Width.Millimetres, 9);
        });

    [Fact]
    public void Deviations_ZoneSide_FollowsTheLetter() =>
        Gen.Select(_zone, Gen.Double[0.001, 500]).Sample((zone, mm) =>
        {
            Answer<LimitDeviations> found = At(zone, mm);
            if (!found.IsGiven)
                return;
            bool shaft = zone.Feature == FitFeature.Shaft;
            if (zone.Letter == DeviationLetter.JS)
                Assert.True(found.Value.IsSymmetric);
            else if (zone.Letter <= DeviationLetter.H)
                Assert.True(shaft ? found.Value.Upper <= Length.Zero : found.Value.Lower >= Length.Zero);
            else if (shaft)
                Assert.True(found.Value.Lower >= Length.Zero);
        });

    [Fact]
    public void Deviations_OddTolerance_JsHalvingIsExactUnlessAsked()
    {
        // Tables print js7 on 40 as ±12.5 µm; the even-number allowance (from memory) makes it ±12.
        ToleranceZone js7 = ToleranceZone.Parse("js7").Value;
        Length forty = Length.FromMillimetres(40);
        Assert.Equal(0.0125, Iso286.Deviations(js7, forty).Value.Upper.Millimetres, 12);
        Assert.Equal(0.012, Iso286.Deviations(js7, forty, JsHalving.EvenBelow).Value.Upper.Millimetres, 12);
        // Grade 6 is not rounded: IT6 at 18 to 30 mm is 13 µm.
        Assert.Equal(0.0065, Iso286.Deviations(ToleranceZone.Parse("JS6").Value, Length.FromMillimetres(25), JsHalving.EvenBelow).Value.Upper.Millimetres, 12);
    }

    private static Answer<LimitDeviations> At(ToleranceZone zone, double mm) => Iso286.Deviations(zone, Length.FromMillimetres(mm));

    private static void AssertSame(Answer<LimitDeviations> a, Answer<LimitDeviations> b)
    {
        Assert.Equal(a.IsGiven, b.IsGiven);
        if (a.IsGiven)
            Assert.Equal(a.Value, b.Value);
    }
}
