using LeverDraw.Diagnostics;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Profiles;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Parts;

public class ShippedProfilesTests
{
    public static TheoryData<string> Names => [.. ShippedProfiles.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void LeverProfile_ReadsAndBuildsWithoutFindings(string name)
    {
        Checked<Profile> profile = ShippedProfiles.Read("levers/" + name + ".toml");
        Assert.Empty(profile.Diagnostics);
        Assert.Empty(LeverPart.Build(profile.Value!.Values).Diagnostics);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void PinProfile_ReadsAndBuildsWithoutFindings(string name)
    {
        Checked<Profile> profile = ShippedProfiles.Read("pins/" + name + ".toml");
        Assert.Empty(profile.Diagnostics);
        Assert.Empty(PinPart.Build(profile.Value!.Values).Diagnostics);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void PinAndLever_LeaveAGapInTheMiddle(string name)
    {
        Lever lever = LeverPart.Build(ShippedProfiles.Read("levers/" + name + ".toml").Value!.Values).Value!;
        Pin pin = PinPart.Build(ShippedProfiles.Read("pins/" + name + ".toml").Value!.Values).Value!;
        double play = lever.Hole.AtMid.Millimetres - pin.Middle.Millimetres;
        // The trade notes' pivot play by era; the rare one is our own.
        double expected = name switch { "early" => 0.04, "middle" => 0.08, "late" => 0.23, "smallest" => 0.14, _ => 0.04 };
        Assert.Equal(expected, play, 0.0025);
    }
}
