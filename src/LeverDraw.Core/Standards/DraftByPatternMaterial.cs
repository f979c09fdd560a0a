using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>Draft of an outside and an inside surface, per side.</summary>
public readonly record struct DraftPair(Angle External, Angle Internal);

/// <summary>Draft by pattern material and height.</summary>
public static class DraftByPatternMaterial
{
    public static StandardSource Source { get; } = new(
        "Draft by pattern material", "A reprinted lecture table", "", "", Certainty.FromMemory, "all from memory");

    /// <summary>Wood or not; height over, up to, inches; degrees outside, inside.</summary>
    private static readonly ImmutableArray<Row> _rows =
    [
        new(true, 0, 1, 3.0, 3.0),
        new(true, 1, 2, 1.5, 2.5),
        new(true, 2, 4, 1.0, 1.5),
        new(true, 4, 8, 0.75, 1.0),
        new(true, 8, 32, 0.5, 1.0),
        new(false, 0, 1, 1.5, 3.0),
        new(false, 1, 2, 1.0, 2.0),
        new(false, 2, 4, 0.75, 1.0),
        new(false, 4, 8, 0.5, 1.0),
        new(false, 8, 32, 0.5, 0.75),
    ];

    /// <param name="height">Along the draw, over 0 up to 32 in.</param>
    public static Answer<DraftPair> Wood(Length height) => Of(true, height);

    /// <param name="height">Along the draw, over 0 up to 32 in.</param>
    public static Answer<DraftPair> MetalOrPlastic(Length height) => Of(false, height);

    private static Answer<DraftPair> Of(bool wood, Length height) =>
        SizeSteps.Find([.. _rows.Where(row => row.Wood == wood)], height, "draft angles")
            .Map(row => new DraftPair(Angle.FromDegrees(row.External), Angle.FromDegrees(row.Internal)));

    private sealed record Row(bool Wood, double OverInches, double UpToInches, double External, double Internal) : ISizeStep
    {
        public double OverMm => SizeSteps.ToBorder(Length.FromInches(OverInches));

        public double UpToMm => SizeSteps.ToBorder(Length.FromInches(UpToInches));
    }
}
