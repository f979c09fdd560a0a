using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Profiles;
using LeverDraw.Tests.Parts.AdjustingLever.Foundry;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Parts.AdjustingLever.FoundrySheets;

/// <summary>The foundry's notes claim nothing that is not so, and say where a figure comes from.</summary>
public sealed class FoundryNoteSourcesTests
{
    [Theory]
    [InlineData("brass", "investment", "AS CAST, FETTLED: STOCK IN, CONTRACTION NOT.")]
    [InlineData("grey-iron", "green-sand", "AS CAST, FETTLED: STOCK AND DRAFT IN, CONTRACTION NOT.")]
    public void Casting_SaysDraftIsInOnlyWhereThereIsAny(string metal, string process, string words) =>
        Assert.StartsWith(words, SheetMaker.Content(ShippedFoundrySheetsTests.Chosen("middle", metal, process), new SheetOptions(), "casting").Notes[0], StringComparison.Ordinal);

    /// <summary>Trade notes 2.6 and reference 05b, 05c: the rules contradict each other, so a sheet names its own.</summary>
    [Theory]
    [InlineData(CastingFields.Stated, "PER SIDE ON WALLS ALONG DRAW, PLUS")]
    [InlineData(CastingFields.ByHeight, "(ISO 8062-4:2017, ONE TRANSCRIPTION), PLUS")]
    [InlineData(CastingFields.WoodPattern, "(WOODEN PATTERNS, FROM MEMORY), PLUS")]
    [InlineData(CastingFields.MetalPattern, "(METAL PATTERNS, FROM MEMORY), PLUS")]
    [InlineData(CastingFields.FineSmall, "(1/16 in/ft, COURSE NOTES), PLUS")]
    [InlineData(CastingFields.LeastOffset, "(0.03 in WHATEVER THE DEPTH, ONE FOUNDRY), PLUS")]
    public void Draft_NamesItsRule(string rule, string words) =>
        Assert.Contains(Notes("pattern", CastingFields.DraftRule, rule), n => n.StartsWith("DRAFT ", StringComparison.Ordinal) && n.Contains(words, StringComparison.Ordinal) && n.EndsWith("FORK VIEW WITHOUT IT.", StringComparison.Ordinal));

    [Theory]
    [InlineData(CastingFields.Filing, "M: MACHINED, WITH STOCK PER FACE FOR A FILE (COMMON PRACTICE);")]
    // Reference 03d, copper alloys by hand: F to H, two sources; 03c, to 40 mm: F 0.5.
    [InlineData(CastingFields.Usual, "M: MACHINED, WITH STOCK PER FACE BY ISO 8062-3:2007 RMAG F, AT LEAST 0.5 LEFT;")]
    public void Stock_SaysWhatItFollowsFrom(string grade, string words) =>
        Assert.Contains(Notes("casting", CastingFields.AllowanceGrade, grade), n => n.StartsWith(words, StringComparison.Ordinal) && n.EndsWith("; REST AS CAST.", StringComparison.Ordinal));

    /// <summary>The slope by which the tongue's stock ends has no size: both sheets say how far it is full. On the middle lever the flank's stock is full over the tongue's thickness, 4 mm and 64/63 of it as pattern; a bulb's neck has none.</summary>
    [Theory]
    [InlineData("middle", "casting", "TONGUE'S FULL FOR 4 FROM NOSE'S ROUND")]
    [InlineData("middle", "pattern", "TONGUE'S FULL FOR 4.1 FROM NOSE'S ROUND")]
    [InlineData("rare", "casting", null)]
    [InlineData("rare", "pattern", null)]
    public void Tongue_SaysWhereItsStockRunsOut(string lever, string sheet, string? words)
    {
        string note = Assert.Single(SheetMaker.Content("levers/" + lever + ":" + sheet, SheetMaker.Options("A3")).Notes, n => n.StartsWith("M: MACHINED", StringComparison.Ordinal));
        if (words is null)
            Assert.DoesNotContain("TONGUE'S", note, StringComparison.Ordinal);
        else
            Assert.Contains(words, note, StringComparison.Ordinal);
    }

    /// <summary>6 mm is graded from memory in the tables.</summary>
    [Fact]
    public void Hole_LeastFromMemory_SaysSo() =>
        Assert.Contains(FoundryOf.TryCast(DemoLevers.Early().With(CastingFields.Hole, CastingFields.Cored)).Diagnostics, d => d.Message.Contains("casts no hole below 6 mm (from memory)", StringComparison.Ordinal));

    [Fact]
    public void Table_AtTheJoint_CountsEveryWallAlongTheDraw()
    {
        SheetTable table = SheetMaker.Content(ShippedFoundrySheetsTests.Chosen("early", "grey-iron", "green-sand"), new SheetOptions(), "pattern").Tables[0];
        string[] Row(string size) => [.. table.Rows.Single(r => r[0] == size)];
        // 1 in 96, arms 4.2 deep: 4.2 · 1.0104167 · tan 2° = 0.148196 on each wall. Gap 14.1458 − 0.2964, arms 5.5573 + 0.2964, crotch 6.5677 − 0.1482, pads 6.5677 + 0.1482.
        Assert.Equal(("13.85", "5.85", "6.42", "6.72"), (Row("FORK GAP")[4], Row("ARMS WIDTH")[4], Row("FORK CROTCH RADIUS")[4], Row("PADS LENGTH")[4]));
        Assert.Equal("–", Row("ARMS LENGTH")[4]);
    }

    [Fact]
    public void Rapping_IsSaidBeforeAnythingElse()
    {
        FoundryChoice rapped = FoundryChoice.None with { Trial = FoundryChoice.None.Trial.Add(CastingFields.RappingAcross, LeverDraw.Units.Length.FromMillimetres(0.1)) };
        SheetContent content = SheetMaker.Content(rapped.On(SheetMaker.Profile("levers/middle")), new SheetOptions(), "pattern");
        Assert.Contains("VIEWS BEFORE RAPPING IS TAKEN OFF: MAKE IT TO THE TABLE", content.Notes[0], StringComparison.Ordinal);
        Assert.Contains(content.Tables[0].Columns, c => c.Head == "PATTERN,\nRAPPING OFF");
    }

    private static IEnumerable<string> Notes(string sheet, ChoiceField field, string word)
    {
        Profile profile = SheetMaker.Profile("levers/middle");
        return SheetMaker.Content(profile with { Values = new WithWord(profile.Values, field, word) }, new SheetOptions(), sheet).Notes;
    }
}
