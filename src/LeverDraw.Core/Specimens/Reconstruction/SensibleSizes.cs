using System.Collections.Immutable;
using LeverDraw.Parts.PivotPin;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Specimens.Reconstruction;

/// <summary>A size that its maker may have meant: how it is named, and how large it is.</summary>
public sealed record SensibleSize(string Name, Length Size);

/// <summary>Sizes a workshop would work to, inside an interval. They are shown; none is ever taken in an estimate's place.</summary>
internal static class SensibleSizes
{
    private const double QuarterMillimetre = 0.25;

    /// <summary>More candidates than this say nothing, and are counted only.</summary>
    public const int Most = 6;

    public static ImmutableArray<SensibleSize> Within(Measurand measurand, double from, double to)
    {
        if (measurand.Kind != ReadingKind.Size)
            return [];
        IEnumerable<SensibleSize> all = [.. Fractions(from, to), .. Quarters(from, to)];
        if (measurand.Feature == "hole")
            all = all.Concat(TwistDrills.All.Where(d => d.Series != DrillSeries.Fraction).Select(d => new SensibleSize("drill " + d.Name, d.Diameter)));
        if (measurand.Name == PinFields.LargeEnd.Name)
            all = all.Concat(InchTaperPins.All.Select(p => new SensibleSize("taper pin " + p.Number, p.LargeEnd)));
        return [.. all.Where(s => s.Size.Millimetres >= from && s.Size.Millimetres <= to).OrderBy(s => s.Size)];
    }

    private static IEnumerable<SensibleSize> Fractions(double from, double to)
    {
        const double Part = Length.MillimetresPerInch / 64;
        for (int n = Math.Max(1, (int)Math.Ceiling(from / Part)); n * Part <= to; n++)
        {
            Length size = Length.FromInches(n / 64.0);
            yield return new SensibleSize(LengthText.InchFraction(size) + " in", size);
        }
    }

    private static IEnumerable<SensibleSize> Quarters(double from, double to)
    {
        for (int n = Math.Max(1, (int)Math.Ceiling(from / QuarterMillimetre)); n * QuarterMillimetre <= to; n++)
        {
            Length size = Length.FromMillimetres(n * QuarterMillimetre);
            yield return new SensibleSize(LengthText.WithUnit(size, LengthUnit.Millimetre, 2), size);
        }
    }
}
