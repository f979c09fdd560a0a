using CsCheck;
using LeverDraw.Drafting.Completeness;
using LeverDraw.Parts;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Parts.AdjustingLever.FoundrySheets;
using LeverDraw.Profiles;
using LeverDraw.Tests.Support;
using LeverDraw.Units;

namespace LeverDraw.Tests.Parts.AdjustingLever.FoundrySheets;

/// <summary>A casting's and a pattern's sheet fix their shape exactly once, stock and contraction being as they say.</summary>
public sealed class StatesDimensionedTests
{
    public static TheoryData<string, string> Sheets
    {
        get
        {
            TheoryData<string, string> all = [];
            foreach (string name in ShippedProfiles.Names)
            {
                all.Add(name, "casting");
                all.Add(name, "pattern");
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Sheet_OfAShippedLever_FixesItsStateExactlyOnce(string name, string sheet)
    {
        Dimensioning found = Dimensioning.Of(Sheet(SheetMaker.Profile("levers/" + name), sheet));
        Assert.Null(found.Unclear);
        Assert.Empty(found.Free);
        Assert.Empty(found.Repeated);
        Assert.Empty(found.WronglyBracketed);
    }

    [Theory]
    [InlineData("casting")]
    [InlineData("pattern")]
    public void Sheet_WithoutThePads_LeavesThemFree(string name)
    {
        ParametricSheet sheet = Sheet(SheetMaker.Profile("levers/middle"), name);
        ShapeSample Without(ShapeSample sample) => sample with { Sizes = sample.Sizes.RemoveAll(s => s.Name == "pads.thickness") };
        Dimensioning found = Dimensioning.Of(sheet with { Here = Without(sheet.Here), At = p => sheet.At(p) is { } sample ? Without(sample) : null });
        Assert.Contains(found.Free, set => set.Contains("pads.thickness"));
    }

    [Fact]
    public void Sheet_WithAnOutsideWidthInFull_RepeatsAChain()
    {
        ParametricSheet sheet = Sheet(SheetMaker.Profile("levers/middle"), "pattern");
        ShapeSample Full(ShapeSample sample) => sample with { Sizes = [.. sample.Sizes.Select(s => s.Name == "fork.outside" ? s with { Standing = SizeStanding.Full } : s)] };
        Dimensioning found = Dimensioning.Of(sheet with { Here = Full(sheet.Here), At = p => sheet.At(p) is { } sample ? Full(sample) : null });
        Assert.Equal(["arms.width", "fork.gap", "fork.outside"], Assert.Single(found.Repeated).Order());
    }

    /// <summary>A trial that contracted otherwise each way: rounds become notes with an about-sign, which state their size all the same.</summary>
    [Fact]
    public void Pattern_WithUnlikeRates_IsFixedExactlyOnce()
    {
        FoundryChoice trial = FoundryChoice.None with
        {
            Trial = FoundryChoice.None.Trial
                .Add(CastingFields.TrialPatternN, Length.FromMillimetres(10.2)).Add(CastingFields.TrialCastingN, Length.FromMillimetres(10))
                .Add(CastingFields.TrialPatternZ, Length.FromMillimetres(50.5)).Add(CastingFields.TrialCastingZ, Length.FromMillimetres(50)),
        };
        Assert.True(Dimensioning.Of(Sheet(trial.On(SheetMaker.Profile("levers/middle")), "pattern")).IsExact);
    }

    [Fact]
    public void Sheet_OfALeverNotCast_IsNotReckoned()
    {
        ValueBag values = DemoLevers.Middle().With(CommonFields.Process, "Turned from bar");
        Profile profile = SheetMaker.Around("lever", values);
        Assert.All(PartKinds.Lever.Build(profile).Value!.Sheets.Where(s => s.Name is "casting" or "pattern"), s => Assert.Null(s.Parametric!()));
    }

    [Fact]
    public void Sheet_OfAnyLeverCast_FixesItsStateExactlyOnce()
    {
        int reckoned = 0;
        RandomLevers.Values.Sample(
            values =>
            {
                Profile profile = SheetMaker.Around("lever", values.Copy().With(CastingFields.Metal, "brass").With(CastingFields.Process, "green-sand").With(CastingFields.AllowanceGrade, CastingFields.Filing).With(CastingFields.ToleranceGrade, "7"));
                foreach (ParametricSheet sheet in PartKinds.Lever.Build(profile).Value!.Sheets.Where(s => s.Name is "casting" or "pattern").Select(s => s.Parametric!()).OfType<ParametricSheet>())
                {
                    Dimensioning found = Dimensioning.Of(sheet);
                    Assert.True(found.IsExact, string.Join("\n", [found.Unclear ?? "", .. found.Free.Select(f => "free " + string.Join(", ", f)), .. found.Repeated.Select(f => "repeated " + string.Join(", ", f)), .. found.WronglyBracketed.Select(f => "bracketed " + f)]));
                    Interlocked.Increment(ref reckoned);
                }
            },
            iter: 60, print: v => RandomLevers.Print(LeverDraw.Parts.AdjustingLever.LeverPart.Build(v).Value!));
        Assert.True(reckoned > 60);
    }

    private static ParametricSheet Sheet(Profile profile, string sheet) => PartKinds.Lever.Build(profile).Value!.Find(sheet)!.Parametric!()!;
}
