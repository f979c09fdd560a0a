using CsCheck;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Geometry;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Drafting.TitleBlocks;

public class TitleBlockTests
{
    private static readonly Box2D Box = new(0, 0, 180, 42.5);

    private static readonly TitleBlock Filled = new(
        "Thessaby & Crake (invented)", "ADJUSTING LEVER", "Early heavy", "TC-L-01", "A", "2025-03-14", "H. Ashdown", "M. Crake",
        "PART DRAWING, FINISHED PART", "Silicon brass", "Sand casting", "ISO 2768-m", "mm [in]", "1 of 1", true);

    // The eight mandatory fields of ISO 7200 (one secondary listing): our captions for them.
    [Theory]
    [InlineData("legal owner", "LEGAL OWNER", "Thessaby & Crake (invented)")]
    [InlineData("identification number", "DRAWING NUMBER", "TC-L-01")]
    [InlineData("date of issue", "DATE OF ISSUE", "2025-03-14")]
    [InlineData("segment/sheet number", "SHEET", "1 of 1")]
    [InlineData("title", "TITLE", "ADJUSTING LEVER")]
    [InlineData("approval person", "APPROVED BY", "M. Crake")]
    [InlineData("creator", "DRAWN BY", "H. Ashdown")]
    [InlineData("document type", "DOCUMENT TYPE", "PART DRAWING, FINISHED PART")]
    public void Draw_MandatoryField_StandsUnderItsCaption(string field, string caption, string entry)
    {
        PlotText[] texts = Texts(Filled);
        PlotText above = Assert.Single(texts, t => t.Text == caption);
        PlotText below = Assert.Single(texts, t => t.Text == entry);
        Assert.True(below.Anchor.Y < above.Anchor.Y && above.Anchor.Y - below.Anchor.Y < 17, field);
        Assert.InRange(below.Anchor.X - above.Anchor.X, 0, 1);
    }

    [Fact]
    public void Draw_Empty_StillShowsEveryCaption()
    {
        TitleBlock empty = new("", "", "", "", "", "", "", "", "", "", "", "", "", "", true);
        Assert.Equal(
            ["APPROVED BY", "DATE OF ISSUE", "DIMENSIONS IN", "DOCUMENT TYPE", "DRAWING NUMBER", "DRAWN BY", "GENERAL TOLERANCES", "LEGAL OWNER", "MATERIAL", "PAPER", "PROCESS", "REVISION", "SCALE", "SHEET", "SUPPLEMENTARY TITLE", "TITLE"],
            Texts(empty).Select(t => t.Text).Except(["2:1", "A3"]).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Draw_LongEntry_TakesTwoLinesOfTheSmallest()
    {
        TitleBlock block = Filled with { Material = "Silicon brass, low in lead, poured from new ingot of known analysis" };
        Assert.Empty(TitleBlockInk.TooLong(block, 180));
        PlotText[] lines = [.. Texts(block).Where(t => block.Material.Contains(t.Text, StringComparison.Ordinal)).OrderByDescending(t => t.Anchor.Y)];
        Assert.Equal(2, lines.Length);
        Assert.Equal(block.Material, lines[0].Text + " " + lines[1].Text);
        Assert.All(lines, l => Assert.Equal(1.8, l.Height));
    }

    /// <summary>Accents over the upper line keep clear of the caption, tails of the lower line of the cell's line.</summary>
    [Theory]
    [InlineData("LAITON À FAIBLE TENEUR EN PLOMB COULÉ À PARTIR DE LINGOTS NEUFS")]
    [InlineData("KISELMÄSSING MED LÅG HALT AV BLY GJUTEN AV NYA GÖT PÅ BRUKET")]
    public void Draw_AccentedCapitals_TakeTwoLinesClearOfTheCaption(string material)
    {
        TitleBlock block = Filled with { Material = material };
        Assert.Empty(TitleBlockInk.TooLong(block, 180));
        var items = TitleBlockInk.Draw(block, "2:1", "A3", ProjectionMethod.ThirdAngle, Box);
        Assert.Equal(2, items.OfType<PlotText>().Count(t => material.Contains(t.Text, StringComparison.Ordinal) && t.Text.Length > 5));
        Assert.Empty(Legibility.Faults(new PlotSheet(180, 42.5, "", PartState.Finished, SheetUnit.Millimetre, 1, 3.5, 3.5, items, [], []), Box));
    }

    // Tails of the upper line over accents of the lower one: no room for both, so it is told and not drawn touching.
    [Fact]
    public void TooLong_AccentsAndTailsInBothLines_IsTold() =>
        Assert.Equal(["MATERIAL"], TitleBlockInk.TooLong(Filled with { Material = "ÅÇÅÇÅÇÅÇÅÇÅÇÅÇÅÇÅÇÅÇÅÇÅÇ ÅÇÅÇÅÇÅÇÅÇÅÇÅÇÅÇÅÇÅÇÅÇÅÇ" }, 180));

    [Fact]
    public void TooLong_EntryThatFitsNoWay_NamesItsCaptionOnly()
    {
        Assert.Equal(["TITLE"], TitleBlockInk.TooLong(Filled with { Title = new string('M', 90) }, 180));
        Assert.Equal(["SHEET"], TitleBlockInk.TooLong(Filled with { Sheet = "sheet 1 of very many sheets indeed" }, 180));
        Assert.Empty(TitleBlockInk.TooLong(Filled, 180));
    }

    /// <summary>Either an entry is told to be too long, or it stands inside the block and strikes nothing.</summary>
    [Fact]
    public void Draw_AnyEntries_AreToldOrLegible() =>
        Gen.Select(Words, Words, Words, Words, Gen.Double[165, 180]).Sample((owner, title, material, number, width) =>
        {
            TitleBlock block = Filled with { Owner = owner, Title = title, Material = material, DrawingNumber = number };
            if (TitleBlockInk.TooLong(block, width).Any())
                return;
            Box2D box = new(0, 0, width, 42.5);
            var items = TitleBlockInk.Draw(block, "2:1", "A3", ProjectionMethod.FirstAngle, box);
            PlotSheet sheet = new(width, 42.5, "", PartState.Finished, SheetUnit.Millimetre, 1, 3.5, 3.5, items, [], []);
            Assert.Empty(Legibility.Faults(sheet, box));
            Assert.All(items.OfType<PlotText>(), t => Assert.True(box.Contains(Legibility.BoxOf(t)), t.Text));
        }, iter: 200);

    private static Gen<string> Words { get; } = Gen.Char["abcgjyMQW,.&-()ÉÅŞ"].Array[1, 9].Select(c => new string(c)).Array[1, 8].Select(w => string.Join(' ', w));

    private static PlotText[] Texts(TitleBlock block) => [.. TitleBlockInk.Draw(block, "2:1", "A3", ProjectionMethod.ThirdAngle, Box).OfType<PlotText>()];
}
