using LeverDraw.Drafting.Completeness;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Parts.AdjustingLever.FoundrySheets;
using LeverDraw.Profiles;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Parts.AdjustingLever.FoundrySheets;

/// <summary>A casting's sheet fixes its shape exactly once, the stock being as it says.</summary>
public sealed class CastingDimensionedTests
{
    public static TheoryData<string> Levers => [.. ShippedProfiles.Names];

    [Theory]
    [MemberData(nameof(Levers))]
    public void Sheet_OfAShippedCasting_FixesItExactlyOnce(string name)
    {
        Dimensioning found = Dimensioning.Of(Sheet(name));
        Assert.Null(found.Unclear);
        Assert.Empty(found.Free);
        Assert.Empty(found.Repeated);
        Assert.Empty(found.WronglyBracketed);
    }

    [Fact]
    public void Sheet_WithoutThePads_LeavesThemFree()
    {
        ParametricSheet sheet = Sheet("middle");
        ShapeSample Without(ShapeSample sample) => sample with { Sizes = sample.Sizes.RemoveAll(s => s.Name == "pads.thickness") };
        Dimensioning found = Dimensioning.Of(sheet with { Here = Without(sheet.Here), At = p => sheet.At(p) is { } sample ? Without(sample) : null });
        Assert.Contains(found.Free, set => set.Contains("pads.thickness"));
    }

    private static ParametricSheet Sheet(string name)
    {
        Profile profile = SheetMaker.Profile("levers/" + name);
        CastingLever casting = FoundryRoad.Casting(SheetMaker.Lever("levers/" + name), profile).Value!;
        PartingCandidate parting = MouldParting.Of(casting);
        return LeverParameters.OfCasting(casting, profile.Values, c => CastingSizes.Of(c, parting));
    }
}
