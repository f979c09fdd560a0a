using LeverDraw.Cli.Drawing;
using LeverDraw.Cli.Json;
using LeverDraw.Diagnostics;
using LeverDraw.Mechanism.Fitting;

namespace LeverDraw.Cli.Mechanism;

/// <summary>What <c>fits --json</c> prints; lengths in millimetres.</summary>
internal sealed record FitsShape(bool Ok, IReadOnlyList<FitShape> Fits, IReadOnlyList<WrittenShape> Written, IReadOnlyList<DiagnosticShape> Diagnostics);

/// <param name="Rework">Null when no rework makes it go; empty when none is needed.</param>
internal sealed record FitShape(
    string Lever, string Plane, string Verdict, double? TurnsLost, IReadOnlyList<string> Reasons, IReadOnlyList<string>? Rework, string? Alternative, IReadOnlyList<ContactShape> Contacts);

internal sealed record ContactShape(string Contact, double Typical, double Least, double Most, string State, string Reason);

internal static class FitShapes
{
    /// <param name="matrix">Null when something stood in its way.</param>
    public static FitsShape Of(FitMatrix? matrix, IEnumerable<RenderedFile> written, IEnumerable<Diagnostic> told) => new(
        matrix is not null, matrix is null ? [] : [.. matrix.Fits.Select(f => Of(matrix, f))], [.. written.Select(SheetOutput.Shape)], [.. told.Select(ShapesJson.Of)]);

    private static FitShape Of(FitMatrix matrix, LeverFit fit) => new(
        fit.Lever, fit.Plane, fit.Word, fit.Turns, fit.Reasons, fit.Rework is { } rework ? [.. rework] : null, matrix.Alternative(fit)?.Lever,
        [.. fit.Contacts.Select(c => new ContactShape(c.Name, c.Typical.Millimetres, c.Worst.Min.Millimetres, c.Worst.Max.Millimetres, FitPrinter.State(c), c.Reason))]);
}
