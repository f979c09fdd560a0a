using System.CommandLine;
using System.CommandLine.Help;

namespace LeverDraw.Cli.Commands;

/// <summary>All commands there are. A new one is a file in this folder, and a line here.</summary>
internal static class CommandTree
{
    private const int HelpWidth = 110;

    /// <summary>No response files and no bundled letters: a file may be called <c>@x</c>, and all options are words.</summary>
    public static ParserConfiguration Parsing { get; } = new() { EnablePosixBundling = false, ResponseFileTokenReplacer = null };

    public static RootCommand Build(Surroundings surroundings, CancellationToken stop)
    {
        RootCommand root = new("Draws adjusting levers and their pins for old iron-bodied planes, from one text file per variant.")
        {
            CheckCommand.Build(surroundings),
            DrawCommand.Build(surroundings, stop),
            RemouldCommand.Build(surroundings),
            CompareCommand.Build(surroundings, stop),
            FitsCommand.Build(surroundings, stop),
            BacklashCommand.Build(surroundings, stop),
            FieldsCommand.Build(surroundings),
            ExplainCommand.Build(surroundings),
            TablesCommand.Build(surroundings),
            ReadingsCommand.Build(surroundings, stop),
            IdentifyCommand.Build(surroundings),
            ReconstructCommand.Build(surroundings, stop),
        };
        root.Directives.Clear();
        foreach (VersionOption usual in root.Options.OfType<VersionOption>().ToList())
            root.Options.Remove(usual);
        root.Options.Add(new Option<bool>("--version") { Description = "Show the version", Action = new VersionAction(), Arity = ArgumentArity.Zero });
        HelpOption help = root.Options.OfType<HelpOption>().Single();
        if (help.Action is HelpAction usualHelp)
        {
            usualHelp.MaxWidth = HelpWidth;
            help.Action = new HelpWithExamples(usualHelp, ExamplesOf);
        }

        return root;
    }

    private static IEnumerable<string> ExamplesOf(Command command) => command switch
    {
        ExampleCommand one => one.Examples,
        _ => command.Subcommands.OfType<ExampleCommand>().Select(c => c.Examples[0]),
    };
}
