using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Tests.Standards;

public sealed class SheetsTests
{
    // Trimmed sizes: three drafting pages print them. Fields: from memory.
    [Theory]
    [InlineData("A4", 210, 297, 4, 6)]
    [InlineData("A3", 420, 297, 8, 6)]
    [InlineData("A2", 594, 420, 12, 8)]
    [InlineData("A1", 841, 594, 16, 12)]
    [InlineData("A0", 1189, 841, 24, 16)]
    public void Named_IsoSheet_HasThePublishedSize(string name, double width, double height, int fieldsAcross, int fieldsUp)
    {
        SheetFormat sheet = Sheets.Named(name).Value;
        Assert.Equal(width, sheet.Width.Millimetres);
        Assert.Equal(height, sheet.Height.Millimetres);
        Assert.Equal(fieldsAcross, sheet.FieldsAlongWidth);
        Assert.Equal(fieldsUp, sheet.FieldsAlongHeight);
    }

    // Drawing spaces from memory of ISO 5457; borders 20 and 10 from one drafting page.
    [Theory]
    [InlineData("A4", 180, 277)]
    [InlineData("A3", 390, 277)]
    [InlineData("A2", 564, 400)]
    [InlineData("A1", 811, 574)]
    [InlineData("A0", 1159, 821)]
    public void Frame_IsoSheet_LeavesTheDrawingSpace_FromMemory(string name, double width, double height)
    {
        SheetFormat sheet = Sheets.Named(name).Value;
        Assert.Equal(width, sheet.FrameWidth.Millimetres, 9);
        Assert.Equal(height, sheet.FrameHeight.Millimetres, 9);
    }

    // ISO 216: halving the long side, rounded down, gives the next size; A0 is one square metre to 0.1 %.
    [Fact]
    public void All_IsoSheets_HalveIntoEachOther()
    {
        for (int i = 1; i < IsoSheets.All.Length; i++)
        {
            (double small, double large) = (Longest(IsoSheets.All[i - 1]), Longest(IsoSheets.All[i]));
            Assert.Equal(Math.Floor(large / 2), Shortest(IsoSheets.All[i - 1]));
            Assert.Equal(small, Shortest(IsoSheets.All[i]));
        }
        Assert.InRange(IsoSheets.A0.Width.Millimetres * IsoSheets.A0.Height.Millimetres, 999_000, 1_001_000);
    }

    // Sizes A to E: two sources; F from memory.
    [Theory]
    [InlineData("letter", "A", 8.5, 11)]
    [InlineData("tabloid", "B", 17, 11)]
    [InlineData("C", "C", 22, 17)]
    [InlineData("D", "D", 34, 22)]
    [InlineData("E", "E", 44, 34)]
    [InlineData("F", "F", 40, 28)]
    public void Named_InchSheet_HasThePublishedSize(string name, string series, double width, double height)
    {
        SheetFormat sheet = Sheets.Named(name).Value;
        Assert.Equal(width * 25.4, sheet.Width.Millimetres, 9);
        Assert.Equal(height * 25.4, sheet.Height.Millimetres, 9);
        Assert.Same(sheet, Sheets.Named(series.ToLowerInvariant()).Value);
    }

    [Fact]
    public void Named_Unknown_ListsTheSheets()
    {
        Answer<SheetFormat> answer = Sheets.Named("A5");
        Assert.False(answer.IsGiven);
        Assert.Contains("A4, A3, A2, A1, A0, letter, tabloid", answer.Refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void Turned_IsoSheet_KeepsTheFilingBorderOnTheLeft()
    {
        SheetFormat turned = IsoSheets.A4.Turned();
        Assert.Equal((297, 210), (turned.Width.Millimetres, turned.Height.Millimetres));
        Assert.Equal(20, turned.Borders.Left.Millimetres);
        Assert.Equal((6, 4), (turned.FieldsAlongWidth, turned.FieldsAlongHeight));
        Assert.Equal(IsoSheets.A4, turned.Turned());
    }

    [Fact]
    public void Turned_InchSheet_TurnsItsMarginsToo()
    {
        SheetFormat turned = InchSheets.Letter.Turned();
        Assert.Equal(0.38, turned.Borders.Left.Inches, 9);
        Assert.Equal(0.25, turned.Borders.Top.Inches, 9);
        Assert.Equal(InchSheets.Letter, turned.Turned());
    }

    // ISO 7200 width, from memory: it just fills the drawing space of A4.
    [Fact]
    public void TitleBlock_Width_FillsA4_FromMemory() => Assert.Equal(IsoSheets.A4.FrameWidth, TitleBlockFields.BlockWidth);

    // One listing in three languages: eight mandatory fields.
    [Fact]
    public void TitleBlock_MandatoryFields_AreTheListedEight() =>
        Assert.Equal(
            ["legal owner", "identification number", "date of issue", "segment/sheet number", "title", "approval person", "creator", "document type"],
            TitleBlockFields.All.Where(field => field.Mandatory).Select(field => field.Name));

    private static double Longest(SheetFormat sheet) => Length.Max(sheet.Width, sheet.Height).Millimetres;

    private static double Shortest(SheetFormat sheet) => Length.Min(sheet.Width, sheet.Height).Millimetres;
}
