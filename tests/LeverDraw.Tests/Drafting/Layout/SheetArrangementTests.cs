using CsCheck;
using LeverDraw.Drafting.Layout;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Layout;

public class SheetArrangementTests
{
    private static readonly Box2D Field = new(20, 10, 410, 287);
    private static readonly Box2D Title = new(230, 10, 410, 52.5);

    private static readonly Gen<PaperBlock> Blocks =
        Gen.Select(Gen.Double[20, 150], Gen.Double[15, 120], Gen.Double[-60, 10], Gen.Double[-60, 10], (w, h, x, y) => Block(x, y, w, h));

    [Fact]
    public void Best_AnyBlocks_KeepClearOfEachOtherTheTitleAndTheFrame() =>
        Gen.Select(Blocks.Array[1, 3], Blocks.Array[0, 3], Blocks.Array[1, 2]).Sample((projected, others, texts) =>
        {
            if (SheetArrangement.Best(Field, Title, projected, others, texts) is not { } placed)
                return;
            Assert.Equal(projected.Length + others.Length + 1, placed.Count);
            Assert.Single(placed, p => texts.Contains(p.Block));
            Box2D[] boxes = [.. placed.Select(p => p.Block.Bounds.Moved(p.Shift))];
            for (int i = 0; i < boxes.Length; i++)
            {
                Assert.True(Field.Inflated(-Cell.Gap + 1e-9).Contains(boxes[i]), "too near to the frame");
                Assert.False(Title.Inflated(Cell.Gap - 1e-9).Overlaps(boxes[i]), "too near to the title block");
                for (int j = 0; j < i; j++)
                    Assert.False(boxes[i].Inflated(Cell.Gap - 1e-9).Overlaps(boxes[j]), "too near to each other");
            }
        }, iter: 2000);

    [Fact]
    public void Best_ProjectedViews_StandSideBySideOnOneLevel() =>
        Blocks.Array[2, 3].Sample(projected =>
        {
            if (SheetArrangement.Best(Field, Title, projected, [], [Block(0, 0, 60, 30)]) is not { } placed)
                return;
            PlacedBlock[] views = [.. projected.Select(b => placed.Single(p => ReferenceEquals(p.Block, b)))];
            Assert.All(views, v => Assert.Equal(views[0].Shift.Y, v.Shift.Y, 1e-9));
            for (int i = 1; i < views.Length; i++)
                Assert.True(views[i].Block.Bounds.Moved(views[i].Shift).MinX > views[i - 1].Block.Bounds.Moved(views[i - 1].Shift).MaxX);
        });

    [Fact]
    public void Best_BlockLargerThanTheField_IsNull()
    {
        Assert.Null(SheetArrangement.Best(Field, Title, [Block(0, 0, 391, 50)], [], [Block(0, 0, 50, 30)]));
        Assert.Null(SheetArrangement.Best(Field, Title, [Block(0, 0, 50, 278)], [], [Block(0, 0, 50, 30)]));
        Assert.Null(SheetArrangement.Best(Field, Title, [Block(0, 0, 200, 200), Block(0, 0, 200, 200)], [Block(0, 0, 200, 200)], [Block(0, 0, 50, 30)]));
    }

    [Fact]
    public void Best_WideTitle_PutsEverythingAboveIt()
    {
        var across = new Box2D(20, 10, 200, 52.5);
        List<PlacedBlock> placed = SheetArrangement.Best(new Box2D(20, 10, 200, 287), across, [Block(0, 0, 60, 80), Block(0, 0, 50, 80)], [], [Block(0, 0, 100, 40)])!;
        Assert.All(placed, p => Assert.True(p.Block.Bounds.Moved(p.Shift).MinY >= 52.5 + 5 - 1e-9));
    }

    /// <summary>Half a table or a later position stands below what it goes on from, or to the right of it.</summary>
    [Fact]
    public void Best_BlockThatContinues_IsReadAfterTheOneBefore() =>
        Gen.Select(Blocks, Blocks, Blocks).Sample((main, first, second) =>
        {
            PaperBlock next = second with { Continues = true };
            if (SheetArrangement.Best(Field, Title, [main], [first, next], [Block(0, 0, 60, 30)]) is not { } placed)
                return;
            Box2D before = BoxOf(first), after = BoxOf(next);
            Assert.True(after.MaxY <= before.MinY || (after.MinX >= before.MaxX && after.MinY <= before.MaxY), "read before");

            Box2D BoxOf(PaperBlock block) => block.Bounds.Moved(placed.Single(p => ReferenceEquals(p.Block, block)).Shift);
        }, iter: 1000);

    [Fact]
    public void Row_SpareRoom_IsSharedEvenly()
    {
        double[] gaps = Gaps(new StackCell(false, [new BlockCell(Block(3, 3, 20, 10)), new BlockCell(Block(0, 0, 30, 40)), new BlockCell(Block(-9, 2, 40, 15))]), new Box2D(0, 0, 210, 100), b => (b.MinX, b.MaxX), 0, 210);
        // The gap to what stands round the row is left by whoever gave it the room.
        Assert.Equal([gaps[0], gaps[0] + Cell.Gap, gaps[0] + Cell.Gap, gaps[0]], gaps.Select(g => Math.Round(g, 9)));
    }

    [Fact]
    public void Column_SpareRoom_IsSharedEvenlyFirstOnTop()
    {
        PaperBlock first = Block(0, 0, 20, 10), second = Block(0, 0, 30, 40);
        var placed = new List<PlacedBlock>();
        new StackCell(true, [new BlockCell(first), new BlockCell(second)]).Place(new Box2D(0, 0, 100, 110), placed);
        Box2D upper = first.Bounds.Moved(placed[0].Shift), lower = second.Bounds.Moved(placed[1].Shift);
        Assert.Equal(110 - upper.MaxY, upper.MinY - lower.MaxY - Cell.Gap, 9);
        Assert.Equal(lower.MinY, 110 - upper.MaxY, 9);
        Assert.Equal((50, 50), (upper.Centre.X, lower.Centre.X));
    }

    /// <summary>A row in a row is given just what it asked for: its own blocks keep the gap all the same.</summary>
    [Fact]
    public void Row_InARow_KeepsTheGapBetweenItsOwn()
    {
        StackCell inner = new(false, [new BlockCell(Block(0, 0, 20, 10)), new BlockCell(Block(0, 0, 20, 10))]);
        ProjectedRow views = new([Block(0, 0, 20, 10), Block(0, 0, 20, 10)]);
        var placed = new List<PlacedBlock>();
        new StackCell(false, [views, inner]).Place(new Box2D(0, 0, 200, 50), placed);
        Box2D[] boxes = [.. placed.Select(p => p.Block.Bounds.Moved(p.Shift)).OrderBy(b => b.MinX)];
        for (int i = 1; i < boxes.Length; i++)
            Assert.True(boxes[i].MinX - boxes[i - 1].MaxX >= Cell.Gap - 1e-9);
    }

    private static double[] Gaps(Cell cell, Box2D area, Func<Box2D, (double From, double To)> span, double from, double to)
    {
        var placed = new List<PlacedBlock>();
        cell.Place(area, placed);
        (double From, double To)[] spans = [.. placed.Select(p => span(p.Block.Bounds.Moved(p.Shift))).OrderBy(s => s.From)];
        return [spans[0].From - from, .. spans.Zip(spans.Skip(1), (a, b) => b.From - a.To), to - spans[^1].To];
    }

    private static PaperBlock Block(double x, double y, double width, double height) => new("block", new Box2D(x, y, x + width, y + height), [], []);
}
