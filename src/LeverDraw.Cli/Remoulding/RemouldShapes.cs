using LeverDraw.Cli.Json;
using LeverDraw.Diagnostics;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Units;

namespace LeverDraw.Cli.Remoulding;

/// <summary>The same report for programs, in millimetres.</summary>
internal static class RemouldShapes
{
    public static RemouldShape Of(string path, Checked<PatternLever> pattern, IReadOnlyDictionary<string, Length> measured) => new(
        pattern.Ok,
        path,
        pattern.Value?.Casting.Plan.Metal.Word,
        pattern.Value?.Casting.Plan.Process.Word,
        pattern.Value is { } p
            ? [.. OriginalAsPattern.Table(p, size => measured.TryGetValue(size.Field.Name, out Length read) ? read : size.Finished).Select(r => new CopiedShape(
                r.Size.Name, r.Size.Field.Name, r.Size.Group != MachinedFaces.None, Mm(r.Size.Finished), Mm(r.Original), Mm(r.ComesOut), Mm(r.Short), Mm(r.Pad)))]
            : [],
        [.. pattern.Diagnostics.Select(ShapesJson.Of)]);

    private static double Mm(Length length) => Math.Round(length.Millimetres, 6);
}
