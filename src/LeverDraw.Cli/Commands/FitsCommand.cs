using System.CommandLine;
using LeverDraw.Cli.Drawing;
using LeverDraw.Cli.Json;
using LeverDraw.Cli.Mechanism;
using LeverDraw.Cli.Reporting;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Mechanism.Fitting;
using LeverDraw.Mechanism.Sheets;
using LeverDraw.Parts;
using LeverDraw.Profiles;

namespace LeverDraw.Cli.Commands;

/// <summary><c>fits FILE…</c>: every lever, on its pin, against every plane.</summary>
internal static class FitsCommand
{
    public static Command Build(Surroundings surroundings, CancellationToken stop)
    {
        Argument<string[]> files = new("FILE") { Description = "Profiles (.toml) of levers, their pins, and planes, in any order", Arity = ArgumentArity.OneOrMore };
        Option<bool> all = new("--contacts") { Description = "Every contact's clearance, also where all is good" };
        Option<bool> csv = new("--csv") { Description = "Print every contact as comma-separated values" };
        Option<bool> sheet = new("--sheet") { Description = "Draw the table as a sheet too, with the first lever in the first plane; the options of 'draw' hold" };
        Option<bool> json = Arguments.Json();
        DrawOptions drawing = new();
        ExampleCommand command = new(
            "fits", "Tell which lever goes into which plane, how loosely, why not, and what would make it go",
            "fits profiles/levers/middle.toml profiles/pins/middle.toml profiles/planes/middle.toml profiles/planes/early.toml")
        {
            files, all, csv, json, sheet,
        };
        drawing.AddTo(command, sheets: false);
        command.SetAction(parse =>
        {
            List<UsageFault> faults = [];
            bool asCsv = parse.GetValue(csv), asJson = parse.GetValue(json);
            if (asCsv && asJson)
                faults.Add(new UsageFault("--csv and --json ask for two things at once.", "Take one of them."));
            DrawChoices? choices = drawing.Read(parse, faults);
            return choices is null || faults.Count > 0
                ? UsageReport.Tell(surroundings, faults, command)
                : Run(surroundings, command, parse.GetRequiredValue(files), parse.GetValue(all), parse.GetValue(sheet) ? choices : null, asJson, asCsv, stop);
        });
        return command;
    }

    private static int Run(Surroundings surroundings, Command command, string[] paths, bool contacts, DrawChoices? choices, bool json, bool csv, CancellationToken stop)
    {
        Checked<FitReading.Parts> parts = FitReading.Read(paths, surroundings.Files);
        if (parts.Ok && FitReading.Missing(parts.Value).ToArray() is { Length: > 0 } missing)
            return UsageReport.Tell(surroundings, missing, command);
        FitMatrix? matrix = parts.Ok ? FitMatrix.Of(parts.Value.Levers, parts.Value.Planes) : null;
        List<Diagnostic> told = [.. parts.Diagnostics];
        IReadOnlyList<RenderedFile>? written = [];
        if (matrix is not null && choices is not null)
        {
            (FittedLever lever, Profile profile) = parts.Value!.First;
            List<UsageFault> faults = [];
            IReadOnlyList<DrawJob> jobs = DrawPlan.Make(
                profile, new BuiltSheet(FitsSheet.Kind, PartState.Assembly, options => Checked<SheetContent>.Good(FitsSheet.Content(matrix, lever, parts.Value.Planes[0], profile, options))), choices, surroundings.Files, faults);
            if (faults.Count > 0)
                return UsageReport.Tell(surroundings, faults, command);
            written = SheetOutput.Write(surroundings, jobs, choices, told, stop);
        }

        bool ok = matrix is not null && written is not null;
        if (json)
        {
            ShapesJson.Print(
                surroundings.Out,
                new FitsShape(ok, matrix is null ? [] : [.. matrix.Fits.Select(f => FitShapes.Of(matrix, f))], [.. (written ?? []).Select(SheetOutput.Shape)], [.. told.Select(ShapesJson.Of)]),
                ShapesJson.Plain.FitsShape);
            return ok ? ExitCode.Done : ExitCode.InputFaults;
        }

        new DiagnosticPrinter(surroundings.Files, surroundings.Error, surroundings.ColourError).Print(told);
        if (matrix is not null && csv)
            Csv(surroundings.Out, matrix);
        else if (matrix is not null)
            FitPrinter.Print(surroundings.Out, matrix, contacts, surroundings.ColourOut);
        foreach (RenderedFile one in written ?? [])
            surroundings.Out.WriteLine(one.Path);
        return ok ? ExitCode.Done : ExitCode.InputFaults;
    }

    private static void Csv(TextWriter to, FitMatrix matrix)
    {
        CsvText.Row(to, "lever", "plane", "verdict", "turns_lost", "contact", "typical_mm", "least_mm", "most_mm", "state", "reason", "rework");
        foreach (LeverFit fit in matrix.Fits)
        {
            foreach (FitContact c in fit.Contacts)
                CsvText.Row(to, fit.Lever, fit.Plane, fit.Word, fit.Turns, c.Name, c.Typical.Millimetres, c.Worst.Min.Millimetres, c.Worst.Max.Millimetres, FitPrinter.State(c), c.Reason, c.Rework);
        }
    }
}
