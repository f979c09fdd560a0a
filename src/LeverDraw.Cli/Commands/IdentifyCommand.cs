using System.CommandLine;
using LeverDraw.Cli.Json;
using LeverDraw.Cli.Reporting;
using LeverDraw.Cli.Specimens;
using LeverDraw.Diagnostics;
using LeverDraw.Specimens.Identification;
using LeverDraw.Specimens.Readings;

namespace LeverDraw.Cli.Commands;

/// <summary><c>identify READINGS</c>: which variant each survivor is.</summary>
internal static class IdentifyCommand
{
    public static Command Build(Surroundings surroundings)
    {
        Argument<string> readings = new("READINGS") { Description = "Readings of survivors (.csv or .toml)" };
        Option<string[]> profiles = new("--profiles") { Description = "Folders and files of the variants to compare with", HelpName = "PATH", AllowMultipleArgumentsPerToken = true, DefaultValueFactory = _ => ["profiles"] };
        Option<bool> json = Arguments.Json();
        ExampleCommand command = new(
            "identify", "Tell which variant worn survivors are, how sure that is, and which further reading would tell most",
            "identify profiles/readings/survivors.csv")
        {
            readings, profiles, json,
        };
        command.SetAction(parse => Run(surroundings, parse.GetRequiredValue(readings), parse.GetValue(profiles)!, parse.GetValue(json)));
        return command;
    }

    private static int Run(Surroundings surroundings, string path, string[] places, bool json)
    {
        List<Diagnostic> told = [];
        Checked<ReadingSet> readings = ReadingsFile.Read(path, surroundings.Files);
        told.AddRange(readings.Diagnostics);
        Identification? found = null;
        if (readings.Ok)
        {
            Checked<Identification> result = Identify.Run(readings.Value, VariantFiles.Find(places, surroundings.Files, path, told), string.Join(", ", places));
            told.AddRange(result.Diagnostics);
            found = result.Value;
        }

        if (json)
        {
            ShapesJson.Print(
                surroundings.Out,
                new IdentifyShape(found is not null, [.. (found?.Parts ?? []).Select(IdentifyPrinter.Shape)], [.. (found?.Mixed ?? []).Select(m => new MixedShape(m.Specimen, m.Lever.Name, m.Pin.Name, m.Belongs, m.HoleFitsPin))], [.. told.Select(ShapesJson.Of)]),
                ShapesJson.Plain.IdentifyShape);
        }
        else
        {
            new DiagnosticPrinter(surroundings.Files, surroundings.Error, surroundings.ColourError).Print(told);
            if (found is not null)
                IdentifyPrinter.Text(found, surroundings.Out);
        }

        return found is null ? ExitCode.InputFaults : ExitCode.Done;
    }
}
