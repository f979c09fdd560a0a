using System.CommandLine;
using System.Globalization;
using System.Text;
using LeverDraw.Cli.Drawing;
using LeverDraw.Cli.Json;
using LeverDraw.Cli.Reporting;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts;
using LeverDraw.Specimens.Forms;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Writers;

namespace LeverDraw.Cli.Commands;

/// <summary><c>readings</c>: forms to measure survivors by, and what can be measured.</summary>
internal static class ReadingsCommand
{
    public static Command Build(Surroundings surroundings, CancellationToken stop) => new ExampleCommand(
        "readings", "Forms to measure worn survivors by, and what can be measured", "readings new --kind lever --out forms", "readings fields")
    {
        New(surroundings, stop), Fields(surroundings),
    };

    private static Command New(Surroundings surroundings, CancellationToken stop)
    {
        Option<string> kind = Arguments.Word("--kind", "Part to measure", "lever|pin", "lever");
        Option<string> format = Arguments.Word("--format", "A file to fill in (csv, toml) or a sheet for the bench, with commas between", "csv,toml,svg,dxf,pdf,png", "csv,pdf");
        Option<string> paper = Arguments.Word("--paper", "Sheet size", "A4|A3|letter|tabloid|auto", "A4");
        Option<string> folder = Arguments.Word("--out", "Folder for the files; made if missing", "DIR", ".");
        ExampleCommand command = new(
            "new", "Make an empty form: a file to fill in, and a sheet with numbers where to measure and blanks to write into",
            "readings new --kind lever --format csv,pdf --paper letter --out forms")
        {
            kind, format, paper, folder,
        };
        command.SetAction(parse =>
        {
            List<UsageFault> faults = [];
            OptionWords words = new(parse, faults);
            PartKind part = words.One(kind, [.. PartKinds.All.Select(k => (k.Name, k))]);
            IReadOnlyList<string> formats = words.Several(format, ["csv", "toml", .. DrawingWriters.All.Select(w => w.Format)]);
            SheetOptions options = new(words.One(paper, [("auto", null), .. Standards.Sheets.All.Select(s => (s.Name, (Standards.SheetFormat?)s))]));
            string to = words.Text(folder);
            return faults.Count > 0 ? UsageReport.Tell(surroundings, faults, command) : Make(surroundings, command, part, formats, options, to, stop);
        });
        return command;
    }

    private static int Make(Surroundings surroundings, Command command, PartKind kind, IReadOnlyList<string> formats, SheetOptions options, string folder, CancellationToken stop)
    {
        List<RenderedFile> files = [];
        string Place(string sheet, string extension) => folder == "." ? kind.Name + "." + sheet + "." + extension : Path.Combine(folder, kind.Name + "." + sheet + "." + extension);
        foreach (string format in formats.Where(f => f is "csv" or "toml"))
            files.Add(new RenderedFile(Place(FormSheet.Kind, format), kind.Name, FormSheet.Kind, format, new UTF8Encoding(false).GetBytes(format == "csv" ? FormText.Csv(kind) : FormText.Toml(kind))));
        IDrawingWriter[] writers = [.. DrawingWriters.All.Where(w => formats.Contains(w.Format))];
        if (writers.Length > 0)
        {
            DrawJob[] jobs = [.. FormSheet.Of(kind).Select(sheet => new DrawJob(kind.Name, sheet, options, [.. writers.Select(w => new PlannedFile(Place(sheet.Name, w.Extension == "dxf" ? "mm.dxf" : w.Extension), w))]))];
            List<Diagnostic> told = [];
            if (SheetOutput.Render(surroundings, jobs, OutputOptions.UsualDpi, told, stop) is not { } rendered)
            {
                new DiagnosticPrinter(surroundings.Files, surroundings.Error, surroundings.ColourError).Print(told);
                return ExitCode.InputFaults;
            }

            files.AddRange(rendered);
        }

        // A form that is there may be filled in already.
        UsageFault[] there = [.. files.Where(f => surroundings.Files.FileExists(f.Path)).Select(f => new UsageFault($"'{f.Path}' is there already.", "It may be filled in: remove it first, or take another folder with --out."))];
        if (there.Length > 0)
            return UsageReport.Tell(surroundings, there, command);
        new OutputBatch(surroundings.Files, stop).Write(folder, files);
        foreach (RenderedFile file in files)
            surroundings.Out.WriteLine(file.Path);
        return ExitCode.Done;
    }

    private static Command Fields(Surroundings surroundings)
    {
        Option<bool> json = Arguments.Json();
        ExampleCommand command = new("fields", "List what can be measured, which way it wears and where an unworn place may be found", "readings fields") { json };
        command.SetAction(parse =>
        {
            if (parse.GetValue(json))
            {
                ShapesJson.Print(surroundings.Out, [.. Measurands.All.Select(m => new MeasurandShape(m.Name, m.Part, Word(m.Kind), Word(m.Wear), m.Witness, m.Help))], ShapesJson.Plain.IReadOnlyListMeasurandShape);
                return ExitCode.Done;
            }

            foreach (string line in Columns.Of([.. Measurands.All.Select(m => (string[])[m.Name, m.Help + (m.Wear == WearSide.None ? "" : " Wears " + Word(m.Wear) + "; unworn: " + m.Witness + ".")])]))
                surroundings.Out.WriteLine(line);
            return ExitCode.Done;
        });
        return command;
    }

    private static string Word<T>(T value)
        where T : struct, Enum => value.ToString().ToLower(CultureInfo.InvariantCulture);
}
