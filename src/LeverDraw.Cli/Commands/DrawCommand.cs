using System.CommandLine;
using LeverDraw.Cli.Drawing;
using LeverDraw.Cli.Json;
using LeverDraw.Cli.Reporting;
using LeverDraw.Diagnostics;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Pipeline;

namespace LeverDraw.Cli.Commands;

/// <summary><c>draw FILE…</c>: the sheets of each profile, in each format; all of them or none.</summary>
internal static class DrawCommand
{
    public static Command Build(Surroundings surroundings, CancellationToken stop)
    {
        Argument<string[]> files = Arguments.FilesOrNone();
        DrawOptions options = new();
        FoundryOptions foundry = new();
        Option<bool> json = Arguments.Json();
        ExampleCommand command = new(
            "draw", "Draw the sheets of profiles as SVG, DXF, PDF and PNG",
            "draw profiles/levers/middle.toml profiles/pins/middle.toml --out drawings",
            "draw profiles/levers/early.toml --format dxf --dxf outline --units in",
            "draw profiles/levers/middle.toml --sheet casting,pattern --metal brass --process investment",
            "draw --sheet rule --metal brass --format pdf")
        {
            files,
        };
        options.AddTo(command);
        foundry.AddTo(command);
        command.Options.Add(json);
        command.SetAction(parse =>
        {
            List<UsageFault> faults = [];
            FoundryChoice choice = foundry.Read(parse, faults);
            string[] paths = parse.GetValue(files) ?? [];
            return options.Read(parse, faults) is { } choices && faults.Count == 0
                ? Run(surroundings, command, paths, choices, choice, parse.GetValue(json), stop)
                : UsageReport.Tell(surroundings, faults, command);
        });
        return command;
    }

    private static int Run(Surroundings surroundings, Command command, string[] paths, DrawChoices choices, FoundryChoice choice, bool json, CancellationToken stop)
    {
        List<Diagnostic> told = [];
        DrawingRoad road = new(surroundings.Files, ProfileKinds.All);
        if (NamedParts.Read(road, paths, told, choice.On) is not { } parts)
            return Report(surroundings, told, null, json);

        List<UsageFault> faults = [];
        IReadOnlyList<DrawJob> jobs = paths.Length == 0 ? RulePlan.Make(choices, choice, faults) : DrawPlan.Make(parts, choices, surroundings.Files, faults);
        if (faults.Count > 0)
            return UsageReport.Tell(surroundings, faults, command);

        IReadOnlyList<RenderedFile>? rendered = SheetOutput.Write(surroundings, jobs, choices, told, stop);
        return Report(surroundings, told, rendered, json);
    }

    private static int Report(Surroundings surroundings, List<Diagnostic> told, IReadOnlyList<RenderedFile>? written, bool json)
    {
        if (json)
        {
            DrawShape shape = new(
                written is not null,
                [.. (written ?? []).Select(SheetOutput.Shape)],
                [.. told.Distinct().Select(ShapesJson.Of)]);
            ShapesJson.Print(surroundings.Out, shape, ShapesJson.Plain.DrawShape);
        }
        else
        {
            new DiagnosticPrinter(surroundings.Files, surroundings.Error, surroundings.ColourError).Print(told.Distinct());
            foreach (RenderedFile file in written ?? [])
                surroundings.Out.WriteLine(file.Path);
            if (written is null)
                surroundings.Error.WriteLine("Nothing was written.");
        }

        return written is null ? ExitCode.InputFaults : ExitCode.Done;
    }
}
