using System.CommandLine;
using LeverDraw.Cli.Drawing;
using LeverDraw.Cli.Json;
using LeverDraw.Cli.Mechanism;
using LeverDraw.Cli.Reporting;
using LeverDraw.Diagnostics;
using LeverDraw.Mechanism.Fitting;

namespace LeverDraw.Cli.Commands;

/// <summary><c>fits FILE…</c>: every lever, on its pin, against every plane.</summary>
internal static class FitsCommand
{
    public static Command Build(Surroundings surroundings)
    {
        Argument<string[]> files = new("FILE") { Description = "Profiles (.toml) of levers, their pins, and planes, in any order", Arity = ArgumentArity.OneOrMore };
        Option<bool> all = new("--contacts") { Description = "Every contact's clearance, also where all is good" };
        Option<bool> csv = new("--csv") { Description = "Print every contact as comma-separated values" };
        Option<bool> json = Arguments.Json();
        ExampleCommand command = new(
            "fits", "Tell which lever goes into which plane, how loosely, why not, and what would make it go",
            "fits profiles/levers/middle.toml profiles/pins/middle.toml profiles/planes/middle.toml profiles/planes/early.toml")
        {
            files, all, csv, json,
        };
        command.SetAction(parse =>
        {
            bool asCsv = parse.GetValue(csv), asJson = parse.GetValue(json);
            return asCsv && asJson
                ? UsageReport.Tell(surroundings, [new UsageFault("--csv and --json ask for two things at once.", "Take one of them.")], command)
                : Run(surroundings, command, parse.GetRequiredValue(files), parse.GetValue(all), asJson, asCsv);
        });
        return command;
    }

    private static int Run(Surroundings surroundings, Command command, string[] paths, bool contacts, bool json, bool csv)
    {
        Checked<FitReading.Parts> parts = FitReading.Read(paths, surroundings.Files);
        if (parts.Ok && FitReading.Missing(parts.Value).ToArray() is { Length: > 0 } missing)
            return UsageReport.Tell(surroundings, missing, command);
        FitMatrix? matrix = parts.Ok ? FitMatrix.Of(parts.Value.Levers, parts.Value.Planes) : null;
        if (json)
        {
            ShapesJson.Print(
                surroundings.Out, new FitsShape(parts.Ok, matrix is null ? [] : [.. matrix.Fits.Select(f => FitShapes.Of(matrix, f))], [], [.. parts.Diagnostics.Select(ShapesJson.Of)]), ShapesJson.Plain.FitsShape);
        }
        else
        {
            new DiagnosticPrinter(surroundings.Files, surroundings.Error, surroundings.ColourError).Print(parts.Diagnostics);
            if (matrix is not null && csv)
                Csv(surroundings.Out, matrix);
            else if (matrix is not null)
                FitPrinter.Print(surroundings.Out, matrix, contacts, surroundings.ColourOut);
        }

        return parts.Ok ? ExitCode.Done : ExitCode.InputFaults;
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
