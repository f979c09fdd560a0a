using System.CommandLine;
using System.Globalization;
using LeverDraw.Cli.Drawing;
using LeverDraw.Cli.Json;
using LeverDraw.Cli.Mechanism;
using LeverDraw.Cli.Reporting;
using LeverDraw.Diagnostics;
using LeverDraw.Mechanism;
using LeverDraw.Mechanism.Setups;
using LeverDraw.Mechanism.Statistics;
using LeverDraw.Parts;
using LeverDraw.Pipeline;
using LeverDraw.Profiles;

namespace LeverDraw.Cli.Commands;

/// <summary><c>backlash SETUP</c>: lost motion, what each gap costs, what the tolerances allow, the cheapest cure.</summary>
internal static class BacklashCommand
{
    private const long MostDraws = 1_000_000_000;

    public static Command Build(Surroundings surroundings, CancellationToken stop)
    {
        Argument<string> file = new("SETUP") { Description = "A setup (.toml): which lever, pin and plane" };
        Option<string> target = Arguments.Word("--target", "Lost turns to come down to; the setup's own when left out", "TURNS", "");
        Option<string> draws = Arguments.Word("--draws", "Random draws of the sizes between their limits", "N", "1000000");
        Option<string> seed = Arguments.Word("--seed", "Seed of the draws: the same seed gives the same numbers", "N", "1");
        Option<string> spread = Arguments.Word("--spread", "How sizes lie between their limits", "normal|even", "normal");
        Option<bool> csv = new("--csv") { Description = "Print the gaps as comma-separated values" };
        Option<bool> sheet = new("--sheet") { Description = "Draw the mechanism's sheet too; the options of 'draw' hold" };
        Option<bool> json = Arguments.Json();
        DrawOptions drawing = new();
        ExampleCommand command = new(
            "backlash", "Tell how many turns of the nut are lost, where, and what cures it cheapest",
            "backlash profiles/setups/rattling.toml", "backlash profiles/setups/rattling.toml --target 0.8 --sheet --format pdf --out drawings")
        {
            file, target, draws, seed, spread, csv, json, sheet,
        };
        drawing.AddTo(command, sheets: false);
        command.SetAction(parse =>
        {
            List<UsageFault> faults = [];
            OptionWords words = new(parse, faults);
            double? wanted = parse.GetValue(target) is { Length: > 0 } text ? Number(text, faults) : null;
            BacklashQuestion question = new(
                words.Whole(draws, 2, (int)MostDraws), (ulong)words.Whole(seed, 0, int.MaxValue),
                words.One(spread, ("normal", SizeSpread.Normal), ("even", SizeSpread.Even)), wanted);
            bool asCsv = parse.GetValue(csv), asJson = parse.GetValue(json);
            if (asCsv && asJson)
                faults.Add(new UsageFault("--csv and --json ask for two things at once.", "Take one of them."));
            DrawChoices? choices = drawing.Read(parse, faults);
            return choices is null || faults.Count > 0
                ? UsageReport.Tell(surroundings, faults, command)
                : Run(surroundings, command, parse.GetRequiredValue(file), question, parse.GetValue(sheet) ? choices : null, asJson, asCsv, stop);
        });
        return command;
    }

    private static double? Number(string text, List<UsageFault> faults)
    {
        if (double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number) && number is >= 0.05 and <= 10)
            return number;
        faults.Add(new UsageFault($"'{text}' is no value for --target.", "Take a number of turns from 0.05 to 10."));
        return null;
    }

    private static int Run(Surroundings surroundings, Command command, string path, BacklashQuestion question, DrawChoices? choices, bool json, bool csv, CancellationToken stop)
    {
        DrawingRoad road = new(surroundings.Files, ProfileKinds.All);
        Checked<Setup> read = road.Read(path, SetupKind.Kind).Then(profile => SetupReading.Build(profile, surroundings.Files));
        List<Diagnostic> told = [.. read.Diagnostics];
        BacklashReport? report = read.Ok ? BacklashReport.Of(read.Value, question) : null;
        IReadOnlyList<RenderedFile>? written = [];
        if (report is not null && choices is not null)
        {
            BuiltPart part = road.Part(path).Value!;
            List<UsageFault> faults = [];
            IReadOnlyList<DrawJob> jobs = DrawPlan.Make([(path, part)], choices with { Sheets = [MechanismSheetName] }, surroundings.Files, faults);
            if (faults.Count > 0)
                return UsageReport.Tell(surroundings, faults, command);
            written = SheetOutput.Write(surroundings, jobs, choices, told, stop);
        }

        bool ok = report is not null && written is not null;
        if (json)
        {
            BacklashShape shape = new(
                ok, report is null ? null : BacklashShapes.Of(report), [.. (written ?? []).Select(SheetOutput.Shape)], [.. told.Select(ShapesJson.Of)]);
            ShapesJson.Print(surroundings.Out, shape, ShapesJson.Plain.BacklashShape);
            return ok ? ExitCode.Done : ExitCode.InputFaults;
        }

        new DiagnosticPrinter(surroundings.Files, surroundings.Error, surroundings.ColourError).Print(told);
        if (report is not null && csv)
            Csv(surroundings.Out, report);
        else if (report is not null)
            BacklashPrinter.Print(surroundings.Out, report, surroundings.ColourOut);
        foreach (RenderedFile one in written ?? [])
            surroundings.Out.WriteLine(one.Path);
        return ok ? ExitCode.Done : ExitCode.InputFaults;
    }

    private const string MechanismSheetName = "mechanism";

    private static void Csv(TextWriter to, BacklashReport report)
    {
        CsvText.Row(to, "gap", "typical_mm", "least_mm", "most_mm", "turns", "share", "turns_per_0.1_mm");
        foreach (GapShare g in report.Shares)
            CsvText.Row(to, g.Gap.Words(), g.Typical.Millimetres, g.Worst.Min.Millimetres, g.Worst.Max.Millimetres, g.Turns, g.Share, g.PerTenth);
    }
}
