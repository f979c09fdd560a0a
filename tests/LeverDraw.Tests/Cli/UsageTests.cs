using LeverDraw.Cli;

namespace LeverDraw.Tests.Cli;

public sealed class UsageTests
{
    [Theory]
    [InlineData("drwa", "There is no command 'drwa'. Did you mean 'draw'?")]
    [InlineData("draw x.toml --formt svg", "'draw' has no option '--formt'. Did you mean '--format'?")]
    [InlineData("draw x.toml --paper=A4 --formt=svg", "'draw' has no option '--formt'. Did you mean '--format'?")]
    [InlineData("check x.toml -v", "'check' has no option '-v'.")]
    [InlineData("draw x.toml --format sgv", "'sgv' is no value for --format. Did you mean 'svg'?")]
    [InlineData("draw x.toml --format svg,,pdf", "'' is no value for --format.")]
    [InlineData("draw x.toml --paper A8", "'A8' is no value for --paper. Did you mean 'A4'?")]
    [InlineData("draw x.toml --scale 3:1", "'3:1' is no value for --scale.")]
    [InlineData("draw x.toml --units cm", "'cm' is no value for --units.")]
    [InlineData("draw x.toml --dpi 1e3", "'1e3' is no value for --dpi. Take a whole number from 30 to 1200.")]
    [InlineData("draw x.toml --dpi 29", "'29' is no value for --dpi.")]
    [InlineData("draw x.toml --sheet finishd", "'finishd' is no value for --sheet. Did you mean 'finished'?")]
    [InlineData("draw", "'draw' needs FILE.")]
    [InlineData("draw x.toml --paper", "--paper")]
    [InlineData("draw x.toml --paper A4 --paper A3", "--paper")]
    [InlineData("fields leever", "There is no part kind 'leever'. Did you mean 'lever'?")]
    [InlineData("fields lever pin", "'fields' has no use for 'pin'.")]
    [InlineData("fields --schema", "--schema is of one part kind.")]
    [InlineData("explain LD20", "'LD20' is neither a diagnostic's code nor a field. Did you mean 'LD2")]
    [InlineData("explain arms.thikness", "Did you mean 'arms.thickness'?")]
    [InlineData("--versoin", "There is no option '--versoin'. Did you mean '--version'?")]
    [InlineData("", "Name a command.")]
    public void Run_WrongUsage_TellsAndExitsWith2(string line, string told)
    {
        CliRun run = CliRun.Of(new MemoryFiles(), line.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(ExitCode.WrongUsage, run.Exit);
        Assert.Contains(told, run.Error, StringComparison.Ordinal);
        Assert.Contains("--help", run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Out);
    }

    [Fact]
    public void Run_SeveralWrongWords_AllTold()
    {
        CliRun run = CliRun.Of(new MemoryFiles(), "draw", "x.toml", "--paper", "A8", "--units", "cm", "--dxf", "filled");
        Assert.Equal(3, run.Error.Split('\n').Count(l => l.StartsWith("error: ", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("--help")]
    [InlineData("check --help")]
    [InlineData("draw --help")]
    [InlineData("fields -h")]
    [InlineData("explain --help")]
    public void Help_EveryCommand_EndsWithAnExample(string line)
    {
        CliRun run = CliRun.Of(new MemoryFiles(), line.Split(' '));
        Assert.Equal(ExitCode.Done, run.Exit);
        Assert.Contains("Usage:", run.Out, StringComparison.Ordinal);
        Assert.Matches("Examples:\n(  leverdraw .+\n)+$", run.Out);
        Assert.Empty(run.Error);
    }

    [Fact]
    public void Version_IsTheToolsOwn() =>
        Assert.Matches(@"^leverdraw \d+\.\d+\.\d+\n$", CliRun.Of(new MemoryFiles(), "--version").Out);

    [Fact]
    public void Run_FileBeginningWithDashes_IsAFileAfterTwoDashes()
    {
        CliRun run = CliRun.Of(new MemoryFiles(), "check", "--", "--x.toml");
        Assert.Equal(ExitCode.InputFaults, run.Exit);
        Assert.Contains("LD101", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_FileBeginningWithAt_IsAFile() =>
        Assert.Contains("There is no file '@x'", CliRun.Of(new MemoryFiles(), "check", "@x").Out, StringComparison.Ordinal);
}
