using System.CommandLine;
using LeverDraw.Cli.Json;
using LeverDraw.Cli.Reporting;
using LeverDraw.Diagnostics;
using LeverDraw.Parts;
using LeverDraw.Pipeline;

namespace LeverDraw.Cli.Commands;

/// <summary><c>check FILE…</c>: every fault of the profiles, nothing drawn.</summary>
internal static class CheckCommand
{
    public static Command Build(Surroundings surroundings)
    {
        Argument<string[]> files = Arguments.Files();
        Option<bool> json = Arguments.Json();
        ExampleCommand command = new("check", "Read profiles and tell every fault, with its place and what to do", "check profiles/levers/middle.toml")
        {
            files, json,
        };
        command.SetAction(parse => Run(surroundings, parse.GetRequiredValue(files), parse.GetValue(json)));
        return command;
    }

    private static int Run(Surroundings surroundings, IEnumerable<string> files, bool json)
    {
        DrawingRoad road = new(surroundings.Files, ProfileKinds.All);
        (string File, Checked<BuiltPart> Part)[] read = [.. files.Select(f => (f, road.Part(f).Then(DimensioningFindings.Checked)))];
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
}
