using LeverDraw.Drafting;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Drafting.Sheets;

public class ViewSizesTests
{
    private static readonly DraftingStyle _style = DraftingStyle.Large;
    private static readonly ViewSource _fork = SheetMaker.Content("levers/early", SheetMaker.Options("A3")).Front;

    // Core 20 × 40 at 1:1, 70 wider and 30 higher with its annotations. Free of charge round the core: 10 + 8.5 + 1 = 19.5.
    private static readonly Box2D _core = new(0, 0, 20, 40), _bounds = new(-60, -10, 30, 60);

    private static ViewSizes After(double thrift)
    {
        var sizes = new ViewSizes();
        sizes.Keep(new ViewKey(_fork.Id, 1, _style, thrift), new ViewBlock(_fork, 1, _bounds, _core, _ => new BlockInk([], []), []));
        return sizes;
    }

    [Fact]
    public void Estimate_PlacedSo_IsItsSize() =>
        Assert.Equal((90, 70), After(Sprawl.Generous).Estimate(_fork, 1, _style, Sprawl.Generous));

    /// <summary>A dearer price can save only what lies beyond the room that is free: to the left −60 becomes −19.5, above 60 becomes 59.5.</summary>
    [Fact]
    public void Estimate_PlacedAtACheaperPrice_LeavesOutOnlyWhatIsPaidFor() =>
        Assert.Equal((49.5, 69.5), After(Sprawl.Generous).Estimate(_fork, 1, _style, Sprawl.Stingy));

    [Fact]
    public void Estimate_PlacedAtADearerPrice_TellsNothingOfTheCheaperButTheUsualShare() =>
        Assert.Equal((20 + (0.85 * 70), 40 + (0.85 * 30)), After(Sprawl.Stingy).Estimate(_fork, 1, _style, Sprawl.Generous));

    [Fact]
    public void Estimate_AtAnotherScale_GrowsTheViewButNotItsLettering()
    {
        (double width, double height) = After(Sprawl.Generous).Estimate(_fork, 2, _style, Sprawl.Generous);
        Assert.Equal(40 + (0.85 * 70), width, 9);
        Assert.Equal(80 + (0.85 * 30), height, 9);
    }

    /// <summary>Shipped sheets are begun at the scale at which they end: the guess that chooses it must not be far off.</summary>
    [Theory]
    [InlineData("A3")]
    [InlineData("tabloid")]
    public void Guess_MainViewsOfShippedLevers_IsWithinAThirdOfWhatTheyTake(string paper)
    {
        foreach (string lever in SheetMaker.Levers)
        {
            SheetContent content = SheetMaker.Content(lever, SheetMaker.Options(paper));
            foreach (ViewSource view in (ViewSource[])[content.Front, .. content.FromRight])
            {
                Box2D taken = new AnnotatedView(view, 2, _style).Place(Sprawl.Generous).Bounds;
                (double width, double height) = new ViewSizes().Guess(view, 2, _style);
                Assert.InRange(width / taken.Width, 0.67, 1.5);
                Assert.InRange(height / taken.Height, 0.67, 1.5);
            }
        }
    }
}
