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
        IReadOnlyList<RenderedFile>? rendered = Render(surroundings, jobs, choices.DotsPerInch, told, stop);
        if (rendered is not null)
            new OutputBatch(surroundings.Files, stop).Write(choices.Folder, rendered);
        return rendered;
    }

    /// <summary>The files in memory, for a command that has more to write beside them. Findings of the drawing are added to those told.</summary>
    /// <returns>Null when a sheet could not be laid out.</returns>
    public static IReadOnlyList<RenderedFile>? Render(Surroundings surroundings, IReadOnlyList<DrawJob> jobs, int dotsPerInch, List<Diagnostic> told, CancellationToken stop)
    {
        Progress progress = new(surroundings.Error, surroundings.ErrorIsTerminal, surroundings.Clock, jobs.Sum(j => j.Files.Count));
        try
        {
            SheetRenderer renderer = new(progress, stop);
            Checked<Sheets> sheets = renderer.Compose(jobs);
            told.AddRange(sheets.Diagnostics);
            return sheets.Ok ? renderer.Render(jobs, sheets.Value, dotsPerInch) : null;
        }
        finally
        {
            progress.End();
        }
    }

    public static WrittenShape Shape(RenderedFile file) => new(file.Path, file.Profile, file.Sheet, file.Format, file.Bytes.Length);
}
