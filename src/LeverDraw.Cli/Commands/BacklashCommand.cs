using System.CommandLine;
using System.Globalization;
using LeverDraw.Cli.Drawing;
using LeverDraw.Cli.Json;
using LeverDraw.Cli.Mechanism;
using LeverDraw.Cli.Reporting;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Mechanism;
using LeverDraw.Mechanism.Setups;
using LeverDraw.Mechanism.Sheets;
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
        Option<bool> sheet = new("--sheet") { Description = "Draw the mechanism's sheet too" };
        OutputOptions output = new();
        PrintOptions print = new("Print the gaps as comma-separated values, in millimetres");
        ExampleCommand command = new(
            "backlash", "Tell how many turns of the nut are lost, where, and what cures it cheapest",
            "backlash profiles/setups/rattling.toml", "backlash profiles/setups/rattling.toml --target 0.8 --sheet --format pdf --out drawings")
        {
            file, target, draws, seed, spread, sheet,
        };
        output.AddTo(command);
        print.AddTo(command);
        command.SetAction(parse =>
        {
            List<UsageFault> faults = [];
            OptionWords words = new(parse, faults);
            double? wanted = parse.GetValue(target) is { Length: > 0 } text ? Number(text, faults) : null;
            BacklashQuestion question = new(
                words.Whole(draws, 2, (int)MostDraws), (ulong)words.Whole(seed, 0, int.MaxValue),
                words.One(spread, ("normal", SizeSpread.Normal), ("even", SizeSpread.Even)), wanted);
            PrintForm form = print.Read(parse, faults);
            DrawChoices choices = output.Read(words);
            return faults.Count > 0
                ? UsageReport.Tell(surroundings, faults, command)
                : Run(surroundings, command, parse.GetRequiredValue(file), question, form, choices, parse.GetValue(sheet), stop);
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

    private static int Run(Surroundings surroundings, Command command, string path, BacklashQuestion question, PrintForm form, DrawChoices choices, bool sheet, CancellationToken stop)
    {
        Checked<Profile> profile = new DrawingRoad(surroundings.Files, ProfileKinds.All).Read(path, SetupKind.Kind);
        Checked<Setup> setup = profile.Then(p => SetupReading.Build(p, surroundings.Files));
        List<Diagnostic> told = [.. setup.Diagnostics];
        if (!setup.Ok)
            return Print(null, []);
        if (!sheet)
            return Print(BacklashReport.Of(setup.Value, question), []);

        List<UsageFault> faults = [];
        IReadOnlyList<DrawJob> jobs = DrawPlan.Make(
            profile.Value!, new BuiltSheet(MechanismSheet.Kind, PartState.Assembly, options => Checked<SheetContent>.Good(MechanismSheet.Content(setup.Value, profile.Value!, options))), choices, surroundings.Files, faults);
        if (faults.Count > 0)
            return UsageReport.Tell(surroundings, faults, command);
        IReadOnlyList<RenderedFile>? written = SheetOutput.Write(surroundings, jobs, choices, told, stop);
        return Print(written is null ? null : BacklashReport.Of(setup.Value, question), written ?? []);

        int Print(BacklashReport? report, IReadOnlyList<RenderedFile> files) => new Answer(report is not null, told, files).Print(
            surroundings,
            form,
            to => ShapesJson.Print(to, BacklashShapes.Of(report, files, told), ShapesJson.Plain.BacklashShape),
            to => Csv(to, report!),
            to => new BacklashPrinter(to, report!, new LengthWords(choices.SheetFor(profile.Value!).Units), surroundings.ColourOut).Print());
    }

    private static void Csv(TextWriter to, BacklashReport report)
    {
        CsvText.Row(to, "gap", "typical_mm", "least_mm", "most_mm", "turns", "share", "turns_per_0.1_mm");
        foreach (GapShare g in report.Shares)
            CsvText.Row(to, g.Gap.Words(), g.Typical.Millimetres, g.Worst.Min.Millimetres, g.Worst.Max.Millimetres, g.Turns, g.Share, g.PerTenth);
    }
}
