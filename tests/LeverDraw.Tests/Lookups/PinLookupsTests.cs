using LeverDraw.Diagnostics;
using LeverDraw.Lookups;
using LeverDraw.Standards;

namespace LeverDraw.Tests.Lookups;

public sealed class PinLookupsTests
{
    // Reference 07a to 07d, row 3/0: limits from memory, drill US Army TM 9-254, reamer from memory, step drill one page.
    [Fact]
    public void TaperPin_InchWithLength_AnswersAllTheShopNeeds()
    {
        Checked<LookupAnswer> answer = Ask.Of("taper-pin", "PIN", "3/0", "--length", "3/4 in", "--edge", "4");
        Assert.Equal([0.125], answer.Inches("large end"));
        Assert.Equal([0.1243, 0.1263], answer.Inches("large end, commercial class"));
        Assert.Equal([0.125, 0.126], answer.Inches("large end, precision class"));
        Assert.Equal([0.109375], answer.Inches("small end"));
        Assert.Equal([0.72, 0.78], answer.Inches("length"));
        Assert.Equal([0.109375], answer.Inches("drill 7/64"));
        Assert.Equal([0.1029, 0.1302], answer.Inches("reamer No. 3/0"));
        Assert.Equal([0.09375], answer.Inches("step drilling, first, through"));
        Assert.Equal([0.25, 1], answer.Inches("lengths, standard reamer"));
        Assert.Equal([1.25, 2], answer.Inches("lengths, other"));
        Assert.Equal([0.141], answer.Inches("next oversize, No. 2/0"));
        // By hand: 4 − 3.5814/2 = 2.2093 mm, over half of 3.5814.
        Assert.Equal([2.2093], answer.Numbers("wall left by it"));
        Assert.StartsWith("at least half", answer.Row("wall left by it").Note, StringComparison.Ordinal);
        Assert.Equal(Certainty.FromMemory, answer.Row("large end, commercial class").HowSure);
        Assert.Equal(Certainty.Thin, answer.Row("reamer No. 3/0").HowSure);
    }

    // By hand: 0.1243 − 0.78/48 = 0.10805, 0.1263 − 0.72/48 = 0.1113.
    [Fact]
    public void TaperPin_SmallEndAtWorst_TakesBothLimitsTogether() =>
        Assert.Equal([0.10805, 0.1113], Ask.Of("taper-pin", "PIN", "3/0", "--length", "3/4 in").Inches("small end, at worst"));

    // TM 9-254: #29 for a No. 0 pin of 1 in lies 0.0008 in over the small end.
    [Fact]
    public void TaperPin_DrillOverTheSmallEnd_SaysSo()
    {
        string note = Ask.Of("taper-pin", "PIN", "0", "--length", "1 in").Row("drill #29").Note;
        Assert.Contains("0.0008 in) over the small end", note, StringComparison.Ordinal);
        Assert.DoesNotContain("over the small end", Ask.Of("taper-pin", "PIN", "3/0", "--length", "3/4 in").Row("drill 7/64").Note, StringComparison.Ordinal);
    }

    [Fact]
    public void TaperPin_LengthBeyondTheReamer_SaysThereIsNone()
    {
        LookupRow row = Ask.Of("taper-pin", "PIN", "3/0", "--length", "2 in").Row("reamer");
        Assert.Equal("none", row.Value.Text);
        Assert.Contains("does not reach", row.Note, StringComparison.Ordinal);
    }

    // TM 9-254 lists eight drills for No. 0 pins from 3/4 to 2 1/2 in.
    [Fact]
    public void TaperPin_InchWithoutLength_ListsTheDrillsByLength() =>
        Assert.Equal(
            ["9/64", "#29", "#30", "1/8", "#31", "#33", "7/64", "#37"],
            Ask.Of("taper-pin", "PIN", "0").Value!.Rows.Where(r => r.Name.StartsWith("drill ", StringComparison.Ordinal)).Select(r => r.Name[6..]));

    // A reaming manual: the 6 x 50 pin is 7 mm at the top and stands out 4 to 5 mm; h10 at 6 mm is −48 µm (three tables); length 50 ± 0.5 (one excerpt).
    [Fact]
    public void TaperPin_Metric_IsNamedByItsSmallEnd()
    {
        Checked<LookupAnswer> answer = Ask.Of("taper-pin", "PIN", "6 mm", "--length", "50");
        Assert.Equal([5.952, 6], answer.Numbers("small end, h10"));
        Assert.Equal([7], answer.Numbers("large end"));
        Assert.Equal([49.5, 50.5], answer.Numbers("length"));
        Assert.Equal([4, 5], answer.Numbers("stands out before it is driven"));
        Assert.Equal([8], answer.Numbers("next oversize"));
        Assert.Equal([6], answer.Numbers("metric drill, not above"));
    }

    [Fact]
    public void TaperPin_MetricLengthNotListed_NamesTheNext() =>
        Assert.Equal([35], Ask.Of("taper-pin", "PIN", "3 mm", "--length", "33").Numbers("next listed length"));

    // "3" alone is the inch number, 0.219 in; with its unit it is the metric pin of 3 mm.
    [Fact]
    public void TaperPin_BareNumber_IsTheInchSeries()
    {
        Assert.Equal([0.219], Ask.Of("taper-pin", "PIN", "3").Inches("large end"));
        Assert.Equal([2.96, 3], Ask.Of("taper-pin", "PIN", "3 mm").Numbers("small end, h10"));
    }

    // m6 on 3 is +2 to +8, h8 is −14 (three sources); 20 ± 0.5.
    [Fact]
    public void ParallelPin_WithLength_GivesBothZones()
    {
        Checked<LookupAnswer> answer = Ask.Of("parallel-pin", "DIAMETER", "3", "--length", "20");
        Assert.Equal([3.002, 3.008], answer.Numbers("diameter, m6"));
        Assert.Equal([2.986, 3], answer.Numbers("diameter, h8"));
        Assert.Equal([19.5, 20.5], answer.Numbers("length"));
        Assert.Equal(Certainty.FromMemory, answer.Row("chamfer, about").HowSure);
    }

    // Public drill tables: #36 0.1065, #35 0.110, 3/32, 7/64, A 0.234; metric steps of 0.05.
    [Fact]
    public void Drill_ASize_HasItsNeighboursInEachSeries()
    {
        Checked<LookupAnswer> answer = Ask.Of("drill", "SIZE", "0.109 in");
        Assert.Equal(
            ["number #36", "number #35", "letter A", "fraction 3/32", "fraction 7/64", "metric", "metric"], answer.Value!.Rows.Select(r => r.Name));
        Assert.Equal([0.1065, 0.11, 0.234, 0.09375, 0.109375], answer.Value.Rows.Take(5).Select(r => r.Value.InchNumbers[0]));
        Assert.Equal([2.75, 2.8], answer.Value.Rows.Skip(5).Select(r => r.Value.Numbers[0]));
        Assert.StartsWith("0.0635 mm (0.0025 in) below", answer.Value.Rows[0].Note, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("#47", "number #47")]
    [InlineData("F", "letter F")]
    [InlineData("7/64", "fraction 7/64")]
    [InlineData("1/4 in", "letter E")]
    public void Drill_ByName_IsTheVerySizeAndComesOnce(string name, string row)
    {
        Checked<LookupAnswer> answer = Ask.Of("drill", "SIZE", name);
        Assert.Equal("the very size", answer.Row(row).Note);
    }

    [Theory]
    [InlineData("taper-pin", "PIN", "8/0", "LD601", "7/0 to 2/0 and 0 to 14")]
    [InlineData("taper-pin", "PIN", "7 mm", "LD601", "0.6 to 50 mm")]
    [InlineData("taper-pin", "PIN", "3/0", "LD601", "from 1/4 to 2 in", "--length", "3 in")]
    [InlineData("taper-pin", "PIN", "3 mm", "LD601", "from 2 to 200 mm", "--length", "300")]
    [InlineData("taper-pin", "PIN", "3/0", "LD208", "above zero", "--edge", "-2")]
    [InlineData("parallel-pin", "DIAMETER", "3.5", "LD601", "0.6 to 50 mm")]
    [InlineData("drill", "SIZE", "#81", "LD601", "#1 to #80")]
    [InlineData("drill", "SIZE", "30", "LD601", "#80 (0.0135 in) to 1 in")]
    [InlineData("drill", "SIZE", "0.3", "LD601", "#80 (0.0135 in) to 1 in")]
    public void Find_OutsideTheSeries_IsRefusedWithTheRange(
        string lookup, string input, string value, string code, string told, string? more = null, string? moreValue = null) =>
        Ask.Of(lookup, more is null ? [input, value] : [input, value, more, moreValue!]).MustRefuse(code, told);
}
