using System.CommandLine;

namespace LeverDraw.Cli.Commands;

/// <summary>Arguments and options several commands have.</summary>
internal static class Arguments
{
    public static Argument<string[]> Files() => new("FILE")
    {
        Description = "Profiles (.toml)",
        Arity = ArgumentArity.OneOrMore,
    };

    /// <summary>For a command that has something to do without a profile too.</summary>
    public static Argument<string[]> FilesOrNone() => new("FILE")
    {
        Description = "Profiles (.toml)",
        Arity = ArgumentArity.ZeroOrMore,
    };

    public static Option<bool> Json() => new("--json") { Description = "Print JSON for programs" };

    /// <summary>An option of one word or number, checked by the command itself.</summary>
    public static Option<string> Word(string name, string help, string values, string standing) => new(name)
    {
        Description = help,
        HelpName = values,
        DefaultValueFactory = _ => standing,
    };
}
