using System.CommandLine;

namespace LeverDraw.Cli.Reporting;

/// <summary>Tells what is wrong with a command line, and where help is.</summary>
internal static class UsageReport
{
    /// <returns>The exit code.</returns>
    public static int Tell(Surroundings surroundings, IEnumerable<UsageFault> faults, Command command)
    {
        foreach (UsageFault fault in faults)
            surroundings.Error.WriteLine(Paint.Error("error: ", surroundings.ColourError) + fault.Message + " " + fault.NextStep);
        string name = command is RootCommand ? "leverdraw" : "leverdraw " + command.Name;
        surroundings.Error.WriteLine($"Help: {name} --help");
        return ExitCode.WrongUsage;
    }
}
