using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>A parallel pin; its diameter is m6 or h8 as ordered (see <see cref="Iso286Shafts"/>).</summary>
/// <param name="Chamfer">Length c of the chamfered end, about (from memory).</param>
public sealed record ParallelPin(Length Diameter, Length Chamfer);

/// <summary>The metric parallel pins, smallest first.</summary>
public static class ParallelPins
{
    public static StandardSource Source { get; } = new(
        "Metric parallel pins", "ISO 2338", "1997", "", Certainty.Mixed, "diameters and their m6 and h8 limits: three sources; chamfers from memory");

    /// <summary>Diameter; chamfer, mm.</summary>
    public static ImmutableArray<ParallelPin> All { get; } =
    [
        Pin(0.6, 0.12),
        Pin(0.8, 0.16),
        Pin(1, 0.2),
        Pin(1.2, 0.25),
        Pin(1.5, 0.3),
        Pin(2, 0.35),
        Pin(2.5, 0.4),
        Pin(3, 0.5),
        Pin(4, 0.63),
        Pin(5, 0.8),
        Pin(6, 1.2),
        Pin(8, 1.6),
        Pin(10, 2),
        Pin(12, 2.5),
        Pin(16, 3),
        Pin(20, 3.5),
        Pin(25, 4),
        Pin(30, 5),
        Pin(40, 6.3),
        Pin(50, 8),
    ];

    public static Answer<ParallelPin> WithDiameter(Length nominal)
    {
        double mm = SizeSteps.ToBorder(nominal);
        foreach (ParallelPin pin in All)
        {
            if (SizeSteps.ToBorder(pin.Diameter) == mm)
                return Answer<ParallelPin>.Given(pin);
        }
        return Answer<ParallelPin>.Refused("the parallel pins have diameters from 0.6 to 50 mm in steps of their series");
    }

    private static ParallelPin Pin(double d, double c) => new(Length.FromMillimetres(d), Length.FromMillimetres(c));
}
