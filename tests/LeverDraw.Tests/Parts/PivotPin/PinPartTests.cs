using CsCheck;
using LeverDraw.Geometry;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Tests.Support;
using static LeverDraw.Parts.PivotPin.PinFields;

namespace LeverDraw.Tests.Parts.PivotPin;

public class PinPartTests
{
    private const double Inches = 25.4;

    [Theory]
    [InlineData("2/0", 0.75, 3.581, 3.184)]
    [InlineData("3/0", 0.75, 3.175, 2.778)]
    [InlineData("4/0", 0.75, 2.769, 2.372)]
    [InlineData("5/0", 0.625, 2.388, 2.057)]
    public void Build_InchPin_HasTheTradeNotesEndSizes(string number, double length, double large, double small)
    {
        Pin pin = PinPart.Build(InchPin(number, length * Inches)).Value!;
        Assert.Equal(large, pin.LargeEnd.Millimetres, 0.0006);
        Assert.Equal(small, pin.SmallEnd.Millimetres, 0.0006);
        Assert.True(pin.NamedByLargeEnd);
        Assert.Equal(pin.Middle.Millimetres, pin.Gauge.Millimetres, 1e-12);
    }

    [Fact]
    public void Build_MetricPin_IsNamedByItsSmallEnd()
    {
        // A 6 × 50 metric pin is 7 mm at the large end (reference 07h).
        Pin pin = PinPart.Build(new ValueBag().With(Series, Metric).With(SmallEnd, 6).With(Length, 50)).Value!;
        Assert.Equal(7, pin.LargeEnd.Millimetres, 1e-12);
        Assert.Equal(6, pin.NamedSize.Millimetres, 1e-12);
        Assert.False(pin.NamedByLargeEnd);
        Assert.Equal("6 × 50", pin.Designation);
    }

    [Fact]
    public void Volume_ParallelFlatPin_IsTheCylinder()
    {
        Pin pin = PinPart.Build(new ValueBag().With(Series, Free).With(LargeEnd, 4).With(PinFields.Taper, LeverDraw.Units.Taper.Parallel).With(Length, 10).With(Ends, Flat)).Value!;
        Assert.Equal(125.66370614359172, PinMass.Volume(pin), 1e-10);
    }

    [Fact]
    public void Volume_BallEndedPin_IsCylinderAndBall()
    {
        Pin pin = PinPart.Build(new ValueBag().With(Series, Free).With(LargeEnd, 4).With(PinFields.Taper, LeverDraw.Units.Taper.Parallel).With(Length, 10).With(CrownRadius, 2)).Value!;
        // π·4·6 + 4π·8/3 by hand.
        Assert.Equal(108.90854532444616, PinMass.Volume(pin), 1e-9);
    }

    [Fact]
    public void Volume_ChamferedPin_TakesOffTwoRings()
    {
        Pin pin = PinPart.Build(new ValueBag().With(Series, Free).With(LargeEnd, 4).With(PinFields.Taper, LeverDraw.Units.Taper.Parallel).With(Length, 10).With(Ends, Chamfered).With(Chamfer, 0.5)).Value!;
        // π·4·9 + 2·π·0.5·(4 + 3 + 2.25)/3 by hand.
        Assert.Equal(122.7839128778011, PinMass.Volume(pin), 1e-9);
    }

    [Theory]
    [InlineData("number")]
    [InlineData("size")]
    [InlineData("taper")]
    [InlineData("crown")]
    [InlineData("chamfer")]
    [InlineData("plane")]
    [InlineData("plane in the crown")]
    [InlineData("plane in the small end's chamfer")]
    [InlineData("stand-out")]
    public void Build_ImpossiblePin_Tells(string what)
    {
        ValueBag values = what switch
        {
            "number" => InchPin("3/1", 19),
            "size" => new ValueBag().With(Series, Metric).With(SmallEnd, 2.7).With(Length, 20),
            "taper" => new ValueBag().With(Series, Free).With(LargeEnd, 0.8).With(PinFields.Taper, LeverDraw.Units.Taper.OneIn(20)).With(Length, 20),
            "crown" => InchPin("2/0", 19).With(CrownRadius, 1),
            "chamfer" => InchPin("7/0", 10).With(Ends, Chamfered).With(Chamfer, 1),
            "plane" => InchPin("2/0", 19).With(GaugePlane, 20),
            "plane in the crown" => InchPin("2/0", 19).With(GaugePlane, 0.2),
            "plane in the small end's chamfer" => InchPin("2/0", 19).With(Ends, Chamfered).With(GaugePlane, 18.8),
            _ => InchPin("2/0", 19).With(StandOutLeast, 2).With(StandOutMost, 1),
        };
        Assert.False(PinPart.Build(values).Ok);
    }

    [Fact]
    public void Outline_OfEveryPin_IsSoundAndMatchesItsSizes() => RandomPins.Pins.Sample(
        pin =>
        {
            Assert.True(ContourMeasure.Area(pin.Outline) > 0);
            Assert.Empty(ContourSelfCheck.Find(pin.Outline));
            Assert.Equal(pin.Length.Millimetres, pin.Outline.Box.Width, 1e-9);
            double middle = ContourChords.At(pin.Outline, Point2D.Origin, new(0, 1))[0].Length;
            Assert.Equal(pin.Middle.Millimetres, middle, 1e-9);
            Assert.InRange(PinMass.Volume(pin), 0, Math.PI / 4 * pin.LargeEnd.Millimetres * pin.LargeEnd.Millimetres * pin.Length.Millimetres * (1 + 1e-12));
            Contour side = PinViews.Side(pin).Outlines[0].Contour;
            Assert.True(ContourMeasure.Area(side) > 0);
        },
        iter: 500,
        print: pin => pin.Designation);

    [Fact]
    public void Side_LargeEndLeft_IsMirrored()
    {
        Pin pin = PinPart.Build(InchPin("2/0", 19).With(LargeEndSide, Left)).Value!;
        Contour side = PinViews.Side(pin).Outlines[0].Contour;
        Assert.True(ContourChords.At(side, new(-6, 0), new(0, 1))[0].Length > ContourChords.At(side, new(6, 0), new(0, 1))[0].Length);
    }

    private static ValueBag InchPin(string number, double length) => new ValueBag().With(Series, Inch).With(Number, number).With(Length, length);
}
