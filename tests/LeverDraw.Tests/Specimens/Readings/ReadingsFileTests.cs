using LeverDraw.Diagnostics;
using LeverDraw.Parts;
using LeverDraw.Specimens.Forms;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Readings;
using LeverDraw.Tests.Cli;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Specimens.Readings;

public sealed class ReadingsFileTests
{
    private const string Heads = "specimen,field,value,unit,instrument,where,altered,note\n";

    [Fact]
    public void Read_EveryBadRow_IsToldWithLineAndColumn()
    {
        Checked<ReadingSet> read = Read(Heads
            + "A,arms.thikness,3.6,mm,caliper,,,\n"
            + "A,arms.thickness,3.6.1,mm,caliper,,,\n"
            + "A,arms.thickness,3.6,,calliper,,,\n"
            + "A,arms.thickness,36,mm,,,,\n"
            + "A,pads.thickness,\"3,0\",mm,,corner,maybe,\n"
            + "A,arms.form,taperd,,,,,\n"
            + "A,arms.thickness,3.6 mm\n"
            + "A,\"arms.thickness,3.6,mm,,,,\n");
        (string, int, int)[] told = [.. read.Diagnostics.Select(d => (d.Code, d.Position!.Value.Line, d.Position.Value.Column))];
        Assert.Equal(
            [("LD705", 2, 3), ("LD707", 3, 18), ("LD708", 4, 18), ("LD710", 4, 23), ("LD709", 5, 18), ("LD707", 6, 18), ("LD711", 6, 28), ("LD712", 6, 35), ("LD707", 7, 13), ("LD703", 8, 1), ("LD704", 9, 3)],
            told.OrderBy(t => t.Item2).ThenBy(t => t.Item3));
        Assert.Contains("Did you mean 'arms.thickness'?", read.Diagnostics.Select(d => d.Suggestion));
        Assert.Contains(read.Diagnostics, d => d.Code == "LD709" && d.Suggestion.Contains("a tenth of it, 3.6 mm", StringComparison.Ordinal));
    }

    /// <summary>9/64 in is 3.571875 mm: 25.4 · 9 / 64 by hand.</summary>
    [Fact]
    public void Read_Units_AreThoseWritten()
    {
        ReadingSet read = Good(Heads + "A,arms.thickness,9/64 in,,,,,\nA,arms.width,0.2,in,,,,\nA,tongue.sweep,40,deg,,,,\nA,hole.taper,1:48,,,,,\n");
        Assert.Equal(3.571875, read.All[0].Value, 1e-12);
        Assert.Equal(5.08, read.All[1].Value, 1e-12);
        Assert.Equal(40, read.All[2].Value, 1e-12);
        Assert.Equal("tapered", read.All[3].Word);
    }

    [Fact]
    public void Read_Semicolons_AndRepeats()
    {
        ReadingSet read = Good("specimen;field;value\nA;arms.thickness;3.61 mm | 3.63 mm\n");
        Assert.Equal([3.61, 3.63], read.All.Select(r => r.Value));
        Assert.Equal(3.62, Assert.Single(read.Of(Measurands.Find("arms.thickness")!)).Value, 1e-12);
    }

    /// <summary>A field's name means the same without its quotes; outside every specimen it belongs to none.</summary>
    [Fact]
    public void Read_TomlWithoutQuotes_IsTheSameField()
    {
        Checked<ReadingSet> read = ReadingsFile.Read("r.toml", new MemoryFiles().With("r.toml", "head.depth = \"8.2 mm\"\n[A]\nhead.width = \"9.5 mm\"\npads.thickness = { worn = \"2.9 mm\", wittness = \"3 mm\" }\n"));
        Assert.Equal([("LD716", 1), ("LD716", 4)], read.Diagnostics.Select(d => (d.Code, d.Position!.Value.Line)));
        Assert.Contains("[A]", read.Diagnostics[0].Suggestion, StringComparison.Ordinal);
        Assert.Equal(9.5, ReadingsFile.Read("r.toml", new MemoryFiles().With("r.toml", "[A]\nhead.width = \"9.5 mm\"\n")).Value!.All.Single().Value, 1e-12);
    }

    [Fact]
    public void Read_Toml_SaysTheSame()
    {
        Checked<ReadingSet> read = ReadingsFile.Read("r.toml", new MemoryFiles().With("r.toml",
            "[A]\n\"pads.thickness\" = { worn = \"2.8 mm; 2.9 mm\", witness = \"3.05 mm\", instrument = \"micrometer\", altered = false }\n\"arms.form\" = \"stepped\"\n"));
        Assert.True(read.Ok);
        Assert.Equal([(2.8, ReadAt.Worn), (2.9, ReadAt.Worn), (3.05, ReadAt.Witness), (0, ReadAt.Unsaid)], read.Value.All.Select(r => (r.Value, r.At)));
        Assert.All(read.Value.All.Take(3), r => Assert.Equal(Instruments.Micrometer, r.Instrument));
    }

    /// <summary>Each odd reading is within the field's own range, so that only the others show the slip. 5.994 mm is 0.236 · 25.4 by hand.</summary>
    [Theory]
    [InlineData("fork.web", "5.9 mm", "0.6 mm", "6 mm")]
    [InlineData("fork.web", "5.9 mm", "0.236 mm", "5.994 mm")]
    [InlineData("pads.crown_radius", "1.5 mm", "15 mm", "1.5 mm")]
    public void Read_TenTimesOrInchesOff_IsFlaggedAndLeftOut(string field, string usual, string odd, string mended)
    {
        Checked<ReadingSet> read = Read($"specimen,field,value\nA,{field},{usual}\nB,{field},{odd}\nC,{field},{usual}\n");
        Diagnostic slip = Assert.Single(read.Diagnostics, d => d.Code == "LD713");
        Assert.Equal(3, slip.Position!.Value.Line);
        Assert.Contains(mended, slip.Suggestion, StringComparison.Ordinal);
        Assert.Equal([true, false, true], read.Value!.All.Select(r => r.Counts));
    }

    /// <summary>A flat of 0.4 mm in a bore of 3.2 mm reads low by 0.4²/(2·3.2) = 0.025 mm (trade notes).</summary>
    [Fact]
    public void SmallBoreError_OfTheTradeNotesCase()
    {
        Assert.Equal(0.025, Instruments.SmallBoreError(LeverDraw.Units.Length.FromMillimetres(3.2)).Millimetres, 1e-12);
        ReadingSet read = Good("specimen,field,value,instrument\nA,hole.diameter,3.2 mm,caliper\nB,hole.diameter,3.2 mm,pin-gauge\n");
        Assert.Equal([3.225, 3.2], read.Of(Measurands.Find("hole.diameter")!).Select(v => v.Value), (a, b) => Math.Abs(a - b) < 1e-9);
    }

    /// <summary>Worn readings of different spots: the least worn one; a mean would not do.</summary>
    [Fact]
    public void Of_WornSpots_TakesTheLeastWorn_AndAWitnessBeforeThem()
    {
        ReadingSet worn = Good("specimen,field,value,where\nA,pads.thickness,2.5 mm,worn\nA,pads.thickness,2.9 mm,worn\n");
        Assert.Equal(2.9, Assert.Single(worn.Of(Measurands.Find("pads.thickness")!)).Value, 1e-12);
        ReadingSet witness = Good("specimen,field,value,where\nA,pads.thickness,2.9 mm,worn\nA,pads.thickness,3.05 mm,witness\n");
        Assert.Equal(3.05, Assert.Single(witness.Of(Measurands.Find("pads.thickness")!)).Value, 1e-12);
    }

    [Theory]
    [InlineData("arms.thickness", "does not wear")]
    [InlineData("pads.thickness", "least worn place is taken")]
    public void Read_RepeatsFarApart_SaysWhatIsTakenOfThem(string field, string said)
    {
        Diagnostic apart = Assert.Single(Read($"specimen,field,value\nA,{field},2.9 mm; 3.2 mm\n").Diagnostics, d => d.Code == "LD714");
        Assert.Contains(said, apart.Suggestion, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lever")]
    [InlineData("pin")]
    public void Read_EmptyForm_HasNoFaultButThatItIsEmpty(string kind)
    {
        PartKind part = PartKinds.All.Single(k => k.Name == kind);
        Assert.Equal(["LD715"], Read(FormText.Csv(part)).Diagnostics.Select(d => d.Code));
        Assert.Equal(["LD715"], ReadingsFile.Read("f.toml", new MemoryFiles().With("f.toml", FormText.Toml(part))).Diagnostics.Select(d => d.Code));
    }

    [Fact]
    public void Read_ShippedReadings_HaveNoFaultAndNoWarning() =>
        Assert.Empty(ReadingsFile.Read("s.csv", new MemoryFiles().With("s.csv", RepositoryFile.Read("profiles/readings/survivors.csv"))).Diagnostics);

    private static Checked<ReadingSet> Read(string csv) => ReadingsFile.Read("r.csv", new MemoryFiles().With("r.csv", csv));

    private static ReadingSet Good(string csv)
    {
        Checked<ReadingSet> read = Read(csv);
        Assert.True(read.Ok, string.Join('\n', read.Diagnostics.Select(d => d.Message)));
        return read.Value;
    }
}
