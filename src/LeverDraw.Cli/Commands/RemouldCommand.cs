using System.CommandLine;
using LeverDraw.Cli.Drawing;
using LeverDraw.Cli.Json;
using LeverDraw.Cli.Remoulding;
using LeverDraw.Cli.Reporting;
using LeverDraw.Diagnostics;
using LeverDraw.Parts;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Cli.Commands;

/// <summary><c>remould FILE</c>: what comes out when an original lever is used as its own pattern, and what to pad.</summary>
internal static class RemouldCommand
{
    public static Command Build(Surroundings surroundings)
    {
        Argument<string> file = new("FILE") { Description = "Profile of the lever (.toml)" };
        Option<string> measured = Arguments.Word("--measured", "Sizes of the original itself, worn as it is, by field; the others are taken as finished", "FIELD=SIZE,…", "");
        Option<string> units = Arguments.Word("--units", "Unit of the table", "mm|in", "mm");
        FoundryOptions foundry = new();
        Option<bool> json = Arguments.Json();
        ExampleCommand command = new(
            "remould", "Tell what comes out when an original lever is moulded as its own pattern, and what to pad",
            "remould profiles/levers/middle.toml --metal brass --measured pads.thickness=2.8")
        {
            file, measured, units,
        };
        foundry.AddTo(command);
        command.Options.Add(json);
        command.SetAction(parse =>
        {
            List<UsageFault> faults = [];
            FoundryChoice choice = foundry.Read(parse, faults);
            IReadOnlyDictionary<string, Length> sizes = MeasuredSizes.Read(parse.GetValue(measured) ?? "", faults);
            bool inches = new OptionWords(parse, faults).One(units, ("mm", false), ("in", true));
            return faults.Count > 0
                ? UsageReport.Tell(surroundings, faults, command)
                : Run(surroundings, parse.GetRequiredValue(file), choice, sizes, inches, parse.GetValue(json));
        });
        return command;
    }

    private static int Run(Surroundings surroundings, string path, FoundryChoice choice, IReadOnlyDictionary<string, Length> measured, bool inches, bool json)
    {
        Checked<PatternLever> pattern = ProfileReader.Read(path, surroundings.Files, PartKinds.Fields)
            .Then(profile => profile.Kind == LeverFields.PartKind
                ? Checked<Profile>.Good(choice.On(profile))
                : Checked<Profile>.Bad([DiagnosticCatalogue.NotALever.At(SourcePosition.WholeFile(path), CommonFields.Kind.Name, profile.Kind)]))
            .Then(profile => LeverPart.Build(profile.Values).Then(lever => FoundryRoad.Casting(lever, profile)))
            .Then(casting => Checked<PatternLever>.Good(PatternLever.Of(casting)));
        if (json)
        {
            ShapesJson.Print(surroundings.Out, RemouldShapes.Of(path, pattern, measured), ShapesJson.Plain.RemouldShape);
        }
        else
        {
            new DiagnosticPrinter(surroundings.Files, surroundings.Error, surroundings.ColourError).Print(pattern.Diagnostics);
            if (pattern.Ok)
                RemouldPrinter.Print(surroundings.Out, path, pattern.Value, measured, inches);
        }

        return pattern.Ok ? ExitCode.Done : ExitCode.InputFaults;
    }
}
