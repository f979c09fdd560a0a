using System.Text.Json;
using LeverDraw.Cli;
using LeverDraw.Tests.Samples;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Cli;

/// <summary><c>backlash</c> and <c>fits</c> as a user calls them.</summary>
public sealed class MechanismCommandsTests
{
    private const string Setup = "profiles/setups/rattling.toml";

    private static readonly string[] Fits = ["fits", "profiles/levers/middle.toml", "profiles/planes/middle.toml", "profiles/planes/early.toml", "profiles/pins/middle.toml"];

    [Fact]
    public void Backlash_AsText_TellsTheTurnsTheGapsAndTheCure()
    {
        CliRun run = CliRun.Of(Files(), "backlash", Setup, "--draws", "1000");
        Assert.Equal(ExitCode.Done, run.Exit);
        foreach (string words in (string[])["as found", "all parts new", "tongue in slot", "worst case", "root sum square", "1,000 draws, seed 1", "Cheapest way to 1.00 turns"])
            Assert.Contains(words, run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain('\e', run.Out);
    }

    /// <summary>A setup has neither of the sheets that are drawn when none is named: it draws its own. One that is named and that it lacks stays a fault.</summary>
    [Fact]
    public void Draw_SetupWithoutASheetNamed_DrawsItsOwn()
    {
        CliRun run = CliRun.Of(Files(), "draw", Setup, "--format", "svg");
        Assert.Equal(ExitCode.Done, run.Exit);
        Assert.Equal(["rattling.mechanism.svg", "rattling.travel.svg"], run.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal));
        Assert.Equal(ExitCode.WrongUsage, CliRun.Of(Files(), "draw", Setup, "--sheet", "finished,pin").Exit);
    }

    [Fact]
    public void Backlash_AsJson_HoldsTheSame()
    {
        using JsonDocument json = JsonDocument.Parse(CliRun.Of(Files(), "backlash", Setup, "--draws", "1000", "--json", "--target", "1.5").Out);
        JsonElement report = json.RootElement.GetProperty("report");
        Assert.Equal(4, report.GetProperty("gaps").GetArrayLength());
        Assert.Equal(16, report.GetProperty("cures").GetArrayLength());
        Assert.Equal(1.5, report.GetProperty("target").GetDouble());
        Assert.True(report.GetProperty("cheapest").GetProperty("turns").GetDouble() <= 1.5);
        Assert.Equal(1, report.GetProperty("gaps").EnumerateArray().Sum(g => g.GetProperty("share").GetDouble()), 9);
    }

    /// <summary>0.15 mm of thread play are 0.0059 in; a turn of 0.9 mm lead, 0.005 in of groove cost 0.127/0.9 = 0.14 turn.</summary>
    [Fact]
    public void Backlash_InInches_NamesInchesOnly()
    {
        CliRun run = CliRun.Of(Files(), "backlash", Setup, "--draws", "1000", "--units", "in");
        Assert.Matches(@"thread on stud +0\.0059 .* 0\.14\n", run.Out);
        Assert.DoesNotContain(" mm", run.Out, StringComparison.Ordinal);
        Assert.Contains("0.0059", CliRun.Of(Files(), "backlash", Setup, "--draws", "1000", "--units", "mm-in").Out, StringComparison.Ordinal);
    }

    /// <summary>The worn plane's gaps are large, the unworn early plane's are small; each report says which number is meant.</summary>
    [Theory]
    [InlineData(Setup, "The exact number is meant")]
    [InlineData("profiles/setups/early.toml", "Small gaps")]
    public void Backlash_SaysWhichNumberIsMeant(string setup, string words) =>
        Assert.Contains(words, CliRun.Of(Files(), "backlash", setup, "--draws", "1000").Out, StringComparison.Ordinal);

    [Fact]
    public void Fits_WithRework_CautionsOfBrittleLugs() =>
        Assert.Contains("brittle iron", CliRun.Of(Files(), Fits).Out, StringComparison.Ordinal);

    [Fact]
    public void Backlash_SameSeed_PrintsTheSame() =>
        Assert.Equal(CliRun.Of(Files(), "backlash", Setup, "--draws", "2000", "--seed", "5").Out, CliRun.Of(Files(), "backlash", Setup, "--draws", "2000", "--seed", "5").Out);

    [Fact]
    public void Backlash_WithSheet_WritesIt()
    {
        MemoryFiles files = Files();
        CliRun run = CliRun.Of(files, "backlash", Setup, "--draws", "100", "--sheet", "--format", "svg,dxf", "--out", "drawn");
        Assert.Equal(ExitCode.Done, run.Exit);
        Assert.Contains("drawn/rattling.mechanism.svg", files.Names);
        Assert.Contains("drawn/rattling.mechanism.mm.dxf", files.Names);
    }

    [Fact]
    public void Backlash_OfALever_SaysWhatIsWanted()
    {
        CliRun run = CliRun.Of(Files(), "backlash", "profiles/levers/middle.toml");
        Assert.Equal(ExitCode.InputFaults, run.Exit);
        Assert.Contains("LD118", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--target", "none")]
    [InlineData("--draws", "1")]
    [InlineData("--spread", "flat")]
    public void Backlash_BadOption_IsWrongUsage(string option, string value) =>
        Assert.Equal(ExitCode.WrongUsage, CliRun.Of(Files(), "backlash", Setup, option, value).Exit);

    [Fact]
    public void Fits_AsText_TellsVerdictsAndRework()
    {
        CliRun run = CliRun.Of(Files(), Fits);
        Assert.Equal(ExitCode.Done, run.Exit);
        Assert.Contains("goes in, 0.85", run.Out, StringComparison.Ordinal);
        Assert.Contains("does not go", run.Out, StringComparison.Ordinal);
        Assert.Contains("take pin 2/0", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Fits_AsCsvAndJson_HoldEveryContact()
    {
        string[] rows = CliRun.Of(Files(), [.. Fits, "--csv"]).Out.TrimEnd().Split('\n');
        Assert.StartsWith("lever,plane,verdict", rows[0], StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(CliRun.Of(Files(), [.. Fits, "--json"]).Out);
        Assert.Equal(rows.Length - 1, json.RootElement.GetProperty("fits").EnumerateArray().Sum(f => f.GetProperty("contacts").GetArrayLength()));
    }

    [Fact]
    public void Fits_WithSheet_WritesIt()
    {
        MemoryFiles files = Files();
        Assert.Equal(ExitCode.Done, CliRun.Of(files, [.. Fits, "--sheet", "--format", "svg", "--out", "drawn"]).Exit);
        Assert.Contains("drawn/middle.fits.svg", files.Names);
    }

    [Fact]
    public void Fits_WithoutThePin_SaysWhichIsMissing()
    {
        CliRun run = CliRun.Of(Files(), "fits", "profiles/levers/middle.toml", "profiles/planes/middle.toml");
        Assert.Equal(ExitCode.InputFaults, run.Exit);
        Assert.Contains("LD443", run.Error, StringComparison.Ordinal);
        Assert.Contains("TC-P-02", run.Error, StringComparison.Ordinal);
    }

    private static MemoryFiles Files()
    {
        MemoryFiles files = new();
        foreach (string path in SampleSet.All)
            files.With(path, RepositoryFile.Read(path));
        return files;
    }
}
