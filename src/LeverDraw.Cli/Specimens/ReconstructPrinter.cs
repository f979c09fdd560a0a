using System.Globalization;
using LeverDraw.Cli.Json;
using LeverDraw.Cli.Reporting;
using LeverDraw.Specimens.Reconstruction;

namespace LeverDraw.Cli.Specimens;

/// <summary>What <c>reconstruct</c> found, as a table and as JSON.</summary>
internal static class ReconstructPrinter
{
    public static void Text(Reconstruction found, ShownContraction? contraction, TextWriter to)
    {
        string[][] rows = [.. found.Sizes.Select(s => (string[])[
            s.Estimate.Measurand.Name,
            ProfileWriting.Number(s.Estimate, s.Estimate.Value),
            ProfileWriting.Number(s.Estimate, s.Estimate.From) + " to " + ProfileWriting.Number(s.Estimate, s.Estimate.To),
            ProfileWriting.Likeliest(s.Estimate),
            ProfileWriting.Rule(s.Estimate),
            s.Estimate.Measurand.Kind == LeverDraw.Specimens.Measuring.ReadingKind.Size ? ProfileWriting.Sensible(s) : "degrees"])];
        string[] heads = ["size", "value", "95 % interval", "likeliest", "rule", "sensible sizes in it"];
        foreach (string line in Columns.Of([heads, .. rows]))
            to.WriteLine(line);
        foreach (SeenForm form in found.Forms)
            to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{form.Measurand.Name}: {form.Word} ({form.Agreeing} of {form.Specimens})"));
        foreach (TieGroup tie in found.Ties.Where(t => t.Freedom > 0))
        {
            to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"tied sizes of {tie.Specimen} {(tie.Agrees ? "agree" : "DISAGREE")}: chi-square {tie.ChiSquare:0.0}, limit {tie.Limit:0.0}"));
            foreach (TieResidual r in tie.Residuals)
                to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {r.Name}: {r.Read:0.000} to {r.Adjusted:0.000}, residual {r.Residual:+0.000;-0.000;0} ({r.Weighed:+0.0;-0.0;0} deviations)"));
        }

        if (contraction is { } shown)
            to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"contraction by {shown.Name}: {shown.Rate * 100:0.00} %, 95 %: {shown.From * 100:0.00} to {shown.To * 100:0.00} %"));
    }

    public static SurvivorSizeShape Shape(ReconstructedSize size) => new(
        size.Estimate.Measurand.Name, size.Estimate.Value, size.Estimate.From, size.Estimate.To, size.Estimate.Likeliest, ProfileWriting.Rule(size.Estimate), size.Estimate.Specimens, size.Estimate.Readings, [.. size.Sensible.Select(s => s.Name)]);

    public static TieShape Shape(TieGroup tie) => new(
        tie.Specimen, tie.Agrees, tie.ChiSquare, tie.Freedom, [.. tie.Residuals.Select(r => new ResidualShape(r.Name, r.Read, r.Adjusted, r.Residual, r.Weighed))]);
}
