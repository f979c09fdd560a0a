using LeverDraw.Cli;
using LeverDraw.Cli.Files;

namespace LeverDraw.Tests.Cli;

/// <summary>One run of the command line inside the test's process.</summary>
internal sealed record CliRun(int Exit, string Out, string Error)
{
    public static CliRun Of(IFileSystem files, params string[] args) => Of(new Surroundings(new StringWriter(), new StringWriter(), files), args);

    public static CliRun Of(Surroundings surroundings, string[] args, CancellationToken stop = default)
    {
        surroundings.Out.NewLine = surroundings.Error.NewLine = "\n";
        int exit = CliHost.Run(args, surroundings, stop);
        CliRun run = new(exit, surroundings.Out.ToString()!, surroundings.Error.ToString()!);
        // Whatever happens, a user never sees the inside of the program.
        Assert.DoesNotContain("   at ", run.Out + run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", run.Out + run.Error, StringComparison.Ordinal);
        return run;
    }
}
