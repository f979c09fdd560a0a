using LeverDraw.Drafting.Completeness;
using LeverDraw.Parts.AdjustingLever.Sheets;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Parts.AdjustingLever.Sheets;

public sealed class LeverSizesOnSheetTests
{
    public static TheoryData<string> Levers => [.. SheetMaker.Levers];

    [Theory]
    [MemberData(nameof(Levers))]
    public void Sizes_WithoutDrawing_AreThoseOfTheDrawnSheet(string name) =>
        Assert.Equal(SheetSizes.Of(SheetMaker.Content(name, SheetMaker.Options("A3"))).AsEnumerable(), FinishedLeverSheet.Sizes(SheetMaker.Lever(name)).AsEnumerable());
}
