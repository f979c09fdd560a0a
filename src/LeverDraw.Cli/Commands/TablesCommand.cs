using System.CommandLine;
using LeverDraw.Cli.Json;
using LeverDraw.Cli.Lookups;
using LeverDraw.Lookups;

namespace LeverDraw.Cli.Commands;

/// <summary><c>tables</c>: look-ups in the tables of standards and of the trade; alone it lists them.</summary>
internal static class TablesCommand
{
    public static Command Build(Surroundings surroundings)
    {
        Option<bool> json = Arguments.Json();
        ExampleCommand command = new(
            "tables", "Look up fits, tolerances, pins, drills and foundry figures, with their source and how sure it is",
            [.. AllLookups.InOrder.Select(l => "tables " + l.Example)])
        {
            json,
        };
        foreach (Lookup lookup in AllLookups.InOrder)
            command.Subcommands.Add(LookupCommand.Build(surroundings, lookup));
        command.SetAction(parse => List(surroundings.Out, parse.GetValue(json)));
        return command;
    }

    private static int List(TextWriter to, bool json)
    {
        if (json)
        {
            ShapesJson.Print(
                to, [.. AllLookups.InOrder.Select(l => new LookupNameShape(l.Name, l.Summary, "tables " + l.Example))], ShapesJson.Plain.IReadOnlyListLookupNameShape);
            return ExitCode.Done;
        }

        int width = AllLookups.InOrder.Max(l => l.Name.Length);
        foreach (Lookup lookup in AllLookups.InOrder)
        {
            to.WriteLine(lookup.Name.PadRight(width) + "  " + lookup.Summary);
            to.WriteLine(new string(' ', width) + "  leverdraw tables " + lookup.Example);
        }

        return ExitCode.Done;
    }
}
