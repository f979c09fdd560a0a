using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using LeverDraw.Cli.Commands;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Parts;
using LeverDraw.Pipeline;
using LeverDraw.Standards;
using LeverDraw.Writers;
using LeverDraw.Writers.Dxf;
using LeverDraw.Writers.Png;

namespace LeverDraw.Cli.Drawing;

/// <summary>The options of <c>draw</c>, and how their words become <see cref="DrawChoices"/>.</summary>
internal sealed class DrawOptions
{
    private const string All = "all", Usual = "finished,pin", Auto = "auto";
    internal const int LeastDpi = 30, MostDpi = 1200, UsualDpi = 200;

    private static readonly ImmutableArray<string> SheetNames = [.. ProfileKinds.All.SelectMany(k => k.SheetNames).Distinct()];

    private readonly Option<string> sheet = Arguments.Word("--sheet", "Sheets to draw, with commas between; a profile draws those its kind has; all: every one that its profile calls for", string.Join(',', SheetNames) + "|all", Usual);
    private readonly Option<string> format = Arguments.Word("--format", "Formats, with commas between", "svg,dxf,pdf,png", string.Join(',', DrawingWriters.All.Select(w => w.Format)));
    private readonly Option<string> folder = Arguments.Word("--out", "Folder for the files; made if missing", "DIR", ".");
    private readonly Option<string> paper = Arguments.Word("--paper", "Sheet size", "A4|A3|A2|letter|tabloid|…|auto", Auto);
    private readonly Option<string> units = Arguments.Word("--units", "Units of the sizes shown (the second in square brackets); auto: as in the profile", "mm|in|mm-in|in-mm|auto", Auto);
    private readonly Option<string> projection = Arguments.Word("--projection", "Third or first angle", "third|first", "third");
    private readonly Option<string> scale = Arguments.Word("--scale", "A preferred scale, such as 5:1", "N:N|auto", Auto);
    private readonly Option<string> style = Arguments.Word("--style", "Sizes on the drawing, or letters there and a table of sizes with a column for each profile; the first profile of a kind is drawn", "sizes|table", "sizes");
    private readonly Option<string> tolerances = Arguments.Word("--tolerances", "Sizes with a tolerance of their own: as stated, with deviations, or as two limits", "stated|deviations|limits", "stated");
    private readonly Option<string> dxf = Arguments.Word("--dxf", "The whole drawing, or only closed outlines for cutting", "full|outline", "full");
    private readonly Option<string> dxfVersion = Arguments.Word("--dxf-version", "DXF release; auto: 2000, or 2010 where a text needs it", "2000|2010|auto", Auto);
    private readonly Option<string> dpi = Arguments.Word("--dpi", "PNG resolution, dots per inch, 30 to 1200", "N", UsualDpi.ToString(CultureInfo.InvariantCulture));

    private bool choosesSheets;

    /// <param name="sheets">Whether the user says which sheets; a command that draws only one does not ask.</param>
    public void AddTo(Command command, bool sheets = true)
    {
        choosesSheets = sheets;
        if (sheets)
            command.Options.Add(sheet);
        foreach (Option option in (Option[])[format, folder, paper, units, projection, scale, style, tolerances, dxf, dxfVersion, dpi])
            command.Options.Add(option);
    }

    /// <summary>All choices, or every word that is none.</summary>
    public DrawChoices? Read(ParseResult parse, List<UsageFault> faults)
    {
        var words = new OptionWords(parse, faults);
        int resolution = words.Whole(dpi, LeastDpi, MostDpi);
        DxfOptions dxfOptions = new(
            words.One(dxfVersion, (Auto, DxfVersion.Automatic), ("2000", DxfVersion.R2000), ("2010", DxfVersion.R2010)),
            words.One(dxf, ("full", DxfContent.Full), ("outline", DxfContent.OutlinesOnly)));
        ImmutableArray<string> sheets = choosesSheets ? words.Several(sheet, [.. SheetNames, All]) : [];
        ImmutableArray<string> formats = words.Several(format, [.. DrawingWriters.All.Select(w => w.Format), All]);
        DrawChoices choices = new(
            sheets.Contains(All) ? [] : sheets,
            [.. (formats.Contains(All) ? DrawingWriters.All.Select(w => w.Format) : formats).Select(f => WriterOf(f, dxfOptions, resolution))],
            words.Text(folder),
            new SheetOptions(
                words.One(paper, [(Auto, null), .. Standards.Sheets.All.Select(s => (s.Name, (SheetFormat?)s))]),
                words.One(scale, [(Auto, null), .. DrawingScales.All.Select(s => (s.Text, (DrawingScale?)s))]),
                Projection: words.One(projection, ("third", ProjectionMethod.ThirdAngle), ("first", ProjectionMethod.FirstAngle)))
            {
                Tolerances = words.One(tolerances, ("stated", ToleranceForm.Stated), ("deviations", ToleranceForm.Deviations), ("limits", ToleranceForm.Limits)),
            },
            words.One<ShownUnits?>(
                units, (Auto, null), ("mm", ShownUnits.Millimetres), ("in", ShownUnits.Inches),
                ("mm-in", ShownUnits.MillimetresAndInches), ("in-mm", ShownUnits.InchesAndMillimetres)),
            dxfOptions.Content == DxfContent.OutlinesOnly,
            resolution,
            words.One(style, ("sizes", false), ("table", true)));
        return faults.Count == 0 ? choices : null;
    }

    private static IDrawingWriter WriterOf(string format, DxfOptions dxfOptions, int resolution) => format switch
    {
        "dxf" => new DxfWriter(dxfOptions),
        "png" => new PngWriter(new PngOptions(resolution)),
        _ => DrawingWriters.Find(format)!,
    };
}
