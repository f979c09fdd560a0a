using System.CommandLine;
using System.Text;
using LeverDraw.Cli.Drawing;
using LeverDraw.Cli.Json;
using LeverDraw.Cli.Reporting;
using LeverDraw.Cli.Specimens;
using LeverDraw.Diagnostics;
using LeverDraw.Parts;
using LeverDraw.Pipeline;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Readings;
using LeverDraw.Specimens.Reconstruction;
using LeverDraw.Units;

namespace LeverDraw.Cli.Commands;

/// <summary><c>reconstruct READINGS --out NEW.toml</c>: a profile from worn survivors of one variant.</summary>
internal static class ReconstructCommand
{
    private sealed record Choices(string Readings, PartKind Kind, string[] Specimens, string Out, string Name, string? Like, (string Field, Length Size)? Pattern, bool Json)
    {
        public (string Specimen, string Feature)[] Without { get; init; } = [];
    }

    public static Command Build(Surroundings surroundings, CancellationToken stop)
    {
        Argument<string> readings = new("READINGS") { Description = "Readings of survivors of one variant (.csv or .toml)" };
        Option<string> kind = Arguments.Word("--kind", "Part to reconstruct", "lever|pin", "lever");
        Option<string[]> specimens = new("--specimens") { Description = "Specimens to use; all when left out", HelpName = "NAME", AllowMultipleArgumentsPerToken = true };
        Option<string[]> without = new("--without") { Description = "Features to leave out because they were altered", HelpName = "SPECIMEN:FEATURE", AllowMultipleArgumentsPerToken = true };
        Option<string> target = new("--out") { Description = "Profile to write", HelpName = "NEW.toml", Required = true };
        Option<string> name = Arguments.Word("--name", "The variant's name", "TEXT", "Reconstructed");
        Option<string?> like = new("--like") { Description = "Profile that gives what was not read", HelpName = "FILE" };
        Option<string?> pattern = new("--pattern") { Description = "A size of the pattern the survivors were cast from, to tell its contraction", HelpName = "FIELD=SIZE" };
        Option<bool> json = Arguments.Json();
        ExampleCommand command = new(
            "reconstruct", "Write a profile from worn survivors of one variant, each size with its 95 % interval",
            "reconstruct profiles/readings/survivors.csv --without C:hole --out reconstructed.toml")
        {
            readings, kind, specimens, without, target, name, like, pattern, json,
        };
        command.SetAction(parse =>
        {
            List<UsageFault> faults = [];
            PartKind chosen = new OptionWords(parse, faults).One(kind, [.. PartKinds.All.Select(k => (k.Name, k))]);
            (string, Length)? known = Pattern(parse.GetValue(pattern), faults);
            Choices choices = new(parse.GetRequiredValue(readings), chosen, parse.GetValue(specimens) ?? [], parse.GetRequiredValue(target), parse.GetValue(name)!, parse.GetValue(like), known, parse.GetValue(json))
            {
                Without = [.. (parse.GetValue(without) ?? []).Select(w => w.Split(':', 2)).Select(p => (p[0], p.Length > 1 ? p[1] : string.Empty))],
            };
            if (choices.Without.Any(w => !Measurands.All.Any(m => m.Feature == w.Feature)))
                faults.Add(new UsageFault("--without names no feature.", "Write a specimen and a feature, such as C:hole. The features: " + string.Join(", ", Measurands.All.Select(m => m.Feature).Distinct()) + "."));
            Check(choices, surroundings, faults);
            return faults.Count > 0 ? UsageReport.Tell(surroundings, faults, command) : Run(surroundings, command, choices, stop);
        });
        return command;
    }

    private static (string, Length)? Pattern(string? text, List<UsageFault> faults)
    {
        if (text is null)
            return null;
        string[] parts = text.Split('=', 2);
        if (parts.Length == 2 && LengthText.Parse(parts[1], LengthUnit.Millimetre) is { Ok: true } size && size.Value > Length.Zero)
            return (parts[0].Trim(), size.Value);
        faults.Add(new UsageFault($"'{text}' is no value for --pattern.", "Write a field and a size, such as fork.outside=\"24.65 mm\"."));
        return null;
    }

    private static void Check(Choices choices, Surroundings surroundings, List<UsageFault> faults)
    {
        string target = surroundings.Files.Canonical(choices.Out);
        if (new[] { choices.Readings, choices.Like }.OfType<string>().Any(p => string.Equals(surroundings.Files.Canonical(p), target, StringComparison.OrdinalIgnoreCase)))
            faults.Add(new UsageFault($"'{choices.Out}' is an input.", "An input is never overwritten: take another name with --out."));
        else if (surroundings.Files.FileExists(choices.Out))
            faults.Add(new UsageFault($"'{choices.Out}' is there already.", "Remove it first, or take another name with --out."));
        if (!choices.Out.EndsWith(".toml", StringComparison.OrdinalIgnoreCase))
            faults.Add(new UsageFault($"'{choices.Out}' does not end in .toml.", "A profile is a .toml file."));
    }

    private static int Run(Surroundings surroundings, Command command, Choices choices, CancellationToken stop)
    {
        Checked<ReadingSet> readings = ReadingsFile.Read(choices.Readings, surroundings.Files);
        List<Diagnostic> told = [.. readings.Diagnostics];
        Reconstruction? found = null;
        if (readings.Ok)
        {
            UsageFault[] unknown = [.. UnknownSpecimens(readings.Value.Specimens, choices)];
            if (unknown.Length > 0)
                return UsageReport.Tell(surroundings, unknown, command);
            Checked<Reconstruction> result = Reconstruct.Run(readings.Value, choices.Kind, [.. choices.Specimens], [.. choices.Without]);
            told.AddRange(choices.Like is null ? result.Diagnostics : result.Diagnostics.Where(d => d.Code != DiagnosticCatalogue.FieldNotRead.Code));
            found = result.Value;
        }

        if (found is null)
            return Report(surroundings, choices, null, false, told);
        byte[] bytes = new UTF8Encoding(false).GetBytes(ProfileWriting.Text(found, choices.Name, choices.Like is { } like ? Relative(choices.Out, like, surroundings) : null));
        Checked<BuiltPart> part = new DrawingRoad(new OverlaidFile(surroundings.Files, choices.Out, bytes), PartKinds.All).Part(choices.Out).Then(DimensioningFindings.Checked);
        if (!part.Ok)
        {
            told.AddRange(Unwritten(part.Diagnostics, found, choices));
            return Report(surroundings, choices, found, false, told);
        }

        told.AddRange(part.Diagnostics);
        new OutputBatch(surroundings.Files, stop).Write(Path.GetDirectoryName(choices.Out) is { Length: > 0 } folder ? folder : ".", [new RenderedFile(choices.Out, choices.Readings, "profile", "toml", bytes)]);
        return Report(surroundings, choices, found, part.Ok, told);
    }

    /// <summary>A misspelt name would silently leave nothing out, or everything.</summary>
    private static IEnumerable<UsageFault> UnknownSpecimens(IReadOnlyList<string> specimens, Choices choices)
    {
        foreach (string name in choices.Specimens.Concat(choices.Without.Select(w => w.Specimen)).Distinct().Except(specimens))
            yield return new UsageFault($"'{choices.Readings}' has no specimen '{name}'.", "Its specimens: " + string.Join(", ", specimens) + ".");
    }

    /// <summary>What <c>check</c> says of a profile that is not written: without places in it, and without the fields that are told as not read already.</summary>
    private static IEnumerable<Diagnostic> Unwritten(IEnumerable<Diagnostic> check, Reconstruction found, Choices choices)
    {
        foreach (Diagnostic fault in check.Where(d => d.Code != DiagnosticCatalogue.MissingField.Code || choices.Like is not null || !found.Missing.Any(f => f.Name == d.Field)))
            yield return fault.Position?.File == choices.Out ? fault with { Position = null } : fault;
        yield return DiagnosticCatalogue.ProfileIncomplete.At(SourcePosition.WholeFile(choices.Readings), null, choices.Out);
    }

    private static string Relative(string from, string to, Surroundings surroundings) =>
        Path.GetRelativePath(Path.GetDirectoryName(surroundings.Files.Canonical(from)) ?? "/", surroundings.Files.Canonical(to)).Replace('\\', '/');

    /// <param name="written">The profile passed check and stands there.</param>
    private static int Report(Surroundings surroundings, Choices choices, Reconstruction? found, bool written, List<Diagnostic> told)
    {
        ShownContraction? contraction = found is not null && choices.Pattern is { } pattern ? Reconstruct.Contraction(found, pattern.Field, pattern.Size) : null;
        int exit = written ? ExitCode.Done : ExitCode.InputFaults;
        if (choices.Json)
        {
            ShapesJson.Print(
                surroundings.Out,
                new ReconstructShape(
                    written, written ? choices.Out : null, [.. found?.Specimens ?? []], [.. (found?.Sizes ?? []).Select(ReconstructPrinter.Shape)],
                    [.. (found?.Forms ?? []).Select(f => new FormShape(f.Measurand.Name, f.Word, f.Agreeing, f.Specimens))], [.. (found?.Ties ?? []).Select(ReconstructPrinter.Shape)],
                    contraction is { } c ? new ContractionShape(c.Name, c.Rate, c.From, c.To) : null, [.. told.Select(ShapesJson.Of)]),
                ShapesJson.Plain.ReconstructShape);
            return exit;
        }

        new DiagnosticPrinter(surroundings.Files, surroundings.Error, surroundings.ColourError).Print(told);
        if (found is not null)
        {
            ReconstructPrinter.Text(found, contraction, surroundings.Out);
            if (choices.Pattern is { } asked && contraction is null)
                surroundings.Out.WriteLine($"no contraction: '{asked.Field}' was not reconstructed");
        }

        if (written)
            surroundings.Out.WriteLine(choices.Out + ": passes check");
        else
            surroundings.Error.WriteLine("Nothing was written.");
        return exit;
    }
}
