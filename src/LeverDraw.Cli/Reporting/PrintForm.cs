using System.CommandLine;
using LeverDraw.Cli.Commands;

namespace LeverDraw.Cli.Reporting;

/// <summary>What goes to standard output.</summary>
internal enum PrintForm
{
    Text,
    Csv,
    Json,
}

/// <summary><c>--csv</c> and <c>--json</c>, of which one may be taken.</summary>
/// <param name="csvHelp">What the table holds.</param>
internal sealed class PrintOptions(string csvHelp)
{
    private readonly Option<bool> csv = new("--csv") { Description = csvHelp };
    private readonly Option<bool> json = Arguments.Json();

    public void AddTo(Command command)
    {
        command.Options.Add(csv);
        command.Options.Add(json);
    }

    public PrintForm Read(ParseResult parse, List<UsageFault> faults)
    {
        bool asCsv = parse.GetValue(csv), asJson = parse.GetValue(json);
        if (asCsv && asJson)
            faults.Add(new UsageFault("--csv and --json ask for two things at once.", "Take one of them."));
        return asJson ? PrintForm.Json : asCsv ? PrintForm.Csv : PrintForm.Text;
    }
}
