using System.CommandLine;
using System.CommandLine.Invocation;

namespace LeverDraw.Cli.Commands;

/// <summary>The library's own would name the process that hosts it, which in tests is another.</summary>
internal sealed class VersionAction : SynchronousCommandLineAction
{
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        parseResult.InvocationConfiguration.Output.WriteLine("leverdraw " + typeof(VersionAction).Assembly.GetName().Version?.ToString(3));
        return ExitCode.Done;
    }
}
