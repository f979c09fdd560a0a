using System.Text.RegularExpressions;
using LeverDraw.Cli;
using LeverDraw.Lookups;
using LeverDraw.Tests.Cli;
using LeverDraw.Tests.Samples;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Architecture;

/// <summary>Every command and option the README shows works.</summary>
public sealed partial class ReadmeCommandTests
{
    private const string FromSource = "dotnet run --project src/LeverDraw.Cli -c Release -- ";

    public static TheoryData<string> Commands =>
        [.. CommandLine().Matches(RepositoryFile.Read("README.md")).Select(m => m.Groups[1].Value.Trim())];

    [Theory]
    [MemberData(nameof(Commands))]
    public void Command_Run_Succeeds(string line)
    {
        CliRun run = CliRun.Of(Shipped(line), CommandWords.Split(line));
        Assert.True(run.Exit == ExitCode.Done, run.Error);
    }

    /// <summary>The shipped inputs, and what an earlier command of the README has made for this one.</summary>
    private static MemoryFiles Shipped(string line)
    {
        const string Readings = "profiles/readings/survivors.csv", Made = "reconstructed.toml";
        MemoryFiles files = new MemoryFiles().With(Readings, RepositoryFile.Read(Readings));
        foreach (string path in SampleSet.All)
            files.With(path, RepositoryFile.Read(path));
        if (line.StartsWith("draw " + Made, StringComparison.Ordinal))
            CliRun.Of(files, "reconstruct", Readings, "--without", "C:hole", "--out", Made);
        return files;
    }

    [Fact]
    public void Readme_ShowsTheTwoCommandsInTheirOrder()
    {
        string readme = RepositoryFile.Read("README.md");
        int draw = readme.IndexOf(FromSource + "draw ", StringComparison.Ordinal), tests = readme.IndexOf("```sh\ntests/all\n", StringComparison.Ordinal);
        Assert.True(draw > 0 && tests > draw);
        Assert.True(Commands.Count > 5);
    }

    [Fact]
    public void Options_NamedInTheReadme_Exist()
    {
        string help = string.Concat(new[] { "check", "draw", "remould", "compare", "fits", "backlash", "fields", "explain", "tables", "identify", "reconstruct", "readings new" }.Select(c => CliRun.Of(new MemoryFiles(), [.. c.Split(' '), "--help"]).Out)
            .Concat(AllLookups.InOrder.Select(l => CliRun.Of(new MemoryFiles(), "tables", l.Name, "--help").Out)));
        string[] unknown = [.. Option().Matches(RepositoryFile.Read("README.md")).Select(m => m.Groups[1].Value).Distinct()
            .Where(o => o is not ("--project" or "--json") && !help.Contains(o + " ", StringComparison.Ordinal))];
        Assert.Empty(unknown);
    }

    /// <summary>What the README shows as printed is what is printed.</summary>
    [Theory]
    [MemberData(nameof(Shown))]
    public void Output_ShownInTheReadme_IsTheRealOne(string line, string shown) =>
        Assert.Equal(shown, CliRun.Of(Shipped(line), CommandWords.Split(line)).Out);

    public static TheoryData<string, string> Shown
    {
        get
        {
            TheoryData<string, string> all = [];
            foreach (Match match in Printed().Matches(RepositoryFile.Read("README.md")))
                all.Add(match.Groups[1].Value, match.Groups[2].Value);
            return all;
        }
    }

    [Fact]
    public void ProfileExample_IsGood()
    {
        string readme = RepositoryFile.Read("README.md");
        int from = readme.IndexOf("```toml\n", StringComparison.Ordinal) + "```toml\n".Length;
        MemoryFiles files = new MemoryFiles().With("profiles/levers/mine.toml", readme[from..readme.IndexOf("```", from, StringComparison.Ordinal)]);
        foreach (string path in SampleSet.All)
            files.With(path, RepositoryFile.Read(path));
        CliRun run = CliRun.Of(files, "draw", "profiles/levers/mine.toml", "--format", "svg");
        Assert.True(run.Exit == ExitCode.Done, run.Error);
    }

    [GeneratedRegex(@"(?m)^(?:dotnet run --project src/LeverDraw\.Cli -c Release -- |leverdraw )(.+)$")]
    private static partial Regex CommandLine();

    [GeneratedRegex(@"(?ms)^```text\n\$ leverdraw ([^\n]+)\n(.*?)^```$")]
    private static partial Regex Printed();

    [GeneratedRegex(@"(--[a-z][a-z-]*)")]
    private static partial Regex Option();
}
