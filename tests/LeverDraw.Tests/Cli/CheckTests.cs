using System.Text;
using System.Text.Json;
using LeverDraw.Cli;
using LeverDraw.Cli.Files;

namespace LeverDraw.Tests.Cli;

/// <summary>Input that is no profile: told with its place, never a stack trace.</summary>
public sealed class CheckTests
{
    // Not theory data themselves: the runner would write every byte into each test's name.
    private static readonly Dictionary<string, (byte[] Content, string Code)> Contents = new(StringComparer.Ordinal)
    {
        ["empty"] = ([], "LD204"),
        ["not UTF-8"] = ([.. "name = \""u8, 0xE9, .. "\"\n"u8], "LD105"),
        ["UTF-16"] = ([.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes("name = \"x\"\n")], "LD1"),
        ["NUL"] = ("name = \"a\0b\"\n"u8.ToArray(), "LD106"),
        ["noise"] = (Noise(50_000), "LD10"),
        ["too large"] = (Noise(10 << 20), "LD104"),
        ["deep nesting"] = (Encoding.UTF8.GetBytes("x = " + new string('[', 100_000)), "LD107"),
        ["deep tables"] = (Encoding.UTF8.GetBytes("[" + string.Join('.', Enumerable.Repeat("a", 20_000)) + "]\n"), "LD"),
        ["deep inline tables"] = (Encoding.UTF8.GetBytes("x = " + string.Concat(Enumerable.Repeat("{ x = ", 50_000))), "LD10"),
        ["one long line"] = (Encoding.UTF8.GetBytes("x = \"" + new string('a', 900_000)), "LD10"),
        ["syntax"] = ("kind = \"lever\nname"u8.ToArray(), "LD108"),
        ["unknown field"] = ("kind = \"lever\"\nname = \"x\"\nunits = \"mm\"\n[arms]\nthikness = 3\n"u8.ToArray(), "LD203"),
        ["its own child"] = ("extends = \"x.toml\"\n"u8.ToArray(), "LD111"),
    };

    public static TheoryData<string> NoProfiles => [.. Contents.Keys];

    [Theory]
    [MemberData(nameof(NoProfiles))]
    public void Check_NoProfile_TellsWhereAndExitsWith1(string what)
    {
        (byte[] content, string code) = Contents[what];
        MemoryFiles files = new MemoryFiles().With("x.toml", content);
        CliRun run = CliRun.Of(files, "check", "x.toml");
        Assert.True(run.Exit == ExitCode.InputFaults, what);
        Assert.Contains("error " + code, run.Out, StringComparison.Ordinal);
        Assert.StartsWith("x.toml", run.Out, StringComparison.Ordinal);
        Assert.True(run.Out.Length < 60_000, what);
        Assert.DoesNotContain(run.Out, c => char.IsControl(c) && c != '\n');

        CliRun drawn = CliRun.Of(files, "draw", "x.toml", "--out", "drawings");
        Assert.Equal(ExitCode.InputFaults, drawn.Exit);
        Assert.Contains("Nothing was written.", drawn.Error, StringComparison.Ordinal);
        Assert.Equal(["x.toml"], files.Names);
        Assert.Empty(files.Folders);
    }

    [Fact]
    public void Check_MissingAndFolder_AreToldTogether()
    {
        CliRun run = CliRun.Of(new MemoryFiles().WithFolder("profiles"), "check", "midle.toml", "profiles");
        Assert.Equal(ExitCode.InputFaults, run.Exit);
        Assert.Contains("LD101", run.Out, StringComparison.Ordinal);
        Assert.Contains("LD102", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_AsJson_GivesPlaceAndAdvice()
    {
        MemoryFiles files = new MemoryFiles().With("x.toml", "kind = \"lever\"\n[arms]\nthikness = 3\n");
        CliRun run = CliRun.Of(files, "check", "x.toml", "--json");
        using JsonDocument json = JsonDocument.Parse(run.Out);
        JsonElement file = json.RootElement.GetProperty("files")[0];
        Assert.False(json.RootElement.GetProperty("ok").GetBoolean());
        JsonElement unknown = file.GetProperty("diagnostics").EnumerateArray().Single(d => d.GetProperty("code").GetString() == "LD203");
        Assert.Equal(3, unknown.GetProperty("line").GetInt32());
        Assert.Equal(1, unknown.GetProperty("column").GetInt32());
        Assert.Contains("arms.thickness", unknown.GetProperty("suggestion").GetString()!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Check_Colour_OnlyWhereItIsWanted(bool colour)
    {
        Surroundings surroundings = new(new StringWriter(), new StringWriter(), new MemoryFiles()) { ColourOut = colour, ColourError = colour };
        Assert.Equal(colour, CliRun.Of(surroundings, ["check", "x.toml"]).Out.Contains('\e', StringComparison.Ordinal));
    }

    [Fact]
    public void Run_MistakeOfTheProgram_IsOneLineAndExitsWith3()
    {
        StringWriter error = new();
        int exit = CliHost.Run(["check", "x.toml"], new Surroundings(new BrokenWriter(), error, new MemoryFiles()));
        Assert.Equal(ExitCode.InternalFault, exit);
        Assert.StartsWith("leverdraw: internal fault", error.ToString(), StringComparison.Ordinal);
        Assert.Single(error.ToString().TrimEnd().Split('\n'));
    }

    private static byte[] Noise(int length)
    {
        byte[] bytes = new byte[length];
        uint state = 12345;
        for (int i = 0; i < length; i++)
            bytes[i] = (byte)((state = (state * 1664525) + 1013904223) >> 24);
        return bytes;
    }

    private sealed class BrokenWriter : StringWriter
    {
        public override void WriteLine(string? value) => throw new InvalidOperationException("first line\nsecond line");
    }
}
