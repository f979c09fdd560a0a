using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace LeverDraw.Cli.Commands;

/// <summary>The library's help, then the command's examples.</summary>
internal sealed class HelpWithExamples(HelpAction usual, Func<Command, IEnumerable<string>> examplesOf) : SynchronousCommandLineAction
{
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        usual.Invoke(parseResult);
        TextWriter to = parseResult.InvocationConfiguration.Output;
        to.WriteLine("Examples:");
        foreach (string example in examplesOf(parseResult.CommandResult.Command))
            to.WriteLine("  leverdraw " + example);
        return ExitCode.Done;
    }
}
