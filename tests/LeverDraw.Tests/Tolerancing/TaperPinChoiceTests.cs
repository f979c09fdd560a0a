using CsCheck;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Tests.Tolerancing;

public sealed class TaperPinChoiceTests
{
    // Trade note, by hand: 0.125 − 0.75/48 = 0.109375 in = 7/64, and the Army table says 7/64 too.
    [Fact]
    public void Drill_ThreeNoughtPin_IsTheListedSevenSixtyFourths()
    {
        PinDrillChoice choice = TaperPinChoice.Drill(Pin("3/0"), Length.FromInches(0.75)).Value;
        Assert.Equal("7/64", choice.Drill.Name);
        Assert.True(choice.FromTable);
        Assert.Equal(0.109375, choice.SmallEnd.Inches, 12);
        Assert.Equal(0, choice.OverSmallEnd.Millimetres, 9);
    }

    // By hand: 5/0 pin 5/8 in long ends at 0.094 − 0.625/48 = 0.080979 in; less 0.1 mm that is 0.077042 in, and the drills around it are #47 (0.0785) and #48 (0.0760).
    [Fact]
    public void Drill_LengthNotListed_LeavesTheReamerItsStock()
    {
        PinDrillChoice choice = TaperPinChoice.Drill(Pin("5/0"), Length.FromInches(0.625)).Value;
        Assert.Equal("#48", choice.Drill.Name);
        Assert.False(choice.FromTable);
        Assert.True(choice.OverSmallEnd < Length.Zero);
    }

    // The Army table's #29 for a No. 0 pin of 1 in lies 0.0008 in over the small end; that is told, not hidden.
    [Fact]
    public void Drill_ListedAboveTheSmallEnd_SaysHowMuch() =>
        Assert.Equal(0.0008, TaperPinChoice.Drill(Pin("0"), Length.FromInches(1)).Value.OverSmallEnd.Inches, 4);

    [Fact]
    public void Drill_UnlistedSizes_NeverExceedTheSmallEnd() =>
        Gen.Select(Gen.Int[0, 16], Gen.Double[0.3, 2.0]).Sample((i, inches) =>
        {
            InchTaperPin pin = InchTaperPins.All[i];
            Length length = Length.FromInches(inches);
            if (pin.SmallEnd(length) < Length.FromInches(0.0135))
                return;
            PinDrillChoice choice = TaperPinChoice.Drill(pin, length).Value;
            if (!choice.FromTable)
                Assert.True(choice.OverSmallEnd.Millimetres <= 1e-6);
        });

    [Fact]
    public void Reamer_PinLongerThanTheFlutes_IsRefused()
    {
        Assert.Equal("3/0", TaperPinChoice.Reamer(Pin("3/0"), Length.FromInches(0.75)).Value.Number);
        Assert.False(TaperPinChoice.Reamer(Pin("3/0"), Length.FromInches(2)).IsGiven);
        Assert.False(TaperPinChoice.Reamer(Pin("12"), Length.FromInches(2)).IsGiven);
    }

    // By hand: next over 3/0 is 2/0, 0.141 in = 3.5814 mm; 4 mm edge distance leaves 2.2093 mm, over half of 3.58.
    [Theory]
    [InlineData(4.0, 2.2093, true)]
    [InlineData(3.5, 1.7093, false)]
    public void NextOversize_ThreeNought_IsTwoNoughtWithTheWallLeft(double edge, double wall, bool enough)
    {
        OversizePin oversize = TaperPinChoice.NextOversize(Pin("3/0"), Length.FromMillimetres(edge)).Value;
        Assert.Equal("2/0", oversize.Pin.Number);
        Assert.Equal(wall, oversize.WallLeft.Millimetres, 9);
        Assert.Equal(enough, oversize.WallIsEnough);
    }

    // The shop example: large end 3.175, 19.05 long, small end 2.778 mm.
    [Fact]
    public void Ends_SmallAndLarge_AreInverse()
    {
        Length small = TaperPinChoice.SmallEnd(Length.FromMillimetres(3.175), Length.FromMillimetres(19.05), Taper.InchPins);
        Assert.Equal(2.778, small.Millimetres, 3);
        Assert.Equal(3.175, TaperPinChoice.LargeEnd(small, Length.FromMillimetres(19.05), Taper.InchPins).Millimetres, 9);
    }

    // Worked in the trade notes: 2.4 mm deeper gives 0.05, 3.8 mm gives 0.08; 1/16 in of drive is 0.033 mm.
    [Theory]
    [InlineData(2.4, 0.05)]
    [InlineData(3.8, 0.079)]
    [InlineData(1.5875, 0.033)]
    public void Clearance_DepthOfReamer_IsDepthTimesTaper(double depth, double clearance)
    {
        Assert.Equal(clearance, PinClearance.ByReamingDepth(Length.FromMillimetres(depth), Taper.InchPins).Millimetres, 3);
        Assert.Equal(clearance, PinClearance.ByDriving(Length.FromMillimetres(depth), Taper.InchPins).Millimetres, 3);
    }

    [Fact]
    public void ReamingDepthFor_Clearance_IsTheInverse()
    {
        Assert.Equal(2.4, PinClearance.ReamingDepthFor(Length.FromMillimetres(0.05), Taper.InchPins).Millimetres, 9);
        Assert.Throws<ArgumentException>(() => PinClearance.ReamingDepthFor(Length.FromMillimetres(0.05), Taper.Parallel));
    }

    // Trade notes: w/96 at 1:48; 9.5 mm wide gives 0.10 mm and c_min on top.
    [Theory]
    [InlineData(9.6, 0.0, 0.1)]
    [InlineData(9.5, 0.04, 0.139)]
    public void ParallelHole_OnATaperPin_NeedsHalfTheTaperAndTheLeast(double width, double least, double clearance) =>
        Assert.Equal(clearance, PinClearance.ParallelHoleAtMidPlane(Length.FromMillimetres(width), Taper.InchPins, Length.FromMillimetres(least)).Millimetres, 3);

    [Fact]
    public void ParallelHole_AtItsLargeSide_LeavesTheLeastClearance() =>
        Gen.Select(Gen.Double[2, 20], Gen.Double[0, 0.2], Gen.Double[2, 4]).Sample((width, least, pinAtMid) =>
        {
            Length hole = Length.FromMillimetres(pinAtMid) + PinClearance.ParallelHoleAtMidPlane(
                Length.FromMillimetres(width), Taper.MetricPins, Length.FromMillimetres(least));
            double pinAtLargeSide = pinAtMid + width / 2 / 50;
            Assert.Equal(least, hole.Millimetres - pinAtLargeSide, 9);
        });

    private static InchTaperPin Pin(string number) => InchTaperPins.Numbered(number).Value;

    // By hand: a 2.36 to 2.385 hole 7.6 long on a 1:48 pin of 2.223 to 2.247: 0.113 and 0.162 in the middle, 7.6/96 = 0.07917 less and more at the faces. Alike in taper, or both parallel, the middle's hold throughout.
    [Theory]
    [InlineData(2.36, 2.385, 2.223, 2.247, 3.8, 1.0 / 48, 0.03383, 0.24117)]
    [InlineData(2.36, 2.385, 2.223, 2.247, 3.8, -1.0 / 48, 0.03383, 0.24117)]
    [InlineData(3.5, 3.518, 3.448, 3.46, 5.25, 0, 0.04, 0.07)]
    public void InHole_LimitsOfBoth_GiveLeastAndGreatest(double holeMin, double holeMax, double pinMin, double pinMax, double half, double apart, double least, double most)
    {
        SizeLimits clearance = PinClearance.InHole(Limits(holeMin, holeMax), Limits(pinMin, pinMax), Length.FromMillimetres(half), apart);
        Assert.Equal(least, clearance.Min.Millimetres, 5);
        Assert.Equal(most, clearance.Max.Millimetres, 5);
        static SizeLimits Limits(double min, double max) => new(Length.FromMillimetres(min), Length.FromMillimetres(max));
    }
}
