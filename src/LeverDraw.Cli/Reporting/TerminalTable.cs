using Spectre.Console;

namespace LeverDraw.Cli.Reporting;

/// <summary>A table for the terminal: columns as wide as they need to be, rules between heads and rows.</summary>
/// <param name="Heads">A head that begins with '&gt;' stands over numbers, set to the right.</param>
internal sealed record TerminalTable(IReadOnlyList<string> Heads, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    private const int Widest = 118;

    public void Write(TextWriter to, bool colour)
    {
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = colour ? AnsiSupport.Yes : AnsiSupport.No,
            ColorSystem = colour ? ColorSystemSupport.Standard : ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(to),
        });
        console.Profile.Width = Widest;
        console.Profile.Capabilities.Unicode = true;
        Table table = new Table().Border(TableBorder.Simple);
        foreach (string head in Heads)
        {
            bool number = head.StartsWith('>');
            TableColumn column = new(new Text(number ? head[1..] : head));
            table.AddColumn(number ? column.RightAligned() : column);
        }

        foreach (IReadOnlyList<string> row in Rows)
            table.AddRow(row.Select(cell => new Text(cell)));
        using StringWriter text = new();
        console.Profile.Out = new AnsiConsoleOutput(text);
        console.Write(table);
        // The table's own lines are padded to its width; nobody needs blanks at line ends.
        foreach (string line in text.ToString().ReplaceLineEndings("\n").Split('\n').Select(l => l.TrimEnd()).Where(l => l.Length > 0))
            to.WriteLine(line);
    }
}
