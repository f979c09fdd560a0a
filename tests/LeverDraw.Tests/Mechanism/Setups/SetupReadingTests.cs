using LeverDraw.Cli;
using LeverDraw.Tests.Cli;
using LeverDraw.Tests.Samples;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Mechanism.Setups;

/// <summary>Setups and planes that are wrong are told, at the line that is.</summary>
public sealed class SetupReadingTests
{
    public static TheoryData<string> Shipped => [.. SampleSet.All.Where(p => p.Contains("/planes/", StringComparison.Ordinal) || p.Contains("/setups/", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Check_ShippedPlanesAndSetups_HaveNoFaults(string path)
    {
        CliRun run = CliRun.Of(Files(), "check", path);
        Assert.Equal(ExitCode.Done, run.Exit);
        // The thick iron is there to show the warning.
        if (!path.EndsWith("thick-iron.toml", StringComparison.Ordinal))
            Assert.EndsWith("no faults\n", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lever = \"../levers/middle.toml\"", "lever = \"/levers/middle.toml\"", "LD116")]
    [InlineData("lever = \"../levers/middle.toml\"", "lever = \"../pins/middle.toml\"", "LD117")]
    [InlineData("lever = \"../levers/middle.toml\"", "lever = \"../levers/midle.toml\"", "LD101")]
    [InlineData("lever = \"../levers/middle.toml\"", "lever = \"../levers/smallest.toml\"", "LD441")]
    [InlineData("[price]", "iron = 5.9\n[price]", "LD440")]
    [InlineData("[price]", "iron = 3.2\n[price]", "LD442")]
    [InlineData("[price]", "groove = 3.06\n[price]", "LD445")]
    [InlineData("size = 2.937", "size = 3.3", "LD444")]
    [InlineData("size = 4.075", "size = 5", "LD444")]
    [InlineData("turns = 1", "turns = \"one\"", "LD207")]
    [InlineData("turns = 1", "turns = 100", "LD212")]
    public void Check_FaultySetup_IsToldAtItsLine(string good, string bad, string code)
    {
        string text = RepositoryFile.Read("profiles/setups/rattling.toml").Replace(good, bad, StringComparison.Ordinal);
        CliRun run = CliRun.Of(Files().With("profiles/setups/bad.toml", text), "check", "profiles/setups/bad.toml");
        Assert.Contains(code, run.Out, StringComparison.Ordinal);
        Assert.Matches(@"profiles/setups/bad\.toml:\d+:\d+: ", run.Out);
    }

    /// <summary>By hand: a pin of 3.3 in a hole of 3.117. No lost turns are made up for parts that cannot be put together, and the line with the wrong size is shown.</summary>
    [Fact]
    public void Backlash_PinLargerThanItsHole_IsRefusedAtThePin()
    {
        string text = RepositoryFile.Read("profiles/setups/rattling.toml").Replace("pin = { size = 2.937", "pin = { size = 3.3", StringComparison.Ordinal);
        CliRun run = CliRun.Of(Files().With("profiles/setups/bad.toml", text), "backlash", "profiles/setups/bad.toml");
        Assert.Equal(ExitCode.InputFaults, run.Exit);
        int line = 1 + text[..text.IndexOf("pin = { size", StringComparison.Ordinal)].Count(c => c == '\n');
        Assert.Contains(FormattableString.Invariant($"bad.toml:{line}:"), run.Error, StringComparison.Ordinal);
        Assert.Contains("-0.223 mm to -0.143 mm", run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Out);
    }

    [Theory]
    [InlineData("flange_diameter = 13.5", "nut.flange_diameter")]
    [InlineData("travel = 25", "nut.travel")]
    public void Check_FaultyPlane_NamesTheFieldsAtOdds(string line, string field)
    {
        string text = RepositoryFile.Read("profiles/planes/early.toml").Replace("travel = 6.5", line, StringComparison.Ordinal);
        CliRun run = CliRun.Of(Files().With("profiles/planes/bad.toml", text), "check", "profiles/planes/bad.toml");
        Assert.Equal(ExitCode.InputFaults, run.Exit);
        Assert.Contains("LD301", run.Out, StringComparison.Ordinal);
        Assert.Contains("'" + field + "'", run.Out, StringComparison.Ordinal);
    }

    private static MemoryFiles Files()
    {
        MemoryFiles files = new();
        foreach (string path in SampleSet.All)
            files.With(path, RepositoryFile.Read(path));
        return files;
    }
}
