using System.CommandLine;
using LeverDraw.Cli.Commands;
using LeverDraw.Cli.Files;
using LeverDraw.Cli.Lookups;
using LeverDraw.Cli.Reporting;

namespace LeverDraw.Cli;

/// <summary>One run of the command line, in whatever surroundings. Never throws.</summary>
internal static class CliHost
{
    public static int Run(string[] args, Surroundings surroundings, CancellationToken stop = default)
    {
        try
        {
            args = LooseUnits.Join(args);
            RootCommand root = CommandTree.Build(surroundings, stop);
            ParseResult parse = root.Parse(args, CommandTree.Parsing);
            if (parse.Action is HelpWithExamples or VersionAction)
                return parse.Invoke(Invocation(surroundings));
            IReadOnlyList<UsageFault> faults = UnknownWords.Find(parse, args);
            if (faults.Count > 0)
                return UsageReport.Tell(surroundings, faults, parse.CommandResult.Command);
            return parse.Invoke(Invocation(surroundings));
        }
        catch (OperationCanceledException)
        {
            surroundings.Error.WriteLine("leverdraw: stopped; nothing was written.");
            return ExitCode.Stopped;
        }
        catch (OutputException e)
        {
            surroundings.Error.WriteLine(Paint.Error("error: ", surroundings.ColourError) + e.Message);
            return ExitCode.WrongUsage;
        }
#pragma warning disable CA1031 // The one place where a mistake of the program becomes a line for the user.
        catch (Exception e)
#pragma warning restore CA1031
        {
            return InternalFault(surroundings, e);
        }
    }

    private static InvocationConfiguration Invocation(Surroundings surroundings) => new()
    {
        Output = surroundings.Out,
        Error = surroundings.Error,
        EnableDefaultExceptionHandler = false,
    };

    private static int InternalFault(Surroundings surroundings, Exception e)
    {
        string message = e.Message.ReplaceLineEndings(" ");
        try
        {
            surroundings.Error.WriteLine(
                $"leverdraw: internal fault ({e.GetType().Name}: {message}). This is a mistake in LeverDraw, not in your file; please report it with the command and the profile.");
        }
        catch (IOException)
        {
            // Nobody is listening; the exit code still tells.
        }

        return ExitCode.InternalFault;
    }
}
