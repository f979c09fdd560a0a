using System.CommandLine;

namespace LeverDraw.Cli.Commands;

/// <summary>A command whose help ends with examples.</summary>
internal sealed class ExampleCommand(string name, string description, params string[] examples) : Command(name, description)
{
    public IReadOnlyList<string> Examples => examples;
}
