using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using LeverDraw.Cli.Commands;
using LeverDraw.Cli.Drawing;
using LeverDraw.Comparison;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Standards;
using LeverDraw.Writers;
using LeverDraw.Writers.Dxf;
using LeverDraw.Writers.Png;

namespace LeverDraw.Cli.Comparing;

/// <summary>The options of <c>compare</c>, and how their words become <see cref="CompareChoices"/>.</summary>
internal sealed class CompareOptions
{
    private const string All = "all", Auto = "auto";

    private readonly Option<string> align = Arguments.Word("--align", "What is laid on each other", "pivot|pads|nose", "pivot");
    private readonly Option<bool> table = new("--table") { Description = "Print the table only, of two levers or more; draw nothing" };
    private readonly Option<bool> csv = new("--csv") { Description = "Print the table as CSV" };
    private readonly Option<bool> json = Arguments.Json();
    private readonly Option<string> format = Arguments.Word("--format", "Formats, with commas between", "svg,dxf,pdf,png", string.Join(',', DrawingWriters.All.Select(w => w.Format)));
    private readonly Option<string> folder = Arguments.Word("--out", "Folder for the files; made if missing", "DIR", ".");
    private readonly Option<string> paper = Arguments.Word("--paper", "Sheet size", "A4|A3|A2|letter|tabloid|…|auto", Auto);
    private readonly Option<string> units = Arguments.Word("--units", "Units of the sizes shown; auto: as in the first profile", "mm|in|mm-in|in-mm|auto", Auto);
    private readonly Option<string> projection = Arguments.Word("--projection", "Third or first angle", "third|first", "third");
    private readonly Option<string> scale = Arguments.Word("--scale", "A preferred scale, such as 5:1", "N:N|auto", Auto);
    private readonly Option<string> dpi = Arguments.Word("--dpi", "PNG resolution, dots per inch, 30 to 1200", "N", DrawOptions.UsualDpi.ToString(CultureInfo.InvariantCulture));

    public void AddTo(Command command)
    {
        foreach (Option option in (Option[])[align, table, format, folder, paper, units, projection, scale, dpi, csv, json])
            command.Options.Add(option);
    }

    /// <summary>All choices, or every word that is none.</summary>
    public CompareChoices? Read(ParseResult parse, List<UsageFault> faults)
    {
        var words = new OptionWords(parse, faults);
        ImmutableArray<string> formats = words.Several(format, [.. DrawingWriters.All.Select(w => w.Format), All]);
        int resolution = words.Whole(dpi, DrawOptions.LeastDpi, DrawOptions.MostDpi);
        if (parse.GetValue(csv) && parse.GetValue(json))
            faults.Add(new UsageFault("--csv and --json ask for two things at once.", "Take one of them."));
        CompareChoices choices = new(
            words.One(align, ("pivot", Alignment.Pivot), ("pads", Alignment.Pads), ("nose", Alignment.Nose)),
            parse.GetValue(table),
            parse.GetValue(csv) ? ComparePrint.Csv : parse.GetValue(json) ? ComparePrint.Json : ComparePrint.Text,
            [.. (formats.Contains(All) ? DrawingWriters.All.Select(w => w.Format) : formats).Select(f => WriterOf(f, resolution))],
            words.Text(folder),
            new SheetOptions(
                words.One(paper, [(Auto, null), .. Standards.Sheets.All.Select(s => (s.Name, (SheetFormat?)s))]),
                words.One(scale, [(Auto, null), .. DrawingScales.All.Select(s => (s.Text, (DrawingScale?)s))]),
                Projection: words.One(projection, ("third", ProjectionMethod.ThirdAngle), ("first", ProjectionMethod.FirstAngle))),
            words.One<ShownUnits?>(
                units, (Auto, null), ("mm", ShownUnits.Millimetres), ("in", ShownUnits.Inches),
                ("mm-in", ShownUnits.MillimetresAndInches), ("in-mm", ShownUnits.InchesAndMillimetres)),
            resolution);
        return faults.Count == 0 ? choices : null;
    }

    private static IDrawingWriter WriterOf(string format, int resolution) => format switch
    {
        "dxf" => new DxfWriter(new DxfOptions()),
        "png" => new PngWriter(new PngOptions(resolution)),
        _ => DrawingWriters.Find(format)!,
    };
}
