using LeverDraw.Cli.Drawing;
using LeverDraw.Cli.Json;
using LeverDraw.Comparison;
using LeverDraw.Diagnostics;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Cli.Comparing;

/// <summary>A comparison as <c>compare --json</c> prints it.</summary>
internal static class CompareShapes
{
    /// <param name="result">Null when something stood in its way.</param>
    public static CompareShape Of(CompareResult? result, IEnumerable<RenderedFile> written, IEnumerable<Diagnostic> told) => new(
        result is not null,
        [.. (result?.Input.Variants ?? []).Select((v, i) => new VariantShape(
            CompareLetters.Of(i), v.ShortName, result!.Input.Paths[i], v.Profile.Values.Get(CommonFields.Number), v.Profile.Values.Get(CommonFields.Revision), v.Pin?.Profile.Path))],
        [.. (result?.Sizes ?? []).Select(Row)],
        [.. (result?.Figures ?? []).Select(Row)],
        result?.Two is not { } two ? null : new OverlayShape(two.Alignment.ToString().ToLowerInvariant(), [View("side", two.Side), View("fork", two.Fork)]),
        [.. written.Select(SheetOutput.Shape)],
        [.. told.Select(ShapesJson.Of)]);

    private static ComparedRowShape Row(ComparedRow row) => new(
        row.Name,
        row.Symbol,
        row.Matters is null ? null : CompareLetters.Matters(row),
        row.Why,
        [.. row.Values.Zip(ValueText.Of(row, LengthUnit.Millimetre), Value)],
        row.Delta?.Millimetres,
        row.Delta?.Inches,
        row.AngleDelta?.Degrees,
        row.FigureDelta?.Value);

    private static ComparedValueShape? Value(ComparedValue? value, string text) => value switch
    {
        null => null,
        ComparedSize size => new(text, size.Size.Millimetres, "mm"),
        ComparedAngle angle => new(text, angle.Angle.Degrees, "deg"),
        ComparedTaper taper => new(text, taper.Taper.Rate, "mm/mm"),
        ComparedRoughness rough => new(text, rough.Ra.Millimetres * 1000, "µm"),
        ComparedFigure figure => new(text, figure.Value, figure.Unit),
        _ => new(text, null, null),
    };

    private static OverlayViewShape View(string name, ViewOverlay seen) => new(
        name,
        seen.A.Area,
        seen.B.Area,
        seen.Areas.Both.Area,
        seen.Areas.OnlyA.Area,
        seen.Areas.OnlyB.Area,
        seen.Areas.Error,
        Far(seen.AFromB),
        Far(seen.BFromA));

    private static DeviationShape Far(Deviation d) => new(d.Distance.Millimetres, d.Outside, d.At.X, d.At.Y, d.Nearest.X, d.Nearest.Y);
}

/// <summary>What <c>compare --json</c> prints; lengths in millimetres and areas in mm² at full precision.</summary>
internal sealed record CompareShape(
    bool Ok, IReadOnlyList<VariantShape> Variants, IReadOnlyList<ComparedRowShape> Sizes, IReadOnlyList<ComparedRowShape> Figures, OverlayShape? Overlay,
    IReadOnlyList<WrittenShape> Written, IReadOnlyList<DiagnosticShape> Diagnostics);

internal sealed record VariantShape(string Letter, string Name, string File, string Number, string Revision, string? PinFile);

internal sealed record ComparedRowShape(
    string Name, string? Sign, string? Matters, string Why, IReadOnlyList<ComparedValueShape?> Values,
    double? DeltaMillimetres, double? DeltaInches, double? DeltaDegrees, double? Delta);

internal sealed record ComparedValueShape(string Text, double? Number, string? Unit);

internal sealed record OverlayShape(string AlignedBy, IReadOnlyList<OverlayViewShape> Views);

/// <param name="Error">No area differs from the exact one by more.</param>
internal sealed record OverlayViewShape(string View, double AreaA, double AreaB, double Both, double OnlyA, double OnlyB, double Error, DeviationShape AFromB, DeviationShape BFromA);

internal sealed record DeviationShape(double Distance, bool Outside, double AtX, double AtY, double NearestX, double NearestY);
