using System.Collections.Immutable;
using System.CommandLine;
using LeverDraw.Cli.Commands;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Pipeline;
using LeverDraw.Writers.Dxf;

namespace LeverDraw.Cli.Drawing;

/// <summary>The options of <c>draw</c>, and how their words become <see cref="DrawChoices"/>.</summary>
internal sealed class DrawOptions
{
    private const string All = "all", Usual = "finished,pin";

    private static readonly ImmutableArray<string> SheetNames = [.. ProfileKinds.All.SelectMany(k => k.SheetNames).Distinct()];

    private readonly Option<string> sheet = Arguments.Word("--sheet", "Sheets to draw, with commas between; a profile draws those its kind has; all: every one that its profile calls for", string.Join(',', SheetNames) + "|all", Usual);
    private readonly OutputOptions output = new();
    private readonly Option<string> style = Arguments.Word("--style", "Sizes on the drawing, or letters there and a table of sizes with a column for each profile; the first profile of a kind is drawn", "sizes|table", "sizes");
    private readonly Option<string> tolerances = Arguments.Word("--tolerances", "Sizes with a tolerance of their own: as stated, with deviations, or as two limits", "stated|deviations|limits", "stated");
    private readonly Option<string> dxf = Arguments.Word("--dxf", "The whole drawing, or only closed outlines for cutting", "full|outline", "full");

    public void AddTo(Command command)
    {
        command.Options.Add(sheet);
        output.AddTo(command);
        foreach (Option option in (Option[])[style, tolerances, dxf])
            command.Options.Add(option);
    }

    /// <summary>All choices, or every word that is none.</summary>
    public DrawChoices? Read(ParseResult parse, List<UsageFault> faults)
    {
        var words = new OptionWords(parse, faults);
        DrawChoices output = this.output.Read(words, words.One(dxf, ("full", DxfContent.Full), ("outline", DxfContent.OutlinesOnly)));
        ImmutableArray<string> sheets = words.Several(sheet, [.. SheetNames, All]);
        DrawChoices choices = output with
        {
            Sheets = sheets.Contains(All) ? [] : sheets,
            SheetsUnasked = words.IsUnasked(sheet),
            Sheet = output.Sheet with { Tolerances = words.One(tolerances, ("stated", ToleranceForm.Stated), ("deviations", ToleranceForm.Deviations), ("limits", ToleranceForm.Limits)) },
            Tabled = words.One(style, ("sizes", false), ("table", true)),
        };
        return faults.Count == 0 ? choices : null;
    }
}
