using System.CommandLine;
using LeverDraw.Cli.Drawing;
using LeverDraw.Cli.Json;
using LeverDraw.Cli.Mechanism;
using LeverDraw.Cli.Reporting;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Mechanism;
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
        Option<bool> sheet = new("--sheet") { Description = "Draw the table as a sheet too, with the first lever in the first plane" };
        OutputOptions output = new();
        PrintOptions print = new("Print every contact as comma-separated values, in millimetres");
        ExampleCommand command = new(
            "fits", "Tell which lever goes into which plane, how loosely, why not, and what would make it go",
            "fits profiles/levers/middle.toml profiles/pins/middle.toml profiles/planes/middle.toml profiles/planes/early.toml")
        {
            files, all, sheet,
        };
        output.AddTo(command);
        print.AddTo(command);
        command.SetAction(parse =>
        {
            List<UsageFault> faults = [];
            PrintForm form = print.Read(parse, faults);
            DrawChoices choices = output.Read(new OptionWords(parse, faults));
            return faults.Count > 0
                ? UsageReport.Tell(surroundings, faults, command)
                : Run(surroundings, command, parse.GetRequiredValue(files), parse.GetValue(all), form, choices, parse.GetValue(sheet), stop);
        });
        return command;
    }

    private static int Run(Surroundings surroundings, Command command, string[] paths, bool contacts, PrintForm form, DrawChoices choices, bool sheet, CancellationToken stop)
    {
        Checked<FitReading.Parts> read = FitReading.Read(paths, surroundings.Files);
        if (read.Ok && FitReading.Missing(read.Value).ToArray() is { Length: > 0 } missing)
            return UsageReport.Tell(surroundings, missing, command);
        List<Diagnostic> told = [.. read.Diagnostics];
        if (!read.Ok)
            return Print(null, [], default);

        FitReading.Parts parts = read.Value;
        (FittedLever lever, Profile profile) = parts.First;
        ShownUnits units = choices.SheetFor(profile).Units;
        FitMatrix matrix = FitMatrix.Of(parts.Levers, parts.Planes, units);
        if (!sheet)
            return Print(matrix, [], units);
        List<UsageFault> faults = [];
        IReadOnlyList<DrawJob> jobs = DrawPlan.Make(
            profile, new BuiltSheet(FitsSheet.Kind, PartState.Assembly, options => Checked<SheetContent>.Good(FitsSheet.Content(matrix, lever, parts.Planes[0], profile, options))), choices, surroundings.Files, faults);
        if (faults.Count > 0)
            return UsageReport.Tell(surroundings, faults, command);
        IReadOnlyList<RenderedFile>? written = SheetOutput.Write(surroundings, jobs, choices, told, stop);
        return Print(written is null ? null : matrix, written ?? [], units);

        int Print(FitMatrix? found, IReadOnlyList<RenderedFile> files, ShownUnits units) => new Answer(found is not null, told, files).Print(
            surroundings,
            form,
            to => ShapesJson.Print(to, FitShapes.Of(found, files, told), ShapesJson.Plain.FitsShape),
            to => Csv(to, found!),
            to => new FitPrinter(to, new LengthWords(units), surroundings.ColourOut).Print(found!, contacts));
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
