using LeverDraw.Cli.Json;
using LeverDraw.Cli.Reporting;
using LeverDraw.Diagnostics;

namespace LeverDraw.Cli.Drawing;

/// <summary>From jobs to files: all of them drawn first, then all written or none.</summary>
internal static class SheetOutput
{
    /// <param name="told">Findings of the drawing are added here.</param>
    /// <returns>What was written; null when a sheet could not be laid out.</returns>
    public static IReadOnlyList<RenderedFile>? Write(Surroundings surroundings, IReadOnlyList<DrawJob> jobs, DrawChoices choices, List<Diagnostic> told, CancellationToken stop)
    {
        Progress progress = new(surroundings.Error, surroundings.ErrorIsTerminal, surroundings.Clock, jobs.Sum(j => j.Files.Count));
        IReadOnlyList<RenderedFile>? rendered = null;
        try
        {
            SheetRenderer renderer = new(progress, stop);
            Checked<Sheets> sheets = renderer.Compose(jobs);
            told.AddRange(sheets.Diagnostics);
            if (sheets.Ok)
                rendered = renderer.Render(jobs, sheets.Value, choices.DotsPerInch);
        }
        finally
        {
            progress.End();
        }

        if (rendered is not null)
            new OutputBatch(surroundings.Files, stop).Write(choices.Folder, rendered);
        return rendered;
    }

    public static WrittenShape Shape(RenderedFile file) => new(file.Path, file.Profile, file.Sheet, file.Format, file.Bytes.Length);
}
