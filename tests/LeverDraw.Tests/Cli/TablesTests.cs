using System.Text.Json;
using System.Text.RegularExpressions;
using LeverDraw.Cli;
using LeverDraw.Lookups;

namespace LeverDraw.Tests.Cli;

public sealed partial class TablesTests
{
    private static readonly MemoryFiles NoFiles = new();

    public static TheoryData<string> Examples => [.. AllLookups.InOrder.Select(l => l.Example)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Tables_Example_AnswersAsTextAndAsJson(string example)
    {
        string[] words = ["tables", .. CommandWords.Split(example)];
        CliRun run = CliRun.Of(NoFiles, words);
        Assert.True(run.Exit == ExitCode.Done, run.Error);
        Assert.Contains("\n  [1] ", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain('\e', run.Out);
        Assert.All(run.Out.Split('\n'), line => Assert.Equal(line.TrimEnd(), line));

        using JsonDocument json = JsonDocument.Parse(CliRun.Of(NoFiles, [.. words, "--json"]).Out);
        JsonElement root = json.RootElement;
        Assert.True(root.GetProperty("ok").GetBoolean());
        Assert.Equal(words[1], root.GetProperty("lookup").GetString());
        int sources = root.GetProperty("sources").GetArrayLength();
        foreach (JsonElement value in root.GetProperty("values").EnumerateArray())
        {
            Assert.Contains(value.GetProperty("howSure").GetString(), (string[])["solid", "mixed", "thin", "from memory"]);
            Assert.All(value.GetProperty("sources").EnumerateArray(), s => Assert.InRange(s.GetInt32(), 0, sources - 1));
            Assert.Contains(value.GetProperty("text").GetString()!, run.Out, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Tables_Alone_ListsEveryLookupWithAnExample()
    {
        CliRun run = CliRun.Of(NoFiles, "tables");
        Assert.Equal(ExitCode.Done, run.Exit);
        Assert.All(AllLookups.InOrder, l => Assert.Contains("leverdraw tables " + l.Example + "\n", run.Out, StringComparison.Ordinal));
        using JsonDocument json = JsonDocument.Parse(CliRun.Of(NoFiles, "tables", "--json").Out);
        Assert.Equal(AllLookups.InOrder.Length, json.RootElement.GetArrayLength());
    }

    [Fact]
    public void Tables_OutOfRange_TellsTheRangeAndExitsWith1()
    {
        CliRun run = CliRun.Of(NoFiles, "tables", "zone", "600", "H8");
        Assert.Equal(ExitCode.InputFaults, run.Exit);
        Assert.Contains("error LD601: ", run.Error, StringComparison.Ordinal);
        Assert.Contains("over 0 mm up to 500 mm", run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Out);

        CliRun asJson = CliRun.Of(NoFiles, "tables", "zone", "600", "H8", "--json");
        Assert.Equal(ExitCode.InputFaults, asJson.Exit);
        using JsonDocument json = JsonDocument.Parse(asJson.Out);
        Assert.False(json.RootElement.GetProperty("ok").GetBoolean());
        Assert.Equal("LD601", json.RootElement.GetProperty("diagnostics")[0].GetProperty("code").GetString());
    }

    [Theory]
    [InlineData("tables fitt 3 H8/f7", "'tables' holds no look-up 'fitt'. Did you mean 'fit'?", "leverdraw tables --help")]
    [InlineData("tables fit 3", "'fit' needs FIT.", "leverdraw tables fit --help")]
    [InlineData("tables fit", "'fit' needs SIZE.", "leverdraw tables fit --help")]
    [InlineData("tables fit 3 H8/f7 more", "'fit' has no use for 'more'.", "leverdraw tables fit --help")]
    [InlineData("tables taper-pin 3/0 --lenght 20", "'taper-pin' has no option '--lenght'. Did you mean '--length'?", "leverdraw tables taper-pin --help")]
    [InlineData("tables --jsn", "'tables' has no option '--jsn'. Did you mean '--json'?", "leverdraw tables --help")]
    public void Tables_WrongUsage_TellsAndExitsWith2(string line, string told, string help)
    {
        CliRun run = CliRun.Of(NoFiles, line.Split(' '));
        Assert.Equal(ExitCode.WrongUsage, run.Exit);
        Assert.Contains(told, run.Error, StringComparison.Ordinal);
        Assert.Contains(help, run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Out);
    }

    // A size need not stand in quotes.
    [Theory]
    [InlineData("tables drill 0.109 in", "Drills about 2.7686 mm (0.1090 in)")]
    [InlineData("tables zone 1 3/16 in H8", "H8 (hole) on 30.1625 mm (1 3/16 in)")]
    [InlineData("tables zone 3/16 in H8", "H8 (hole) on 4.7625 mm (3/16 in)")]
    [InlineData("tables taper-pin 3/0 --length 1 1/4 in", "31.75 mm (1 1/4 in) long")]
    [InlineData("tables taper-pin 0 --length 3/4 in --json", "19.05 mm (3/4 in) long")]
    [InlineData("tables taper-pin 3 mm", "small end 3 mm")]
    [InlineData("tables contraction grey iron", "Contraction: grey iron")]
    public void Tables_WordsWithoutQuotes_AreJoined(string line, string title) =>
        Assert.Contains(title, CliRun.Of(NoFiles, line.Split(' ')).Out, StringComparison.Ordinal);

    [Fact]
    public void Tables_OnATerminal_ShowsSourcesFaint()
    {
        Surroundings terminal = new(new StringWriter(), new StringWriter(), NoFiles) { ColourOut = true };
        string colourless = Escape().Replace(CliRun.Of(terminal, ["tables", "zone", "3.06", "H8"]).Out, "");
        Assert.Equal(CliRun.Of(NoFiles, "tables", "zone", "3.06", "H8").Out, colourless);
        Assert.Contains('\e', terminal.Out.ToString()!);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Help_EveryLookup_EndsWithItsExample(string example)
    {
        CliRun run = CliRun.Of(NoFiles, "tables", example.Split(' ')[0], "--help");
        Assert.Equal(ExitCode.Done, run.Exit);
        Assert.EndsWith("Examples:\n  leverdraw tables " + example + "\n", run.Out, StringComparison.Ordinal);
    }

    [GeneratedRegex("\e\\[[0-9;]*m")]
    private static partial Regex Escape();
}
