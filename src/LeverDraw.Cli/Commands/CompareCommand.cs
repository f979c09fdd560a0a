using System.Collections.Immutable;
using System.CommandLine;
using LeverDraw.Cli.Comparing;
using LeverDraw.Cli.Drawing;
using LeverDraw.Cli.Json;
using LeverDraw.Cli.Reporting;
using LeverDraw.Comparison;
using LeverDraw.Diagnostics;
using LeverDraw.Parts;
using LeverDraw.Pipeline;

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
            DrawingRoad road = new(surroundings.Files, PartKinds.All);
            List<(string Path, BuiltPart Part)> parts = [];
            foreach (string path in paths)
            {
                Checked<BuiltPart> part = road.Part(path);
                told.AddRange(part.Diagnostics);
                if (part.Ok)
                    parts.Add((path, part.Value));
            }

            if (parts.Count < paths.Length)
                return Report(null, null, null);
            List<UsageFault> faults = [];
            if (CompareInput.Of(parts, choices.TableOnly, faults) is not { } input)
                return UsageReport.Tell(surroundings, faults, command);
            if (choices.TableOnly)
                return Report(input, input.Variants is [{ } a, { } b] ? LeverComparison.Of(a, b, choices.Alignment) : null, []);

            LeverComparison comparison = LeverComparison.Of(input.Variants[0], input.Variants[1], choices.Alignment);
            DrawJob job = ComparePlan.Job(comparison, input, choices);
            ComparePlan.Check(job, parts.Select(p => p.Part), surroundings.Files, faults);
            return faults.Count > 0 ? UsageReport.Tell(surroundings, faults, command) : Report(input, comparison, Draw(job));
        }

        /// <summary>The files, all written, or null when the sheet could not be laid out.</summary>
        private IReadOnlyList<RenderedFile>? Draw(DrawJob job)
        {
            Progress progress = new(surroundings.Error, surroundings.ErrorIsTerminal, surroundings.Clock, job.Files.Count);
            IReadOnlyList<RenderedFile>? rendered = null;
            try
            {
                SheetRenderer renderer = new(progress, stop);
                Checked<Sheets> sheets = renderer.Compose([job]);
                told.AddRange(sheets.Diagnostics);
                if (sheets.Ok)
                    rendered = renderer.Render([job], sheets.Value, choices.DotsPerInch);
            }
            finally
            {
                progress.End();
            }

            if (rendered is not null)
                new OutputBatch(surroundings.Files, stop).Write(choices.Folder, rendered);
            return rendered;
        }

        private int Report(CompareInput? input, LeverComparison? two, IReadOnlyList<RenderedFile>? written)
        {
            bool ok = input is not null && written is not null;
            ImmutableArray<ComparedRow> sizes = ok ? VariantTable.Differences(input!.Variants) : [], figures = ok ? VariantTable.Figures(input!.Variants) : [];
            if (choices.Print == ComparePrint.Json)
            {
                ShapesJson.Print(surroundings.Out, CompareShapes.Of(ok ? input : null, sizes, figures, two, written, told), ShapesJson.Plain.CompareShape);
                return ok ? ExitCode.Done : ExitCode.InputFaults;
            }

            new DiagnosticPrinter(surroundings.Files, surroundings.Error, surroundings.ColourError).Print(told);
            if (!ok)
            {
                surroundings.Error.WriteLine("Nothing was written.");
                return ExitCode.InputFaults;
            }

            if (choices.Print == ComparePrint.Csv)
                CompareCsv.Print(surroundings.Out, input!, sizes, figures, two, choices.UnitFor(input!.Variants[0]));
            else
                new ComparePrinter(surroundings.Out, choices.UnitFor(input!.Variants[0]), surroundings.ColourOut).Print(input, sizes, figures, two);

            // With CSV, standard output is one table and nothing else.
            TextWriter list = choices.Print == ComparePrint.Csv ? surroundings.Error : surroundings.Out;
            if (written!.Count > 0 && choices.Print == ComparePrint.Text)
                list.WriteLine();
            foreach (RenderedFile file in written)
                list.WriteLine(file.Path);
            return ExitCode.Done;
        }
    }
}
