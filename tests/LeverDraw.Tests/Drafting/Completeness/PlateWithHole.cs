using System.Collections.Immutable;
using LeverDraw.Drafting.Completeness;

namespace LeverDraw.Tests.Drafting.Completeness;

/// <summary>A rectangle with a round hole: width, height, the hole's place and diameter make five freedoms. Sizes by name, each as a function of the five.</summary>
internal static class PlateWithHole
{
    public static readonly ImmutableArray<string> Five = ["width", "height", "hole_x", "hole_y", "hole_diameter"];

    private static readonly ImmutableArray<double> Numbers = [30, 20, 8, 7, 5];

    private static readonly Dictionary<string, Func<ImmutableArray<double>, double>> Known = new(StringComparer.Ordinal)
    {
        ["width"] = p => p[0],
        ["height"] = p => p[1],
        ["hole_x"] = p => p[2],
        ["hole_y"] = p => p[3],
        ["hole_diameter"] = p => p[4],
        ["diagonal"] = p => Math.Sqrt((p[0] * p[0]) + (p[1] * p[1])),
        ["hole_from_right"] = p => p[0] - p[2],
        ["wall_below"] = p => p[3] - (p[4] / 2),
        ["hole_angle"] = p => Math.Atan2(p[3], p[2]),
        ["thread_pitch"] = _ => 0.8,
    };

    public static Dimensioning Check(params (string Name, SizeStanding Standing)[] sizes) =>
        Dimensioning.Of(Sheet(sizes, []));

    public static Dimensioning Check(IEnumerable<string> full) => Check([.. full.Select(n => (n, SizeStanding.Full))]);

    /// <param name="idle">Further parameters, which shape nothing.</param>
    public static ParametricSheet Sheet((string Name, SizeStanding Standing)[] sizes, ImmutableArray<ShapeParameter> idle, Func<ImmutableArray<double>, string>? form = null)
    {
        return new([.. Five.Zip(Numbers, (name, value) => new ShapeParameter(name, value)), .. idle], At(Numbers)!, At);
        ShapeSample? At(ImmutableArray<double> p) => form?.Invoke(p) == "none" ? null : new ShapeSample(
            form?.Invoke(p) ?? string.Empty,
            [0, 0, p[0], 0, p[0], p[1], 0, p[1], p[2], p[3], p[4] / 2],
            [.. sizes.Select(s => new SheetSize(s.Name, Known[s.Name](p), s.Standing))]);
    }
}
