using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Geometry;
using LeverDraw.Standards;

namespace LeverDraw.Tests.Drafting.TitleBlocks;

// Reference 10a and 10b (ISO 5457): borders one drafting page and memory, fields and drawing space from memory; inch margins from memory.
public class SheetFrameTests
{
    [Theory]
    [InlineData("A4", 20, 10, 200, 287)]
    [InlineData("A3", 20, 10, 410, 287)]
    [InlineData("A2", 20, 10, 584, 410)]
    [InlineData("A1", 20, 10, 831, 584)]
    [InlineData("letter", 0.25 * 25.4, 0.38 * 25.4, 8.25 * 25.4, 10.62 * 25.4)]
    [InlineData("tabloid", 0.62 * 25.4, 0.38 * 25.4, 16.38 * 25.4, 10.62 * 25.4)]
    public void Draw_Frame_IsTheDrawingSpace_FromMemory(string paper, double left, double bottom, double right, double top)
    {
        LineEdge[] frame = [.. Frame(paper).Where(l => l.Length > 100)];
        Assert.Equal(4, frame.Length);
        Box2D box = frame.Aggregate(Box2D.Empty, (b, l) => b.Union(l.Box));
        Assert.Equal((left, bottom, right, top), (Math.Round(box.MinX, 9), Math.Round(box.MinY, 9), Math.Round(box.MaxX, 9), Math.Round(box.MaxY, 9)), new Near());
        Assert.All(frame, l => Assert.True(l.Box.Width == 0 || l.Box.Height == 0));
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("A3")]
    [InlineData("letter")]
    public void Draw_CentringMarks_StandInTheMiddleOfTheTrimmedSheet(string paper)
    {
        LineEdge[] marks = [.. Frame(paper).Where(l => l.Length < 100)];
        SheetFormat sheet = LeverDraw.Standards.Sheets.Named(paper).Value;
        Box2D field = SheetFrame.Field(sheet);
        Assert.Equal(4, marks.Length);
        Assert.Equal(2, marks.Count(m => m.From.X == m.To.X && Math.Abs(m.From.X - (sheet.Width.Millimetres / 2)) < 1e-9));
        Assert.Equal(2, marks.Count(m => m.From.Y == m.To.Y && Math.Abs(m.From.Y - (sheet.Height.Millimetres / 2)) < 1e-9));
        // Reference 10b, from memory: about 10 mm past the frame.
        Assert.All(marks, m => Assert.Equal(10, Math.Min(Past(m.To.X, field.MinX, field.MaxX), Past(m.To.Y, field.MinY, field.MaxY)), 9));
        // From outside the frame to inside it.
        Assert.All(marks, m => Assert.True(!field.Contains(m.From) && field.Contains(m.To)));
    }

    [Fact]
    public void Draw_BlockBeforeACentringMark_AllMarksEndShortAlike()
    {
        Box2D field = SheetFrame.Field(IsoSheets.A3);
        var block = new Box2D(field.MinX + 6, 100, field.MinX + 60, 200);
        var below = new Box2D(150, field.MinY, field.MaxX, field.MinY + 40);
        LineEdge[] marks = [.. SheetFrame.Draw(IsoSheets.A3, block, below).OfType<PlotStroke>().Where(s => s.Role == LineRole.Frame).Select(s => (LineEdge)s.Edge).Where(l => l.Length < 100)];
        // 2.5 before the block that is 6 inside the frame; the one at the frame itself leaves its mark no room, the other two are as long as the first.
        Assert.Equal(field.MinX + 3.5, marks.Single(m => m.From.X < field.MinX).To.X, 9);
        Assert.Equal(field.MinY, marks.Single(m => m.From.Y < field.MinY).To.Y, 9);
        Assert.Equal(field.MaxX - 3.5, marks.Single(m => m.From.X > field.MaxX).To.X, 9);
        Assert.Equal(field.MaxY - 3.5, marks.Single(m => m.From.Y > field.MaxY).To.Y, 9);
    }

    // Reference 10b, from memory: letters 3.5 high.
    [Fact]
    public void Draw_GridLetters_AreThreeAndAHalfHighAndClearOfTheStrip()
    {
        Box2D field = SheetFrame.Field(IsoSheets.A4);
        Assert.All(Items("A4").OfType<PlotText>(), t =>
        {
            Assert.Equal(3.5, t.Height);
            Box2D ink = LeverDraw.Tests.Support.Legibility.BoxOf(t);
            Assert.True(field.Inflated(5 - 0.3).Contains(ink) && !field.Inflated(0.3).Overlaps(ink), t.Text);
        });
    }

    // Columns numbered from the left, rows lettered from the top without I and O.
    [Theory]
    [InlineData("A4", "1 2 3 4", "A B C D E F")]
    [InlineData("A3", "1 2 3 4 5 6 7 8", "A B C D E F")]
    [InlineData("A2", "1 2 3 4 5 6 7 8 9 10 11 12", "A B C D E F G H")]
    [InlineData("A1", "1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16", "A B C D E F G H J K L M")]
    [InlineData("A0", "1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16 17 18 19 20 21 22 23 24", "A B C D E F G H J K L M N P Q R")]
    public void Draw_Grid_IsNumberedAndLetteredOnBothSides_FromMemory(string paper, string columns, string rows)
    {
        PlotText[] grid = [.. Items(paper).OfType<PlotText>()];
        Box2D field = SheetFrame.Field(LeverDraw.Standards.Sheets.Named(paper).Value);
        Assert.Equal(columns, Read(grid.Where(t => t.Anchor.Y < field.MinY).OrderBy(t => t.Anchor.X)));
        Assert.Equal(columns, Read(grid.Where(t => t.Anchor.Y > field.MaxY).OrderBy(t => t.Anchor.X)));
        Assert.Equal(rows, Read(grid.Where(t => t.Anchor.X < field.MinX).OrderByDescending(t => t.Anchor.Y)));
        Assert.Equal(rows, Read(grid.Where(t => t.Anchor.X > field.MaxX).OrderByDescending(t => t.Anchor.Y)));
    }

    [Fact]
    public void Draw_GridTicks_StandFiftyMillimetresApartFromTheMiddle()
    {
        double middle = IsoSheets.A3.Width.Millimetres / 2;
        double[] ticks = [.. Items("A3").OfType<PlotStroke>().Where(s => s.Role == LineRole.Table).Select(s => (LineEdge)s.Edge).Where(l => l.From.X == l.To.X && l.Length < 10 && l.From.Y < 20).Select(l => l.From.X - middle).Order()];
        Assert.Equal([-150, -100, -50, 0, 50, 100, 150], ticks.Select(t => Math.Round(t, 9)));
    }

    [Theory]
    [InlineData("letter")]
    [InlineData("tabloid")]
    public void Draw_InchSheet_HasNoGrid(string paper) => Assert.Empty(Items(paper).OfType<PlotText>());

    private static IEnumerable<PlotItem> Items(string paper)
    {
        SheetFormat sheet = LeverDraw.Standards.Sheets.Named(paper).Value;
        Box2D field = SheetFrame.Field(sheet);
        return SheetFrame.Draw(sheet, new Box2D(field.MaxX - 60, field.MinY, field.MaxX, field.MinY + 40));
    }

    private static IEnumerable<LineEdge> Frame(string paper) =>
        Items(paper).OfType<PlotStroke>().Where(s => s.Role == LineRole.Frame).Select(s => (LineEdge)s.Edge);

    private static double Past(double at, double min, double max) => Math.Min(at - min, max - at);

    private static string Read(IEnumerable<PlotText> texts) => string.Join(' ', texts.Select(t => t.Text));

    private sealed class Near : IEqualityComparer<(double, double, double, double)>
    {
        public bool Equals((double, double, double, double) a, (double, double, double, double) b) =>
            Math.Abs(a.Item1 - b.Item1) < 1e-6 && Math.Abs(a.Item2 - b.Item2) < 1e-6 && Math.Abs(a.Item3 - b.Item3) < 1e-6 && Math.Abs(a.Item4 - b.Item4) < 1e-6;

        public int GetHashCode((double, double, double, double) value) => 0;
    }
}
