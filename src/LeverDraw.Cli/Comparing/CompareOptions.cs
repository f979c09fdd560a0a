using System.CommandLine;
using LeverDraw.Cli.Commands;
using LeverDraw.Cli.Drawing;
using LeverDraw.Cli.Reporting;
using LeverDraw.Comparison;

namespace LeverDraw.Cli.Comparing;

/// <summary>The options of <c>compare</c>, and how their words become <see cref="CompareChoices"/>.</summary>
internal sealed class CompareOptions
{
    private readonly Option<string> align = Arguments.Word("--align", "What is laid on each other", "pivot|pads|nose", "pivot");
    private readonly Option<bool> table = new("--table") { Description = "Print the table only, of two levers or more; draw nothing" };
    private readonly OutputOptions output = new();
    private readonly PrintOptions print = new("Print the table as CSV");

    public void AddTo(Command command)
    {
        command.Options.Add(align);
        command.Options.Add(table);
        output.AddTo(command);
        print.AddTo(command);
    }

    /// <summary>All choices, or every word that is none.</summary>
    public CompareChoices? Read(ParseResult parse, List<UsageFault> faults)
    {
        var words = new OptionWords(parse, faults);
        CompareChoices choices = new(
            words.One(align, ("pivot", Alignment.Pivot), ("pads", Alignment.Pads), ("nose", Alignment.Nose)),
            parse.GetValue(table),
            print.Read(parse, faults),
            output.Read(words));
        return faults.Count == 0 ? choices : null;
    }
}
