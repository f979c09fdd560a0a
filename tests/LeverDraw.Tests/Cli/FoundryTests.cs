using System.Text;
using System.Text.Json;
using LeverDraw.Cli;
using LeverDraw.Tests.Samples;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Cli;

/// <summary>The foundry's sheets, choices and reports from the command line.</summary>
public sealed class FoundryTests
{
    private const string Lever = "profiles/levers/middle.toml", Pin = "profiles/pins/middle.toml";

    [Fact]
    public void Draw_CastingAndPattern_WritesBothInAllFormats()
    {
        MemoryFiles files = Shipped();
        CliRun run = CliRun.Of(files, "draw", Lever, "--sheet", "casting,pattern", "--out", "d");
        Assert.Equal(ExitCode.Done, run.Exit);
        Assert.Equal(
            ["d/middle.casting.svg", "d/middle.casting.mm.dxf", "d/middle.casting.pdf", "d/middle.casting.png", "d/middle.pattern.svg", "d/middle.pattern.mm.dxf", "d/middle.pattern.pdf", "d/middle.pattern.png"],
            run.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        // Outlines of a casting never stand on the layer of a finished part.
        string dxf = Encoding.Latin1.GetString(files["d/middle.casting.mm.dxf"]);
        Assert.Contains("OUTLINE_CASTING", dxf, StringComparison.Ordinal);
        Assert.DoesNotContain("OUTLINE_FINISHED", dxf, StringComparison.Ordinal);
    }

    [Fact]
    public void Draw_AllSheets_AreThoseTheProfileCallsFor()
    {
        CliRun run = CliRun.Of(Shipped(), "draw", Lever, Pin, "--sheet", "all", "--format", "svg");
        Assert.Equal(["middle.finished.svg", "middle.casting.svg", "middle.pattern.svg", "middle.pin.svg"], run.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        MemoryFiles turned = Shipped().With("profiles/levers/bar.toml", "kind = \"lever\"\nname = \"x\"\nextends = \"middle.toml\"\n[casting]\npattern_metal = \"aluminium\"\n");
        Assert.Contains("bar.master.svg", CliRun.Of(turned, "draw", "profiles/levers/bar.toml", "--sheet", "all", "--format", "svg").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Draw_AnotherMetal_IsNamedInTheTitleBlockAndCountedIn()
    {
        MemoryFiles files = Shipped();
        Assert.Equal(ExitCode.Done, CliRun.Of(files, "draw", Lever, "--sheet", "finished,pattern", "--metal", "grey-iron", "--process", "resin-sand", "--format", "svg").Exit);
        string pattern = Encoding.UTF8.GetString(files["middle.pattern.svg"]), finished = Encoding.UTF8.GetString(files["middle.finished.svg"]);
        Assert.Contains("aria-label=\"CONTRACTION INCLUDED 1 in 96 - USE PLAIN RULE\"", pattern, StringComparison.Ordinal);
        Assert.Contains("aria-label=\"Resin-bonded sand\"", pattern, StringComparison.Ordinal);
        Assert.All(new[] { pattern, finished }, svg =>
        {
            Assert.Contains("aria-label=\"Grey iron\"", svg, StringComparison.Ordinal);
            Assert.DoesNotContain("brass", svg, StringComparison.OrdinalIgnoreCase);
        });
    }

    [Theory]
    // 48.8 / 48.05 − 1 = 1.561 %; 1 in 64.1.
    [InlineData("48.8:48.05", "1 in 64.1 (1.56 %)")]
    [InlineData("1 in:25 mm", "1 in 62.5 (1.6 %)")]
    public void Remould_TrialOnTheCommandLine_ReplacesTheBooksRate(string trial, string rate)
    {
        CliRun run = CliRun.Of(Shipped(), "remould", Lever, "--trial", trial);
        Assert.Equal(ExitCode.Done, run.Exit);
        Assert.Contains("contraction " + rate, run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Remould_WornOriginal_SaysWhatComesOutAndWhatToPad()
    {
        CliRun run = CliRun.Of(Shipped(), "remould", Lever, "--metal", "brass", "--measured", "pads.thickness=2.8", "--json");
        using JsonDocument json = JsonDocument.Parse(run.Out);
        JsonElement pads = json.RootElement.GetProperty("sizes").EnumerateArray().Single(s => s.GetProperty("field").GetString() == "pads.thickness");
        // 2.8 / 1.015625 = 2.756923; pattern (3.05 + 2 × 0.5) × 1.015625 = 4.113281, less 2.8, halved.
        Assert.Equal(2.756923, pads.GetProperty("comesOut").GetDouble(), 1e-6);
        Assert.Equal(0.656641, pads.GetProperty("pad").GetDouble(), 1e-6);
        Assert.Equal(3.05 - 2.756923, pads.GetProperty("shortBy").GetDouble(), 1e-6);
    }

    [Fact]
    public void Remould_Text_TellsToFillTheHole()
    {
        CliRun run = CliRun.Of(Shipped(), "remould", Lever, "--units", "in");
        Assert.Equal(ExitCode.Done, run.Exit);
        Assert.Contains("fill or bush the pivot hole", run.Out, StringComparison.Ordinal);
        Assert.Matches(@"arms length +0\.827 +0\.814 +0\.013 +0\.013 in all", run.Out);
    }

    [Fact]
    public void Remould_APin_IsRefused() =>
        Assert.Contains("LD431", CliRun.Of(Shipped(), "remould", Pin).Error, StringComparison.Ordinal);

    [Fact]
    public void Draw_RuleOfAMetal_NeedsNoProfile()
    {
        MemoryFiles files = new();
        CliRun run = CliRun.Of(files, "draw", "--sheet", "rule", "--metal", "brass", "--format", "svg,dxf", "--out", "d");
        Assert.Equal(ExitCode.Done, run.Exit);
        Assert.Equal(["d/brass.rule.svg", "d/brass.rule.mm.dxf"], run.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("aria-label=\"CONTRACTION RULE 1 in 64 (1.56 %)\"", Encoding.UTF8.GetString(files["d/brass.rule.svg"]), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("'draw' needs FILE.", "draw", "--sheet", "casting")]
    [InlineData("A rule without a profile needs a metal.", "draw", "--sheet", "rule")]
    [InlineData("Did you mean 'brass'?", "draw", Lever, "--metal", "bras")]
    [InlineData("'1.6' is no value for --contraction.", "check", Lever, "--contraction", "1.6")]
    [InlineData("'y=3:2' is no value for --trial.", "check", Lever, "--trial", "y=3:2")]
    [InlineData("'48' is no value for --trial.", "check", Lever, "--trial", "48")]
    [InlineData("Did you mean 'pads.thickness'?", "remould", Lever, "--measured", "pads.thicknes=3")]
    public void Options_Wrong_SayWhatToWrite(string said, params string[] args)
    {
        CliRun run = CliRun.Of(Shipped(), args);
        Assert.Equal(ExitCode.WrongUsage, run.Exit);
        Assert.Contains(said, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_GreyIron_TellsWhatAFoundrymanWould()
    {
        CliRun run = CliRun.Of(Shipped(), "check", Lever, "--metal", "grey-iron");
        Assert.Equal(ExitCode.Done, run.Exit);
        Assert.Contains("warning LD428", run.Out, StringComparison.Ordinal);
        Assert.Contains("warning LD418: The arms' thickness of 3.6 mm is thinner than the 4 mm that grey iron usually fills", run.Out, StringComparison.Ordinal);
    }

    /// <summary>What is told of a lever as shipped is true and little.</summary>
    [Fact]
    public void Check_ShippedLevers_HaveFewFindings()
    {
        foreach (string lever in SampleSet.Profiles.Where(p => p.Contains("/levers/", StringComparison.Ordinal)))
        {
            CliRun run = CliRun.Of(Shipped(), "check", lever);
            Assert.Equal(ExitCode.Done, run.Exit);
            Assert.InRange(run.Out.Split("warning LD").Length - 1, 1, 5);
        }
    }

    private static MemoryFiles Shipped()
    {
        MemoryFiles files = new();
        foreach (string path in SampleSet.Profiles)
            files.With(path, RepositoryFile.Read(path));
        return files;
    }
}
