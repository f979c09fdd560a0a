using LeverDraw.Diagnostics;
using LeverDraw.Lookups;
using LeverDraw.Standards;

namespace LeverDraw.Tests.Lookups;

public sealed class FoundryLookupsTests
{
    // Reference 04b: brass 13.00 to 18.23 mm/m, default 3/16 in/ft = 15.625, nine sources; 100 mm of casting by hand 101.5625.
    [Fact]
    public void Contraction_OfBrass_GivesDefaultRangeAndPattern()
    {
        Checked<LookupAnswer> answer = Ask.Of("contraction", "METAL", "brass", "--size", "100");
        Assert.Equal([15.625], answer.Numbers("default"));
        Assert.Equal("3/16 in/ft", answer.Row("default").Value.InchText);
        Assert.Equal([13, 18.23], answer.Numbers("range"));
        Assert.Equal([101.5625], answer.Numbers("pattern, by default"));
        Assert.Equal([101.3, 101.823], answer.Numbers("pattern, by range"));
        Assert.Equal(Certainty.Solid, answer.Row("range").HowSure);
        Assert.Contains(answer.Value!.Rows, r => r.Name == "reading, yellow brass" && r.Note.Contains("7/32 in/ft", StringComparison.Ordinal));
    }

    // The summary's ends are the ends of its readings, those from memory left out.
    [Fact]
    public void Readings_BehindEveryMetal_SpanTheRange()
    {
        Assert.All(Contractions.All, metal =>
        {
            ContractionReading[] readings = [.. ContractionReadings.Behind(metal.Metal).Where(r => r.Kind != "from memory")];
            Assert.Equal(metal.Lowest * 1000, readings.Min(r => r.Lowest), 6);
            Assert.Equal(metal.Highest * 1000, readings.Max(r => r.Highest), 6);
        });
    }

    [Fact]
    public void Contraction_PartOfAName_GivesAllThatHoldIt()
    {
        string title = Ask.Of("contraction", "METAL", "iron").Value!.Title;
        Assert.Equal("Contraction: grey iron, ductile iron, malleable iron", title);
    }

    // ISO 8062-3 table 2: 40 to 63 mm in grade 12 is 5.6 wide (two sources), so ±2.8; the wall in grade 13 is 8, ±4.
    [Theory]
    [InlineData("12")]
    [InlineData("DCTG12")]
    [InlineData("dctg 12")]
    public void CastingTolerance_Grade_GivesTheWidthAndItsHalf(string grade)
    {
        Checked<LookupAnswer> answer = Ask.Of("casting-tolerance", "SIZE", "45", "GRADE", grade);
        Assert.Equal([5.6], answer.Numbers("total width"));
        Assert.Equal([2.8], answer.Numbers("plus or minus"));
        Assert.Equal("half the total width", answer.Row("plus or minus").Note);
        Assert.Equal([42.2, 47.8], answer.Numbers("limits of the raw size"));
        Assert.Equal([4], answer.Numbers("if it is a wall"));
    }

    // Reference 03b: copper alloys, hand moulded clay-bonded sand, short series 13 to 15 (two sources).
    [Fact]
    public void CastingGrades_OfCopperAlloys_NameProcessAndSeries()
    {
        LookupRow row = Ask.Of("casting-grades", "METAL", "copper alloys").Row("copper alloys, sand, hand moulded, clay bonded");
        Assert.Equal([13.0, 15], row.Value.Numbers.ToArray());
        Assert.Equal("short series", row.Note);
        Assert.Equal(Certainty.Solid, row.HowSure);
    }

    // Reference 03c: 63 to 100 mm, grade G 1.4 (two sources), A 0.2 (one).
    [Theory]
    [InlineData("G", 1.4, Certainty.Solid)]
    [InlineData("rmag g", 1.4, Certainty.Solid)]
    [InlineData("A", 0.2, Certainty.Thin)]
    public void MachiningAllowance_Grade_IsPerFace(string grade, double mm, Certainty howSure)
    {
        LookupRow row = Ask.Of("machining-allowance", "SIZE", "70", "GRADE", grade).Row("per machined face, least");
        Assert.Equal(mm, Assert.Single(row.Value.Numbers));
        Assert.Equal(howSure, row.HowSure);
    }

    // Reference 03d: grey iron by hand F to H.
    [Fact]
    public void MachiningGrades_OfGreyIron_AreLetters() =>
        Assert.Equal("F to H", Ask.Of("machining-grades", "METAL", "grey iron").Row("grey iron, sand, hand moulded").Value.Text);

    // Reference 06a: non-ferrous to 3 in 1/16 on each face; 06b from memory 0.09 to 8 in.
    [Fact]
    public void Stock_OfNonFerrous_GivesBothTables()
    {
        Checked<LookupAnswer> answer = Ask.Of("stock", "SIZE", "3 in", "METAL", "non-ferrous");
        Assert.Equal([0.0625], answer.Inches("non-ferrous, bore"));
        Assert.Equal([0.09], answer.Inches("non-ferrous, any face"));
        Assert.Equal(Certainty.FromMemory, answer.Row("non-ferrous, any face").HowSure);
    }

    // Reference 05b: 10 to 16 mm by hand 3.2, machine 2.7, investment 0.9; 05c from memory: to 1 in wood 3 and 3, metal 1.5 and 3.
    [Fact]
    public void Draft_OfAHeight_GivesEveryTable()
    {
        Checked<LookupAnswer> answer = Ask.Of("draft", "HEIGHT", "12");
        Assert.Equal([3.2], answer.Numbers("outside, sand moulded by hand"));
        Assert.Equal([2.7], answer.Numbers("outside, sand by machine or shell"));
        Assert.Equal([0.9], answer.Numbers("outside, investment casting"));
        Assert.Equal([3], answer.Numbers("wooden pattern, outside"));
        Assert.Equal([1.5], answer.Numbers("metal or plastic pattern, outside"));
        // 05a: 10 to 30 mm 1.5 to 2 (one weak source), and no other step of that source.
        Assert.Contains(answer.Value!.Rows, r => r.Note == "design guidelines, weak" && r.Value.Numbers.SequenceEqual([1.5, 2]));
        Assert.DoesNotContain(answer.Value.Rows, r => r.Note == "design guidelines, weak" && r.Value.Numbers.SequenceEqual([1, 1.5]));
    }

    // Reference 05d: brass and bronze, green sand 3 to 4.
    [Fact]
    public void LeastSection_WithAndWithoutMetal_Filters()
    {
        Assert.Equal([3, 4], Ask.Of("least-section", "METAL", "brass").Numbers("brass and bronze, green sand"));
        Assert.Equal(LeastSections.All.Length, Ask.Of("least-section").Value!.Rows.Length);
    }

    // Reference 05e: half the sum of 4 and 6; 6 is over 4 · 1.3, so slope it; least fillet 3.
    [Fact]
    public void DesignRules_TwoWalls_GiveFilletAndStep()
    {
        Checked<LookupAnswer> answer = Ask.Of("design-rules", "--wall", "4", "--other-wall", "6");
        Assert.Equal([5], answer.Numbers("fillet between these walls"));
        Assert.Equal("slope it", answer.Row("change of section").Value.Text);
        Assert.Equal("may be a step", Ask.Of("design-rules", "--wall", "4", "--other-wall", "5").Row("change of section").Value.Text);
        Assert.Equal([3], Ask.Of("design-rules", "--wall", "2").Numbers("fillet between these walls"));
        Assert.DoesNotContain(Ask.Of("design-rules").Value!.Rows, r => r.Name.Contains("these walls", StringComparison.Ordinal));
    }

    // Reference 09: casting brass 8.4 to 8.7 (two or three sources).
    [Fact]
    public void Material_Brass_HasItsDensityAndNothingItLacks()
    {
        Checked<LookupAnswer> answer = Ask.Of("material", "NAME", "brass, casting");
        Assert.Equal([8.4, 8.7], answer.Numbers("brass, casting, density"));
        Assert.Single(answer.Value!.Rows);
    }

    [Theory]
    [InlineData("contraction", "METAL", "lead", "LD602", "grey iron")]
    [InlineData("contraction", "METAL", "aluminum", "LD602", "Did you mean 'aluminium'?")]
    [InlineData("material", "NAME", "cheese", "LD602", "no 'cheese'")]
    [InlineData("casting-grades", "METAL", "", "LD602", "grey iron")]
    [InlineData("draft", "HEIGHT", "900", "LD601", "812.8 mm")]
    public void Find_UnknownOrOutside_IsRefused(string lookup, string input, string value, string code, string told) =>
        Ask.Of(lookup, input, value).MustRefuse(code, told);

    [Theory]
    [InlineData("casting-tolerance", "SIZE", "1001", "GRADE", "12", "LD601", "up to 1000 mm")]
    [InlineData("casting-tolerance", "SIZE", "8", "GRADE", "13", "LD601", "not given for sizes over 0 up to 10 mm")]
    [InlineData("casting-tolerance", "SIZE", "8", "GRADE", "17", "LD601", "from 1 to 16")]
    [InlineData("casting-tolerance", "SIZE", "8", "GRADE", "x", "LD601", "whole number")]
    [InlineData("machining-allowance", "SIZE", "70", "GRADE", "I", "LD601", "A to H, J and K")]
    [InlineData("machining-allowance", "SIZE", "70", "GRADE", "", "LD601", "A to H, J and K")]
    [InlineData("machining-allowance", "SIZE", "1200", "GRADE", "G", "LD601", "up to 1000 mm")]
    [InlineData("stock", "SIZE", "70 in", "METAL", "cast iron", "LD601", "1524 mm")]
    public void Find_OutsideTheTable_IsRefusedWithTheRange(string lookup, string a, string aValue, string b, string bValue, string code, string told) =>
        Ask.Of(lookup, a, aValue, b, bValue).MustRefuse(code, told);

    // By hand: 1/64 = 1.5625 %.
    [Fact]
    public void Contraction_Default_IsGivenInEveryForm() =>
        Assert.StartsWith("1.56 %, 1 in 64;", Ask.Of("contraction", "METAL", "brass").Row("default").Note, StringComparison.Ordinal);

    // Closed forms by hand: 4 × 6 / (2 · 10) = 1.2; 3 / 2; cylinder ⌀6 × 6: d/6 = 1; cube of 6: a/6 = 1.
    [Theory]
    [InlineData("bar", "4 6", 1.2)]
    [InlineData("plate", "3", 1.5)]
    [InlineData("cylinder", "6 6", 1)]
    [InlineData("block", "6 6 6", 1)]
    public void Modulus_SimpleBodies_ByHand(string body, string sizes, double expected) =>
        Assert.Equal(expected, Assert.Single(Ask.Of("modulus", "BODY", body, "SIZES", sizes).Numbers(body)), 1e-9);

    [Fact]
    public void Modulus_WrongNumberOfSizes_SaysHowMany() =>
        Ask.Of("modulus", "BODY", "bar", "SIZES", "4").MustRefuse(DiagnosticCatalogue.NotInTable.Code, "a bar has 2 sizes, not 1");
}
