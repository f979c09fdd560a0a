using System.Text;
using System.Text.Json;
using LeverDraw.Cli;
using LeverDraw.Tests.Samples;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Cli;

public sealed class DrawTests
{
    private const string Lever = "profiles/levers/late.toml", Pin = "profiles/pins/middle.toml";

    [Fact]
    public void Draw_LeverAndPin_WritesAllFormatsAndSaysWhich()
    {
        MemoryFiles files = Shipped();
        CliRun run = CliRun.Of(files, "draw", Lever, Pin, "--out", "drawings");
        Assert.Equal(ExitCode.Done, run.Exit);
        string[] expected =
        [
            "drawings/late.finished.svg", "drawings/late.finished.mm.dxf", "drawings/late.finished.pdf", "drawings/late.finished.png",
            "drawings/middle.pin.svg", "drawings/middle.pin.mm.dxf", "drawings/middle.pin.pdf", "drawings/middle.pin.png",
        ];
        Assert.Equal(expected, run.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(expected.Order(StringComparer.Ordinal), files.Names.Where(n => n.StartsWith("drawings/", StringComparison.Ordinal)));
    }

    [Fact]
    public void Draw_InInches_DxfSaysSoInNameAndHeader()
    {
        MemoryFiles files = Shipped();
        Assert.Equal(ExitCode.Done, CliRun.Of(files, "draw", Pin, "--units", "in-mm", "--format", "DXF").Exit);
        // $INSUNITS 1 is inches (DXF reference, header variables).
        Assert.Matches(@"\$INSUNITS\r?\n *70\r?\n *1\r?\n", Encoding.ASCII.GetString(files["middle.pin.in.dxf"]));
    }

    [Fact]
    public void Draw_OutlinesOnly_GoBesideTheFullDrawing()
    {
        MemoryFiles files = Shipped();
        Assert.Equal(ExitCode.Done, CliRun.Of(files, "draw", Lever, "--format", "dxf", "--out", "d").Exit);
        Assert.Equal(ExitCode.Done, CliRun.Of(files, "draw", Lever, "--format", "dxf", "--out", "d", "--dxf", "outline").Exit);
        Assert.True(files["d/late.finished.mm.dxf"].Length > files["d/late.finished.outline.mm.dxf"].Length);
    }

    [Theory]
    [InlineData("letter", 215.9, 279.4)]
    [InlineData("A2", 594, 420)]
    public void Draw_OnPaper_SvgHasItsSize(string paper, double width, double height)
    {
        MemoryFiles files = Shipped();
        Assert.Equal(ExitCode.Done, CliRun.Of(files, "draw", Pin, "--paper", paper, "--format", "svg").Exit);
        string svg = Encoding.UTF8.GetString(files["middle.pin.svg"]);
        Assert.Contains(FormattableString.Invariant($"width=\"{width}mm\" height=\"{height}mm\""), svg[..600], StringComparison.Ordinal);
    }

    [Fact]
    public void Draw_AsJson_ListsWhatWasWritten()
    {
        MemoryFiles files = Shipped();
        CliRun run = CliRun.Of(files, "draw", Pin, "--format", "svg,png", "--dpi", "50", "--json");
        using JsonDocument json = JsonDocument.Parse(run.Out);
        Assert.True(json.RootElement.GetProperty("ok").GetBoolean());
        JsonElement[] written = [.. json.RootElement.GetProperty("written").EnumerateArray()];
        Assert.Equal(["svg", "png"], written.Select(w => w.GetProperty("format").GetString()));
        Assert.All(written, w => Assert.Equal(files[w.GetProperty("path").GetString()!].Length, w.GetProperty("bytes").GetInt32()));
    }

    [Fact]
    public void Draw_AsTable_PutsAKindOnOneSheetNamedAfterTheFirst()
    {
        MemoryFiles files = Shipped();
        CliRun run = CliRun.Of(files, "draw", Pin, "profiles/pins/late.toml", "--style", "table", "--paper", "A3", "--format", "svg,dxf", "--out", "d");
        Assert.Equal(ExitCode.Done, run.Exit);
        Assert.Equal(["d/middle.pin-table.svg", "d/middle.pin-table.mm.dxf"], run.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("aria-label=\"TC-P-03\"", Encoding.UTF8.GetString(files["d/middle.pin-table.svg"]), StringComparison.Ordinal);
    }

    [Fact]
    public void Draw_TolerancesAsLimits_ShowsNoDeviation()
    {
        MemoryFiles files = Shipped();
        Assert.Equal(ExitCode.Done, CliRun.Of(files, "draw", Lever, "--tolerances", "limits", "--paper", "A3", "--format", "svg").Exit);
        string svg = Encoding.UTF8.GetString(files["late.finished.svg"]);
        Assert.DoesNotMatch("data-text=\"[^\"]*±", svg);
        Assert.Matches("data-text=\"⌀2.825/2.800 THROUGH", svg);
    }

    [Fact]
    public void Draw_OneFaultyProfileOfTwo_WritesNothing()
    {
        MemoryFiles files = Shipped().With("x.toml", "kind = \"pin\"\n");
        CliRun run = CliRun.Of(files, "draw", Pin, "x.toml", "--out", "drawings", "--json");
        Assert.Equal(ExitCode.InputFaults, run.Exit);
        Assert.False(files.FolderExists("drawings"));
        using JsonDocument json = JsonDocument.Parse(run.Out);
        Assert.Equal(0, json.RootElement.GetProperty("written").GetArrayLength());
    }

    [Fact]
    public void Draw_SheetThatDoesNotFit_TellsOfTheProfileAndWritesNothing()
    {
        MemoryFiles files = Shipped();
        CliRun run = CliRun.Of(files, "draw", Lever, "--paper", "A4", "--scale", "50:1", "--out", "drawings");
        Assert.Equal(ExitCode.InputFaults, run.Exit);
        Assert.Contains(Lever + ": error LD501", run.Error, StringComparison.Ordinal);
        Assert.False(files.FolderExists("drawings"));
    }

    [Fact]
    public void Draw_SheetTheKindHasNot_SaysWhichThereAre()
    {
        CliRun run = CliRun.Of(Shipped(), "draw", Lever, Pin, "--sheet", "finished");
        Assert.Equal(ExitCode.WrongUsage, run.Exit);
        Assert.Contains($"'{Pin}' is of kind pin and has no sheet finished. Its sheets: pin.", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Draw_SameProfileTwice_Refused()
    {
        CliRun run = CliRun.Of(Shipped(), "draw", Pin, "./" + Pin);
        Assert.Equal(ExitCode.WrongUsage, run.Exit);
        Assert.Contains("would both be written to 'middle.pin.svg'", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Draw_OutputOntoAnInput_Refused()
    {
        byte[] child = "kind = \"pin\"\nname = \"x\"\nextends = \"a.pin.svg\"\n"u8.ToArray();
        MemoryFiles files = Shipped().With("profiles/pins/a.pin.svg", RepositoryFile.Read("profiles/pins/early.toml")).With("profiles/pins/a.toml", child);
        CliRun run = CliRun.Of(files, "draw", "profiles/pins/a.toml", "--out", "profiles/pins");
        Assert.Equal(ExitCode.WrongUsage, run.Exit);
        Assert.Contains("'profiles/pins/a.pin.svg' would overwrite a profile.", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Draw_PictureTooLarge_SaysWhatWouldDo()
    {
        CliRun run = CliRun.Of(Shipped(), "draw", Pin, "--paper", "A1", "--dpi", "1200", "--format", "png");
        Assert.Equal(ExitCode.WrongUsage, run.Exit);
        Assert.Matches(@"Take --dpi \d+ or less", run.Error);
    }

    [Fact]
    public void Draw_Stopped_WritesNothing()
    {
        MemoryFiles files = Shipped();
        CliRun run = CliRun.Of(
            new Surroundings(new StringWriter(), new StringWriter(), files), ["draw", Pin, "--out", "drawings"], new CancellationToken(canceled: true));
        Assert.Equal(ExitCode.Stopped, run.Exit);
        Assert.False(files.FolderExists("drawings"));
    }

    private static MemoryFiles Shipped()
    {
        MemoryFiles files = new();
        foreach (string path in SampleSet.Profiles)
            files.With(path, RepositoryFile.Read(path));
        return files;
    }
}
