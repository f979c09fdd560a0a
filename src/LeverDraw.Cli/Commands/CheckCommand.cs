using System.CommandLine;
using LeverDraw.Cli.Drawing;
using LeverDraw.Cli.Json;
using LeverDraw.Cli.Reporting;
using LeverDraw.Diagnostics;
using LeverDraw.Parts;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Pipeline;

namespace LeverDraw.Cli.Commands;

/// <summary><c>check FILE…</c>: every fault of the profiles, nothing drawn.</summary>
internal static class CheckCommand
{
    public static Command Build(Surroundings surroundings)
    {
        Argument<string[]> files = Arguments.Files();
        Option<bool> json = Arguments.Json();
        FoundryOptions foundry = new();
        ExampleCommand command = new(
            "check", "Read profiles and tell every fault, with its place and what to do",
            "check profiles/levers/middle.toml",
            "check profiles/levers/late.toml --metal grey-iron --process green-sand")
        {
            files,
        };
        foundry.AddTo(command);
        command.Options.Add(json);
        command.SetAction(parse =>
        {
            List<UsageFault> faults = [];
            FoundryChoice choice = foundry.Read(parse, faults);
            return faults.Count > 0 ? UsageReport.Tell(surroundings, faults, command) : Run(surroundings, parse.GetRequiredValue(files), choice, parse.GetValue(json));
        });
        return command;
    }

    private static int Run(Surroundings surroundings, IEnumerable<string> files, FoundryChoice choice, bool json)
    {
        DrawingRoad road = new(surroundings.Files, ProfileKinds.All);
        (string File, Checked<BuiltPart> Part)[] read = [.. files.Select(f => (f, road.Part(f, choice.On).Then(DimensioningFindings.Checked).Then(TradeChecked)))];
        bool ok = read.All(r => r.Part.Ok);
        if (json)
        {
            CheckShape shape = new(ok, [.. read.Select(r => new CheckedFileShape(
                r.File, r.Part.Ok, r.Part.Value?.Kind.Name, r.Part.Value?.Profile.Name, [.. r.Part.Diagnostics.Select(ShapesJson.Of)]))]);
            ShapesJson.Print(surroundings.Out, shape, ShapesJson.Plain.CheckShape);
        }
        else
        {
            DiagnosticPrinter printer = new(surroundings.Files, surroundings.Out, surroundings.ColourOut);
            foreach ((string file, Checked<BuiltPart> part) in read)
            {
                printer.Print(part.Diagnostics);
                surroundings.Out.WriteLine(Summary.Of(file, part));
            }
        }

        return ok ? ExitCode.Done : ExitCode.InputFaults;
    }

    private static Checked<BuiltPart> TradeChecked(BuiltPart part) => Checked<BuiltPart>.From([.. part.Kind.TradeFindings(part.Profile)], () => part);
}
