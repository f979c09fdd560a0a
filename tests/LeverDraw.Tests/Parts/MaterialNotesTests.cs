using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts;
using LeverDraw.Units;

namespace LeverDraw.Tests.Parts;

public class MaterialNotesTests
{
    private static readonly DimensionText Text = new(ShownUnits.Millimetres);

    // 2 cm³ of the densities of reference 09: brass 8.4 to 8.7, rolled steel 7.85, grey iron 6.6 to 7.4.
    [Theory]
    [InlineData("Silicon brass, low in lead", "MASS 16.8 TO 17.4 g AT 8.4 TO 8.7 g/cm³.")]
    [InlineData("Free-cutting steel", "MASS ABOUT 15.7 g AT 7.85 g/cm³.")]
    [InlineData("GREY IRON", "MASS 13.2 TO 14.8 g AT 6.6 TO 7.4 g/cm³.")]
    [InlineData("Unobtainium", null)]
    public void MassNote_OfWords_TakesTheirDensity(string material, string? note) => Assert.Equal(note, MassNote.Of(2, material));

    // ISO 8062-3:2007 total widths of grade 4: 0.26 up to 10 mm, 0.28 up to 16, halved; grade 10 to 13 as the trade notes' 3.6.
    [Theory]
    [InlineData("Brass", "Investment casting", 15, "TO ISO 8062-3:2007, ±0.13 UP TO 10, ±0.14 UP TO 16 (DCTG 4), WALLS ONE GRADE COARSER, OR AS AGREED WITH THE FOUNDRY")]
    [InlineData("Brass", "Sand cast", 9, "TO ISO 8062-3:2007, ±1 UP TO 10 (DCTG 10), WALLS ONE GRADE COARSER, OR AS AGREED WITH THE FOUNDRY")]
    [InlineData("Brass", "", 9, "TO THE FOUNDRY'S AGREED TOLERANCE")]
    [InlineData("Oak", "Sand cast", 9, "TO THE FOUNDRY'S AGREED TOLERANCE")]
    public void AsCastNote_ByProcess_HalvesTheTotalWidthOnce(string material, string process, double greatest, string note) =>
        Assert.Equal(note, AsCastNote.Of(material, process, Length.FromMillimetres(greatest), Text));
}
