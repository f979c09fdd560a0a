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
        surroundings.Error.WriteLine($"Help: {FullName(command)} --help");
        return ExitCode.WrongUsage;
    }

    private static string FullName(Command command) =>
        command is RootCommand || command.Parents.OfType<Command>().FirstOrDefault() is not { } parent ? "leverdraw" : FullName(parent) + " " + command.Name;
}
