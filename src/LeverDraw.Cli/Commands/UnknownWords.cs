using System.CommandLine;
using System.CommandLine.Parsing;

namespace LeverDraw.Cli.Commands;

/// <summary>What the parser could not place, in our words and with the nearest good one.</summary>
internal static class UnknownWords
{
    public static IReadOnlyList<UsageFault> Find(ParseResult parse, string[] args)
    {
        Command command = parse.CommandResult.Command;
        if (command is RootCommand)
            return [OfRoot(parse, command)];

        // An option that is not known looks like one more file to the parser.
        string[] afterDashes = [.. args.SkipWhile(a => a != "--").Skip(1)];
        List<UsageFault> faults = [];
        foreach (string word in Arguments(parse).Concat(parse.UnmatchedTokens).Distinct())
        {
            if (word is ['-', _, ..] && !afterDashes.Contains(word))
                faults.Add(UnknownOption(word, command));
            else if (command.Subcommands.Count > 0)
                faults.Add(new UsageFault(command.Name == "tables" ? $"'{command.Name}' holds no look-up '{word}'." : $"'{command.Name}' has no '{word}'.", Names.DidYouMean(word, command.Subcommands.Select(c => c.Name))));
            else if (parse.UnmatchedTokens.Contains(word))
                faults.Add(new UsageFault($"'{command.Name}' has no use for '{word}'.", "Take it away."));
        }

        if (faults.Count == 0)
            faults.AddRange(parse.Errors.Select(e => OfParser(e, command)));
        return faults;
    }

    private static UsageFault OfRoot(ParseResult parse, Command root)
    {
        string[] names = [.. root.Subcommands.Select(c => c.Name)];
        return parse.UnmatchedTokens switch
        {
            [['-', _, ..] option, ..] => UnknownOption(option, root),
            [var word, ..] => new UsageFault($"There is no command '{word}'.", Names.DidYouMean(word, names)),
            _ => new UsageFault("Name a command.", "The commands are " + string.Join(", ", names) + "."),
        };
    }

    private static IEnumerable<string> Arguments(ParseResult parse) => parse.CommandResult.Command.Arguments
        .Select(parse.GetResult).OfType<ArgumentResult>().SelectMany(a => a.Tokens).Select(t => t.Value);

    private static UsageFault UnknownOption(string word, Command command)
    {
        string name = word.Split('=', ':')[0];
        return new UsageFault(
            command is RootCommand ? $"There is no option '{name}'." : $"'{command.Name}' has no option '{name}'.",
            Names.DidYouMean(name, command.Options.Select(o => o.Name).Append("--help")));
    }

    private static UsageFault OfParser(ParseError error, Command command) => error.SymbolResult switch
    {
        CommandResult when command.Arguments.FirstOrDefault(a => a.Arity.MinimumNumberOfValues > 0) is { } argument =>
            new UsageFault($"'{command.Name}' needs {argument.Name}.", argument.Description + "."),
        ArgumentResult { Tokens.Count: 0 } empty => new UsageFault($"'{command.Name}' needs {empty.Argument.Name}.", empty.Argument.Description + "."),
        _ => new UsageFault(EndWithStop(error.Message), ""),
    };

    private static string EndWithStop(string text) => text.EndsWith('.') ? text : text + ".";
}
