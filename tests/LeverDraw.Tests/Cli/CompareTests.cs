using System.Text.Json;
using LeverDraw.Cli;
using LeverDraw.Tests.Samples;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Cli;

public sealed class CompareTests
{
    private const string Early = "profiles/levers/early.toml", Middle = "profiles/levers/middle.toml", Late = "profiles/levers/late.toml";

    [Fact]
    public void Compare_Two_WritesTheOverlayInAllFormatsAndTellsTheDifferences()
    {
        MemoryFiles files = Shipped();
        CliRun run = CliRun.Of(files, "compare", Early, Late, "--out", "d", "--dpi", "50");
        Assert.True(run.Exit == ExitCode.Done, run.Error);
        string[] expected = ["d/early-late.overlay.mm.dxf", "d/early-late.overlay.pdf", "d/early-late.overlay.png", "d/early-late.overlay.svg"];
        Assert.Equal(expected, files.Names.Where(n => n.StartsWith("d/", StringComparison.Ordinal)));
        Assert.All(expected, name => Assert.Contains(name, run.Out.Split('\n')));
        // 4.2 against 3 (trade notes 6.1): −1.2 mm is −0.0472 in.
        Assert.Matches(@"arms\.thickness +4\.2 +3 +mm +−1\.2 +−\.0472 +strength: ", run.Out);
        Assert.Matches(@"side\.area_alone +\d", run.Out);
        Assert.Contains("A is at most 0.9 mm outside B", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Compare_WithItself_FindsNothing()
    {
        CliRun run = CliRun.Of(Shipped(), "compare", Middle, Middle, "--table");
        Assert.Equal(ExitCode.Done, run.Exit);
        Assert.Contains("No size differs.", run.Out, StringComparison.Ordinal);
        Assert.Contains("side view: A lies on B.", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Compare_SeveralAsTable_HasAColumnForEachAndWritesNothing()
    {
        MemoryFiles files = Shipped();
        int before = files.Names.Count();
        CliRun run = CliRun.Of(files, "compare", Early, Middle, Late, "--table");
        Assert.True(run.Exit == ExitCode.Done, run.Error);
        Assert.Matches(@"arms\.thickness +4\.2 +3\.6 +3 +mm", run.Out);
        Assert.Equal(before, files.Names.Count());
    }

    [Fact]
    public void Compare_AsCsv_HasOneRectangularTable()
    {
        CliRun run = CliRun.Of(Shipped(), "compare", Early, Late, "--csv", "--format", "svg", "--out", "d");
        Assert.Equal(ExitCode.Done, run.Exit);
        string[] lines = run.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal("rows,name,sign,A Early heavy,B Late light,unit,delta mm,delta in,delta,matters,why", lines[0]);
        Assert.All(lines, l => Assert.Equal(11, Cells(l).Count));
        Assert.Contains("differs,arms.thickness,ta,4.2,3,mm,-1.2,-0.0472,,strength,\"bends under the nut's push, by its square\"", lines);
        Assert.Contains("d/early-late.overlay.svg", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Compare_AsJson_HoldsSizesAreasAndFiles()
    {
        MemoryFiles files = Shipped();
        using JsonDocument json = JsonDocument.Parse(CliRun.Of(files, "compare", Early, Late, "--json", "--format", "svg", "--align", "nose").Out);
        JsonElement root = json.RootElement;
        Assert.True(root.GetProperty("ok").GetBoolean());
        JsonElement arm = root.GetProperty("sizes").EnumerateArray().Single(r => r.GetProperty("name").GetString() == "arms.thickness");
        Assert.Equal(-1.2, arm.GetProperty("deltaMillimetres").GetDouble(), 9);
        Assert.Equal("nose", root.GetProperty("overlay").GetProperty("alignedBy").GetString());
        JsonElement side = root.GetProperty("overlay").GetProperty("views")[0];
        Assert.Equal(side.GetProperty("areaA").GetDouble(), side.GetProperty("both").GetDouble() + side.GetProperty("onlyA").GetDouble(), side.GetProperty("error").GetDouble());
        Assert.Equal("early-late.overlay.svg", root.GetProperty("written")[0].GetProperty("path").GetString());
    }

    [Fact]
    public void Compare_WithPins_TellsThePlay()
    {
        CliRun run = CliRun.Of(Shipped(), "compare", Early, Late, "profiles/pins/late.toml", "profiles/pins/early.toml", "--table");
        Assert.True(run.Exit == ExitCode.Done, run.Error);
        // Trade notes 6.1: 0.04 and 0.23.
        Assert.Matches(@"hole\.play +0\.04\d* +0\.2[23]\d* +mm", run.Out);
    }

    [Theory]
    [InlineData("two levers", Early)]
    [InlineData("--table", Early, Middle, Late)]
    [InlineData("no pin of these levers", Early, Late, "profiles/pins/early.toml", "profiles/pins/late.toml", "profiles/pins/rare.toml")]
    [InlineData("is missing (TC-P-03)", Early, Late, "profiles/pins/early.toml")]
    [InlineData("no value for --align", Early, Late, "--align", "noses")]
    [InlineData("two things at once", Early, Late, "--csv", "--json")]
    public void Compare_WrongUse_SaysWhatToDo(string expected, params string[] words)
    {
        CliRun run = CliRun.Of(Shipped(), ["compare", .. words]);
        Assert.Equal(ExitCode.WrongUsage, run.Exit);
        Assert.Contains(expected, run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Out);
    }

    [Fact]
    public void Compare_FaultyProfile_TellsThePlaceAndWritesNothing()
    {
        MemoryFiles files = Shipped().With("x.toml", "kind = \"lever\"\nname = \"X\"\nextends = \"profiles/levers/early.toml\"\n\n[arms]\nthicknes = 4\n");
        CliRun run = CliRun.Of(files, "compare", Early, "x.toml", "--out", "d");
        Assert.Equal(ExitCode.InputFaults, run.Exit);
        Assert.Contains("x.toml:6:1", run.Error, StringComparison.Ordinal);
        Assert.Contains("Nothing was written.", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain(files.Names, n => n.StartsWith("d/", StringComparison.Ordinal));
    }

    [Fact]
    public void Compare_OntoAnInput_Refused()
    {
        MemoryFiles files = Shipped().With("a-b.overlay.svg", RepositoryFile.Read(Early)).With("a.toml", "kind = \"lever\"\nname = \"A\"\nextends = \"a-b.overlay.svg\"\n").With("b.toml", RepositoryFile.Read(Early));
        CliRun run = CliRun.Of(files, "compare", "a.toml", "b.toml", "--format", "svg");
        Assert.Equal(ExitCode.WrongUsage, run.Exit);
        Assert.Contains("would overwrite a profile", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Compare_SheetTooLarge_WritesNothing()
    {
        MemoryFiles files = Shipped();
        CliRun run = CliRun.Of(files, "compare", Early, Late, "--paper", "A4", "--scale", "20:1", "--out", "d");
        Assert.Equal(ExitCode.InputFaults, run.Exit);
        Assert.Contains("LD501", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain(files.Names, n => n.StartsWith("d/", StringComparison.Ordinal));
    }

    private static MemoryFiles Shipped()
    {
        MemoryFiles files = new();
        foreach (string path in SampleSet.Profiles)
            files.With(path, RepositoryFile.Read(path));
        return files;
    }

    /// <summary>The cells of a line, quotes undone (RFC 4180).</summary>
    private static List<string> Cells(string line)
    {
        List<string> cells = [""];
        bool quoted = false;
        foreach (char c in line)
        {
            if (c == '"')
                quoted = !quoted;
            else if (c == ',' && !quoted)
                cells.Add("");
            else
                cells[^1] += c;
        }

        return cells;
    }
}
