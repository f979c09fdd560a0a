using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

public enum StockBasis
{
    SizeInches,
    MassKilograms,
}

/// <summary>One row of stock for machining.</summary>
/// <param name="Over">Size in inches or mass in kilograms, as <paramref name="Basis"/> says; so is <paramref name="UpTo"/>.</param>
/// <param name="Least">Per face, as is <paramref name="Most"/>.</param>
public sealed record OtherFinishAllowance(
    string Metal, StockBasis Basis, double Over, double UpTo, Length Least, Length Most, Certainty Certainty);

/// <summary>Stock for machining by pattern size or by mass, weaker figures than <see cref="FinishAllowances"/>.</summary>
public static class OtherFinishAllowances
{
    public static StandardSource Source { get; } = new(
        "Stock for machining, other figures", "Lecture table; design guidelines", "", "", Certainty.Thin, "by size: from memory; by mass: one weak source");

    public static ImmutableArray<OtherFinishAllowance> All { get; } =
    [
        new("cast iron", StockBasis.SizeInches, 0, 12, In(0.12), In(0.12), Certainty.FromMemory),
        new("cast iron", StockBasis.SizeInches, 12, 20, In(0.2), In(0.2), Certainty.FromMemory),
        new("cast iron", StockBasis.SizeInches, 20, 40, In(0.25), In(0.25), Certainty.FromMemory),
        new("cast steel", StockBasis.SizeInches, 0, 6, In(0.12), In(0.12), Certainty.FromMemory),
        new("cast steel", StockBasis.SizeInches, 6, 20, In(0.25), In(0.25), Certainty.FromMemory),
        new("cast steel", StockBasis.SizeInches, 20, 40, In(0.3), In(0.3), Certainty.FromMemory),
        new("non-ferrous", StockBasis.SizeInches, 0, 8, In(0.09), In(0.09), Certainty.FromMemory),
        new("non-ferrous", StockBasis.SizeInches, 8, 12, In(0.12), In(0.12), Certainty.FromMemory),
        new("non-ferrous", StockBasis.SizeInches, 12, 40, In(0.16), In(0.16), Certainty.FromMemory),
        new("sand castings", StockBasis.MassKilograms, 0, 5, Mm(1.0), Mm(1.5), Certainty.Thin),
        new("sand castings", StockBasis.MassKilograms, 5, 20, Mm(1.5), Mm(2.5), Certainty.Thin),
        new("sand castings", StockBasis.MassKilograms, 20, double.PositiveInfinity, Mm(2.5), Mm(3.5), Certainty.Thin),
    ];

    private static Length In(double value) => Length.FromInches(value);

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
