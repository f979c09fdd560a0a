using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Cli.Files;
using LeverDraw.Cli.Reporting;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Pipeline;
using LeverDraw.Units;

namespace LeverDraw.Cli.Drawing;

/// <summary>Draws all sheets into memory, so that nothing is written before everything is known to be good.</summary>
internal sealed class SheetRenderer(Progress progress, CancellationToken stop)
{
    /// <summary>Four bytes each; beyond this a picture would take more memory than a plain machine has to spare.</summary>
    private const double MostPixels = 250e6;

    /// <returns>The sheets with every finding on the way; bad when one of them could not be laid out.</returns>
    public Checked<Sheets> Compose(IReadOnlyList<DrawJob> jobs)
    {
        List<Diagnostic> told = [];
        List<PlotSheet> plots = [];
        for (int i = 0; i < jobs.Count; i++)
        {
            stop.ThrowIfCancellationRequested();
            progress.Step(i + 1, jobs[i].Profile + ", " + jobs[i].Sheet.Name);
            Checked<PlotSheet> plot = DrawingRoad.Sheet(jobs[i].Sheet, jobs[i].Options);
            SourcePosition where = SourcePosition.WholeFile(jobs[i].Profile);
            told.AddRange(plot.Diagnostics.Select(d => d.Position is null ? d with { Position = where } : d));
            if (plot.Ok)
                plots.Add(plot.Value);
        }

        return Checked<Sheets>.From(told, () => new Sheets([.. plots]));
    }

    public IReadOnlyList<RenderedFile> Render(IReadOnlyList<DrawJob> jobs, Sheets sheets, int dotsPerInch)
    {
        List<RenderedFile> rendered = [];
        foreach ((DrawJob job, PlotSheet plot) in jobs.Zip(sheets.Plots))
        {
            foreach (PlannedFile file in job.Files)
            {
                stop.ThrowIfCancellationRequested();
                progress.Step(rendered.Count + 1, file.Path);
                if (file.Writer.Format == "png")
                    CheckPixels(plot, dotsPerInch);
                using MemoryStream bytes = new();
                file.Writer.Write(plot, bytes);
                rendered.Add(new RenderedFile(file.Path, job.Profile, job.Sheet.Name, file.Writer.Format, bytes.ToArray()));
            }
        }

        return rendered;
    }

    private static void CheckPixels(PlotSheet plot, int dotsPerInch)
    {
        double perMillimetre = dotsPerInch / Length.MillimetresPerInch;
        double pixels = plot.Width * plot.Height * perMillimetre * perMillimetre;
        if (pixels <= MostPixels)
            return;
        int most = (int)(Math.Sqrt(MostPixels / (plot.Width * plot.Height)) * Length.MillimetresPerInch);
        throw new OutputException(string.Create(
            CultureInfo.InvariantCulture, $"A picture of this sheet at {dotsPerInch} dots per inch has {pixels / 1e6:0} million dots. Take --dpi {most} or less, or a smaller paper."));
    }
}

/// <summary>In the order of their jobs.</summary>
internal sealed record Sheets(ImmutableArray<PlotSheet> Plots);
