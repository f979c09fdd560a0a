using System.Text;
using LeverDraw.Cli;
using LeverDraw.Tests.Cli;
using LeverDraw.Tests.Samples;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Specimens.Reconstruction;

/// <summary>The commands from a file of readings to a drawing.</summary>
public sealed class ReconstructCommandTests
{
    private const string Readings = "profiles/readings/survivors.csv";

    [Fact]
    public void ThreeCommands_ShippedReadings_IdentifyReconstructAndDraw()
    {
        MemoryFiles files = Files();
        Assert.Equal(ExitCode.Done, CliRun.Of(files, "identify", Readings).Exit);
        CliRun made = CliRun.Of(files, "reconstruct", Readings, "--without", "C:hole", "--out", "new.toml");
        Assert.True(made.Exit == ExitCode.Done, made.Error);
        Assert.Contains("new.toml: passes check", made.Out, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, CliRun.Of(files, "draw", "new.toml", "--format", "svg").Exit);
        Assert.Contains("new.finished.svg", files.Names);
    }

    [Fact]
    public void Reconstruct_OverAnInput_IsRefused()
    {
        MemoryFiles files = Files().With("r.toml", "[A]\n\"arms.thickness\" = \"3.6 mm\"\n");
        Assert.Equal(ExitCode.WrongUsage, CliRun.Of(files, "reconstruct", "r.toml", "--out", "./r.toml").Exit);
        Assert.Equal(ExitCode.WrongUsage, CliRun.Of(files, "reconstruct", "r.toml", "--out", "profiles/levers/middle.toml").Exit);
    }

    [Fact]
    public void Reconstruct_LittleRead_SaysWhatIsMissing_AndLikeFillsIt()
    {
        MemoryFiles files = Files().With("r.toml", "[A]\n\"arms.thickness\" = \"3.5 mm\"\n");
        CliRun bare = CliRun.Of(files, "reconstruct", "r.toml", "--out", "a.toml");
        Assert.Equal(ExitCode.InputFaults, bare.Exit);
        Assert.Contains("LD722: 'arms.length' was not read", bare.Error, StringComparison.Ordinal);
        Assert.Contains("LD723: 'a.toml' would not pass check", bare.Error, StringComparison.Ordinal);
        // Told once, and without a place in a file that is not there.
        Assert.DoesNotContain("LD204: 'arms.length'", bare.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("a.toml:", bare.Error, StringComparison.Ordinal);
        Assert.Contains("arms.thickness  3.5", bare.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("a.toml", files.Names);
        CliRun like = CliRun.Of(files, "reconstruct", "r.toml", "--like", "profiles/levers/middle.toml", "--out", "b.toml");
        Assert.Contains("b.toml: passes check", like.Out, StringComparison.Ordinal);
        Assert.Contains("extends = \"profiles/levers/middle.toml\"", Encoding.UTF8.GetString(files["b.toml"]), StringComparison.Ordinal);
    }

    [Fact]
    public void Reconstruct_MadeOfSizesThatMakeNoLever_IsNotWritten()
    {
        MemoryFiles files = Files().With("r.toml", "[A]\n\"fork.gap\" = \"24 mm\"\n\"fork.crotch_radius\" = \"14 mm\"\n\"arms.length\" = \"12 mm\"\n");
        CliRun run = CliRun.Of(files, "reconstruct", "r.toml", "--like", "profiles/levers/middle.toml", "--out", "b.toml", "--json");
        Assert.Equal(ExitCode.InputFaults, run.Exit);
        using var document = System.Text.Json.JsonDocument.Parse(run.Out);
        Assert.False(document.RootElement.GetProperty("ok").GetBoolean());
        Assert.Equal(System.Text.Json.JsonValueKind.Null, document.RootElement.GetProperty("written").ValueKind);
        Assert.DoesNotContain("b.toml", files.Names);
    }

    [Theory]
    [InlineData("--without", "c:hole")]
    [InlineData("--specimens", "D")]
    public void Reconstruct_UnknownSpecimen_IsToldNotPassedOver(string option, string value)
    {
        MemoryFiles files = Files();
        CliRun run = CliRun.Of(files, "reconstruct", Readings, option, value, "--out", "n.toml");
        Assert.Equal(ExitCode.WrongUsage, run.Exit);
        Assert.Contains("Its specimens: A, B, C.", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("n.toml", files.Names);
    }

    /// <summary>(24.65 − 24.41)/24.41 = 0.98 %; by hand, with the shipped readings' median over the arms.</summary>
    [Fact]
    public void Reconstruct_KnownPattern_TellsTheContraction() =>
        Assert.Contains("contraction by fork.outside: 0.98 %", CliRun.Of(Files(), "reconstruct", Readings, "--pattern", "fork.outside=24.65 mm", "--out", "n.toml").Out, StringComparison.Ordinal);

    [Theory]
    [InlineData("identify", Readings, "--json")]
    [InlineData("reconstruct", Readings, "--out", "j.toml", "--json")]
    [InlineData("readings", "fields", "--json")]
    public void Json_IsJson(params string[] args)
    {
        CliRun run = CliRun.Of(Files(), args);
        Assert.Equal(ExitCode.Done, run.Exit);
        using var document = System.Text.Json.JsonDocument.Parse(run.Out);
        Assert.True(document.RootElement.ValueKind is System.Text.Json.JsonValueKind.Object or System.Text.Json.JsonValueKind.Array);
    }

    [Fact]
    public void ReadingsNew_MakesTheForms_AndNeverOverwritesOne()
    {
        MemoryFiles files = Files();
        Assert.Equal(ExitCode.Done, CliRun.Of(files, "readings", "new", "--kind", "pin", "--format", "csv,toml,svg", "--out", "forms").Exit);
        Assert.Equal(["forms/pin.form.csv", "forms/pin.form.svg", "forms/pin.form.toml"], files.Names.Where(n => n.StartsWith("forms/", StringComparison.Ordinal)));
        Assert.Equal(ExitCode.WrongUsage, CliRun.Of(files, "readings", "new", "--kind", "pin", "--format", "csv", "--out", "forms").Exit);
    }

    private static MemoryFiles Files()
    {
        MemoryFiles files = new MemoryFiles().With(Readings, RepositoryFile.Read(Readings));
        foreach (string path in SampleSet.Profiles)
            files.With(path, RepositoryFile.Read(path));
        return files;
    }
}
