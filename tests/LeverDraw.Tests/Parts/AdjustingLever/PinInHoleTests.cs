using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Profiles;
using LeverDraw.Tests.Support;
using LeverDraw.Tolerancing;

namespace LeverDraw.Tests.Parts.AdjustingLever;

/// <summary>A lever's profile says again what its pin's sheet says.</summary>
public class PinInHoleTests
{
    /// <summary>The pin named is the one with that drawing number; its diameter and taper are what that pin's sheet has in its gauge plane.</summary>
    [Theory]
    [MemberData(nameof(DemoLevers.Names), MemberType = typeof(DemoLevers))]
    public void DemoLever_PinDiameter_IsThePinsOwn(string era)
    {
        Lever lever = SheetMaker.Lever("levers/" + era);
        Pin pin = SheetMaker.Pin("pins/" + era);
        SizeLimits own = new DimensionText(ShownUnits.Millimetres).Shown(StatedLimits.Of(pin.GaugeSize)!.Value), said = StatedLimits.Of(lever.Sizes[LeverFields.HolePinDiameter])!.Value;
        Assert.Equal(own.Min.Millimetres, said.Min.Millimetres, 9);
        Assert.Equal(own.Max.Millimetres, said.Max.Millimetres, 9);
        Assert.Equal(pin.Taper, lever.Hole.PinTaper);
        Assert.Equal(SheetMaker.Profile("pins/" + era).Values.Get(CommonFields.Number), lever.Hole.Pin);
    }

    // 2.8 − 2.571 = 0.229: said as 0.23 it is rounded, said as 0.25 it is another pin's.
    [Theory]
    [InlineData(0.23, true)]
    [InlineData(0.25, false)]
    public void ClearanceAndPin_AtOdds_AreToldTogether(double clearance, bool good)
    {
        ValueBag values = DemoLevers.Late().With(LeverFields.HolePinDiameter, 2.571).With(LeverFields.HoleClearance, clearance);
        string[] told = [.. LeverPart.Build(values).Diagnostics.Select(d => d.Message)];
        Assert.Equal(good, !told.Any(m => m.Contains("hole.pin_diameter", StringComparison.Ordinal)));
    }

    [Fact]
    public void PinLargerThanHole_IsAFault()
    {
        Assert.Null(LeverPart.Build(DemoLevers.Late().With(LeverFields.HolePinDiameter, 2.9)).Value);
        Assert.NotNull(LeverPart.Build(DemoLevers.Late().With(LeverFields.HolePinDiameter, 2.7)).Value);
    }
}
