using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using LeverDraw.Cli.Commands;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Standards;
using LeverDraw.Writers;
using LeverDraw.Writers.Dxf;
using LeverDraw.Writers.Png;

namespace LeverDraw.Cli.Drawing;

/// <summary>The options of every command that writes sheets: into which files, on what paper, in which units.</summary>
internal sealed class OutputOptions
{
    private const string All = "all", Auto = "auto";
    internal const int UsualDpi = 200;
    private const int LeastDpi = 30, MostDpi = 1200;

    private readonly Option<string> format = Arguments.Word("--format", "Formats, with commas between", "svg,dxf,pdf,png", string.Join(',', DrawingWriters.All.Select(w => w.Format)));
    private readonly Option<string> folder = Arguments.Word("--out", "Folder for the files; made if missing", "DIR", ".");
    private readonly Option<string> paper = Arguments.Word("--paper", "Sheet size", "A4|A3|A2|letter|tabloid|…|auto", Auto);
    private readonly Option<string> units = Arguments.Word("--units", "Units of the sizes shown (the second in square brackets); auto: as in the profile", "mm|in|mm-in|in-mm|auto", Auto);
    private readonly Option<string> projection = Arguments.Word("--projection", "Third or first angle", "third|first", "third");
    private readonly Option<string> scale = Arguments.Word("--scale", "A preferred scale, such as 5:1", "N:N|auto", Auto);
    private readonly Option<string> dxfVersion = Arguments.Word("--dxf-version", "DXF release; auto: 2000, or 2010 where a text needs it", "2000|2010|auto", Auto);
    private readonly Option<string> dpi = Arguments.Word("--dpi", "PNG resolution, dots per inch, 30 to 1200", "N", UsualDpi.ToString(CultureInfo.InvariantCulture));

    public void AddTo(Command command)
    {
        foreach (Option option in (Option[])[format, folder, paper, units, projection, scale, dxfVersion, dpi])
            command.Options.Add(option);
    }

    /// <summary>The choices, of all sheets there are; words that are none become faults.</summary>
    public DrawChoices Read(OptionWords words, DxfContent content = DxfContent.Full)
    {
        int resolution = words.Whole(dpi, LeastDpi, MostDpi);
        DxfOptions dxfOptions = new(words.One(dxfVersion, (Auto, DxfVersion.Automatic), ("2000", DxfVersion.R2000), ("2010", DxfVersion.R2010)), content);
        ImmutableArray<string> formats = words.Several(format, [.. DrawingWriters.All.Select(w => w.Format), All]);
        return new DrawChoices(
            [],
            [.. (formats.Contains(All) ? DrawingWriters.All.Select(w => w.Format) : formats).Select(f => WriterOf(f, dxfOptions, resolution))],
            words.Text(folder),
            new SheetOptions(
                words.One(paper, [(Auto, null), .. Standards.Sheets.All.Select(s => (s.Name, (SheetFormat?)s))]),
                words.One(scale, [(Auto, null), .. DrawingScales.All.Select(s => (s.Text, (DrawingScale?)s))]),
                Projection: words.One(projection, ("third", ProjectionMethod.ThirdAngle), ("first", ProjectionMethod.FirstAngle))),
            words.One<ShownUnits?>(
                units, (Auto, null), ("mm", ShownUnits.Millimetres), ("in", ShownUnits.Inches),
                ("mm-in", ShownUnits.MillimetresAndInches), ("in-mm", ShownUnits.InchesAndMillimetres)),
            content == DxfContent.OutlinesOnly,
            resolution);
    }

    private static IDrawingWriter WriterOf(string format, DxfOptions dxfOptions, int resolution) => format switch
    {
        "dxf" => new DxfWriter(dxfOptions),
        "png" => new PngWriter(new PngOptions(resolution)),
        _ => DrawingWriters.Find(format)!,
    };
}
