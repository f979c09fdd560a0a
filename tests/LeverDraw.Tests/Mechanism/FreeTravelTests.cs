using LeverDraw.Mechanism;
using LeverDraw.Mechanism.Setups;
using LeverDraw.Parts.HostPlanes;
using LeverDraw.Profiles;
using LeverDraw.Tests.Support;
using LeverDraw.Units;

namespace LeverDraw.Tests.Mechanism;

/// <summary>Tilted pads grow wider and jam in a close groove, whatever other gaps are open (trade notes 5: crowns of a wide radius bind at the ends of travel).</summary>
public class FreeTravelTests
{
    // A pad of thickness t between two crowns of radius R about its mid-plane is t + 2·(R − t/2)·(1 − cos φ) wide when tilted by φ, as long as the crowns touch:
    // it fills a gap g at cos φ = 1 − g / (2·(R − t/2)), and the nut has then gone by about h·tan φ. Middle lever: t 3.0, R 6, h 21, groove 3.175, offset 0.05: g 0.125, φ 9.56°, 3.54 mm.
    [Theory]
    [InlineData("middle", 3.0, 6, 0.125)]
    [InlineData("early", 3.25, 6, 0.125)]
    [InlineData("rare", 3.25, 8, 0.125)]
    public void Of_NewLeverInALongerTravel_EndsWhereThePadsFillTheGroove(string name, double thickness, double crown, double gap)
    {
        double tilt = Math.Acos(1 - (gap / (2 * (crown - (thickness / 2)))));
        (Length from, Length to) = FreeTravel.Of(Long(name));
        Assert.Equal(21 * Math.Tan(tilt), (to - from).Millimetres / 2, 0.12);
    }

    [Theory]
    [InlineData("middle")]
    [InlineData("rare")]
    public void Over_BeyondTheFreeTravel_Binds(string name)
    {
        Linkage linkage = Long(name);
        (Length from, Length to) = FreeTravel.Of(linkage);
        Assert.All(TravelPoint.Over(linkage, 41), p => Assert.Equal(p.Nut < from || p.Nut > to, p.Binds));
    }

    /// <summary>The shipped planes' nuts stop before that; late, smallest and a worn groove have room anyway.</summary>
    [Theory]
    [MemberData(nameof(DemoLevers.Names), MemberType = typeof(DemoLevers))]
    [InlineData("rattling")]
    public void Of_ShippedSetup_IsTheWholeTravel(string name)
    {
        Linkage linkage = DiskProfiles.Setup(name).Linkage;
        Length half = linkage.Assembly.Plane.Nut.Travel.Nominal / 2;
        Assert.Equal((-half, half), FreeTravel.Of(linkage));
        Assert.DoesNotContain(TravelPoint.Over(linkage, 9), p => p.Binds);
    }

    /// <summary>The setup in a plane whose nut goes 4 mm either way.</summary>
    private static Linkage Long(string name)
    {
        Setup setup = DiskProfiles.Setup(name);
        HostPlane plane = setup.Found.Plane;
        return Linkage.Of(setup.Found with { Plane = plane with { Nut = plane.Nut with { Travel = new SizeValue(Length.FromMillimetres(8)) } } })!;
    }
}
