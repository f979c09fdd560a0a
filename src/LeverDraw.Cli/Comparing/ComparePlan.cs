using LeverDraw.Cli.Drawing;
using LeverDraw.Cli.Files;
using LeverDraw.Comparison;
using LeverDraw.Comparison.Sheets;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts;

namespace LeverDraw.Cli.Comparing;

/// <summary>Into which files the overlay goes: <c>early-late.overlay.svg</c>.</summary>
internal static class ComparePlan
{
    public static DrawJob Job(LeverComparison comparison, CompareInput input, CompareChoices choices)
    {
        SheetOptions options = choices.Sheet with { Units = choices.UnitsFor(comparison.A) };
        string name = OutputName.Stem(input.Paths[0]) + "-" + OutputName.Stem(input.Paths[1]);
        return new DrawJob(input.Paths[0], OverlaySheet.Of(comparison), options, [.. choices.Writers.Select(w => new PlannedFile(
            DrawPlan.Join(choices.Folder, OutputName.Of(name, OverlaySheet.Kind, w.Extension, options.FirstUnit, outlinesOnly: false)), w))]);
    }

    /// <summary>No file may take an input's place.</summary>
    public static void Check(DrawJob job, IEnumerable<BuiltPart> inputs, IFileSystem files, List<UsageFault> faults) =>
        DrawPlan.Check([job], new(inputs.SelectMany(p => p.Profile.Files).Select(files.Canonical), StringComparer.OrdinalIgnoreCase), files, faults);
}
