using LeverDraw.Cli.Drawing;
using LeverDraw.Cli.Files;
using LeverDraw.Comparison;
using LeverDraw.Comparison.Sheets;
using LeverDraw.Parts;

namespace LeverDraw.Cli.Comparing;

/// <summary>Into which files the overlay goes: <c>early-late.overlay.svg</c>.</summary>
internal static class ComparePlan
{
    public static DrawJob Job(LeverComparison comparison, CompareInput input, DrawChoices choices)
    {
        string name = OutputName.Stem(input.Paths[0]) + "-" + OutputName.Stem(input.Paths[1]);
        return DrawPlan.JobOf(name, OverlaySheet.Of(comparison), choices.SheetFor(comparison.A.Profile), choices) with { Profile = input.Paths[0] };
    }

    /// <summary>No file may take an input's place.</summary>
    public static void Check(DrawJob job, IEnumerable<BuiltPart> inputs, IFileSystem files, List<UsageFault> faults) =>
        DrawPlan.Check([job], new(inputs.SelectMany(p => p.Profile.Files).Select(files.Canonical), StringComparer.OrdinalIgnoreCase), files, faults);
}
