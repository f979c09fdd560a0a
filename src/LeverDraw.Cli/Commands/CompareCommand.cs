using System.CommandLine;
using LeverDraw.Cli.Comparing;
using LeverDraw.Cli.Drawing;
using LeverDraw.Cli.Json;
using LeverDraw.Cli.Reporting;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts;
using LeverDraw.Pipeline;
using LeverDraw.Units;

namespace LeverDraw.Cli.Commands;

/// <summary><c>compare A B</c>: where two levers differ, in words and as an overlay; <c>--table</c> for any number of them.</summary>
internal static class CompareCommand
{
    public static Command Build(Surroundings surroundings, CancellationToken stop)
    {
        Argument<string[]> files = new("FILE") { Description = "Two profiles of levers (.toml), and those of their pins if these are to be compared as well", Arity = ArgumentArity.OneOrMore };
        CompareOptions options = new();
        ExampleCommand command = new(
            "compare", "Lay two levers over each other and list all in which they differ",
            "compare profiles/levers/early.toml profiles/levers/late.toml --out drawings",
            "compare profiles/levers/early.toml profiles/levers/middle.toml profiles/levers/late.toml --table")
        {
            files,
        };
        options.AddTo(command);
        command.SetAction(parse =>
        {
            List<UsageFault> faults = [];
            return options.Read(parse, faults) is { } choices
                ? new Job(surroundings, command, choices, stop).Run(parse.GetRequiredValue(files))
                : UsageReport.Tell(surroundings, faults, command);
        });
        return command;
    }

    private sealed class Job(Surroundings surroundings, Command command, CompareChoices choices, CancellationToken stop)
    {
        private readonly List<Diagnostic> told = [];

        public int Run(string[] paths)
        {
            if (NamedParts.Read(new DrawingRoad(surroundings.Files, PartKinds.All), paths, told) is not { } parts)
                return Print(null, []);
            List<UsageFault> faults = [];
            if (CompareInput.Of(parts, choices.TableOnly, faults) is not { } input)
                return UsageReport.Tell(surroundings, faults, command);
            CompareResult result = CompareResult.Of(input, choices.Alignment);
            if (choices.TableOnly)
                return Print(result, []);

            DrawJob job = ComparePlan.Job(result.Two!, input, choices.Output);
            ComparePlan.Check(job, parts.Select(p => p.Part), surroundings.Files, faults);
            if (faults.Count > 0)
                return UsageReport.Tell(surroundings, faults, command);
            IReadOnlyList<RenderedFile>? written = SheetOutput.Write(surroundings, [job], choices.Output, told, stop);
            return Print(written is null ? null : result, written ?? []);
        }

        /// <param name="result">Null when a fault stood in its way.</param>
        private int Print(CompareResult? result, IReadOnlyList<RenderedFile> written) => new Answer(result is not null, told, written).Print(
            surroundings,
            choices.Print,
            to => ShapesJson.Print(to, CompareShapes.Of(result, written, told), ShapesJson.Plain.CompareShape),
            to => CompareCsv.Print(to, result!, UnitOf(result!)),
            to => new ComparePrinter(to, UnitOf(result!), surroundings.ColourOut).Print(result!));

        private LengthUnit UnitOf(CompareResult result) => choices.Output.SheetFor(result.Input.Variants[0].Profile).Units.First();
    }
}
