using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Profiles;
using LeverDraw.Tests.Support;
using LeverDraw.Units;

namespace LeverDraw.Tests.Parts.AdjustingLever.FoundrySheets;

/// <summary>A trial that contracted otherwise each way: no round is round any more, and nothing is said that the outline does not have.</summary>
public sealed class UnlikeRatesTests
{
    private static readonly SheetOptions A3 = SheetMaker.Options("A3");

    [Theory]
    [InlineData("early")]
    [InlineData("late")]
    [InlineData("rare")]
    public void Pattern_UnlikeRates_DrawsTruthfullyAndLegibly(string name)
    {
        SheetContent content = SheetMaker.Content(Tried(name), A3, "pattern");
        PlotSheet sheet = SheetComposer.Compose(content, A3).Value!;
        Assert.Empty(Legibility.Faults(sheet, SheetMaker.Frame("A3")));
        foreach (RadiusDimension radius in content.Views.SelectMany(v => v.Annotations).OfType<RadiusDimension>())
            Assert.All(radius.Arcs, a => Assert.Equal(radius.Value, a.Radius, 1e-6));
        Assert.Contains(content.Views.SelectMany(v => v.Annotations), a => a.Label.ToString().StartsWith("≈ ", StringComparison.Ordinal));
        // Where lines and arcs follow an ellipse they meet in corners too slight to show as edges.
        int edges = SheetMaker.Content("levers/" + name + ":pattern", A3).Front.Edges.Count(e => e.Role == LineRole.Edge);
        Assert.Equal(edges, content.Front.Edges.Count(e => e.Role == LineRole.Edge));
    }

    [Fact]
    public void Rules_UnlikeRates_AreThree()
    {
        Profile profile = Tried("middle");
        PlotSheet sheet = LeverDraw.Parts.PartKinds.Lever.Build(profile).Value!.Find("rule")!.Plot!(A3).Value!;
        Assert.Equal(3, sheet.Items.OfType<PlotText>().Count(t => t.Text.StartsWith("CONTRACTION RULE 1 in", StringComparison.Ordinal)));
        Assert.Empty(Legibility.Faults(sheet, SheetMaker.Frame("A3")));
    }

    private static Profile Tried(string name) => (FoundryChoice.None with
    {
        Trial = FoundryChoice.None.Trial
            .Add(CastingFields.TrialPatternX, Length.FromMillimetres(10.66)).Add(CastingFields.TrialCastingX, Length.FromMillimetres(10.5))
            .Add(CastingFields.TrialPatternN, Length.FromMillimetres(8.4)).Add(CastingFields.TrialCastingN, Length.FromMillimetres(8.2))
            .Add(CastingFields.TrialPatternZ, Length.FromMillimetres(48.8)).Add(CastingFields.TrialCastingZ, Length.FromMillimetres(48.05)),
    }).On(SheetMaker.Profile("levers/" + name));
}
