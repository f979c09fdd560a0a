using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

public enum DraftProcess
{
    SandHandMoulded,
    SandMachineOrShell,
    Investment,
}

/// <summary>Draft of external surfaces by feature height, fine grade.</summary>
public static class DraftByHeight
{
    public static StandardSource Source { get; } = new(
        "Draft by feature height, external, fine grade", "ISO 8062-4", "2017", "tables 4, 5 and 8", Certainty.Thin,
        "one transcription; external surfaces and the fine grade only");

    /// <summary>Rows of feature height over, up to (mm); degrees for hand-moulded sand, machine-moulded or shell sand, investment.</summary>
    private static readonly ImmutableArray<Row> _rows =
    [
        new(0, 4, [6.9, 5.8, 5.7]),
        new(4, 6.3, [6.5, 5.3, 2.2]),
        new(6.3, 10, [4.8, 3.9, 1.4]),
        new(10, 16, [3.2, 2.7, 0.9]),
        new(16, 25, [2.6, 2.2, 0.8]),
        new(25, 40, [2.2, 2.0, 0.5]),
        new(40, 63, [1.9, 1.6, 0.5]),
        new(63, 100, [1.4, 1.2, 0.3]),
        new(100, 160, [1.0, 1.0, 0.2]),
        new(160, 250, [0.8, 0.9, 0.2]),
    ];

    /// <summary>The draft per side of an external surface.</summary>
    /// <param name="height">Along the draw, over 0 up to 250 mm.</param>
    public static Answer<Angle> External(DraftProcess process, Length height) =>
        SizeSteps.Find(_rows, height, "draft angles").Map(row => Angle.FromDegrees(row.Degrees[(int)process]));

    private sealed record Row(double OverMm, double UpToMm, ImmutableArray<double> Degrees) : ISizeStep;
}
