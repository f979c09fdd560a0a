using System.CommandLine;
using LeverDraw.Cli.Commands;
using LeverDraw.Cli.Json;
using LeverDraw.Cli.Reporting;
using LeverDraw.Diagnostics;
using LeverDraw.Lookups;

namespace LeverDraw.Cli.Lookups;

/// <summary>A look-up as a command below <c>tables</c>: its places and options come from the look-up itself.</summary>
internal static class LookupCommand
{
    public static Command Build(Surroundings surroundings, Lookup lookup)
    {
        ExampleCommand command = new(lookup.Name, lookup.Summary, "tables " + lookup.Example);
        Dictionary<LookupInput, Func<ParseResult, string?>> readers = [];
        foreach (LookupInput input in lookup.Inputs)
            readers.Add(input, input.IsOption ? AddOption(command, input) : AddPlace(command, input));
        Option<bool> json = Arguments.Json();
        command.Options.Add(json);
        command.SetAction(parse =>
        {
            Dictionary<string, string> given = new(StringComparer.Ordinal);
            foreach ((LookupInput input, Func<ParseResult, string?> read) in readers)
            {
                if (read(parse) is { } text)
                    given.Add(input.Name, text);
            }

            return Run(surroundings, lookup, new LookupRequest(given), parse.GetValue(json));
        });
        return command;
    }

    private static Func<ParseResult, string?> AddOption(Command command, LookupInput input)
    {
        Option<string?> option = new(input.Name) { Description = input.Help, HelpName = input.Name.TrimStart('-').ToUpperInvariant() };
        command.Options.Add(option);
        return parse => parse.GetValue(option);
    }

    private static Func<ParseResult, string?> AddPlace(Command command, LookupInput input)
    {
        if (!input.SeveralWords)
        {
            Argument<string?> place = new(input.Name)
            {
                Description = input.Help,
                Arity = input.Needed ? ArgumentArity.ExactlyOne : ArgumentArity.ZeroOrOne,
            };
            command.Arguments.Add(place);
            return parse => parse.GetValue(place);
        }

        Argument<string[]> words = new(input.Name)
        {
            Description = input.Help,
            Arity = input.Needed ? ArgumentArity.OneOrMore : ArgumentArity.ZeroOrMore,
        };
        command.Arguments.Add(words);
        return parse => parse.GetValue(words) is { Length: > 0 } all ? string.Join(' ', all) : null;
    }

    private static int Run(Surroundings surroundings, Lookup lookup, LookupRequest request, bool json)
    {
        Checked<LookupAnswer> answer = lookup.Find(request);
        if (json)
        {
            ShapesJson.Print(surroundings.Out, LookupShapes.Of(lookup, answer), ShapesJson.Plain.LookupShape);
        }
        else
        {
            new DiagnosticPrinter(surroundings.Files, surroundings.Error, surroundings.ColourError).Print(answer.Diagnostics);
            if (answer.Ok)
                LookupPrinter.Print(surroundings.Out, answer.Value, surroundings.ColourOut);
        }

        return answer.Ok ? ExitCode.Done : ExitCode.InputFaults;
    }
}
