using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Statistics;

namespace LeverDraw.Specimens.Identification;

/// <summary>How likely a reading is on a part of a given variant: scatter of making and measuring, and wear that goes one way only.</summary>
internal static class Likelihood
{
    /// <summary>How often a form is called by a wrong name (own).</summary>
    private const double Misjudged = 0.03;

    /// <summary>How many free texts a mark might have, for want of a list (own).</summary>
    private const int FreeTexts = 20;

    /// <summary>ln of the density (of the probability, for a form) on a part of the variant; that of any part at all when the variant has no such size.</summary>
    public static double Log(Evidence evidence, Variant variant)
    {
        string name = evidence.Measurand.Name;
        if (evidence.Word is { } word)
        {
            double others = Math.Max(2, Choices(evidence.Measurand)) - 1;
            return variant.Words.TryGetValue(name, out string? own) ? Math.Log(own == word ? 1 - Misjudged : Misjudged / others) : LogAny(evidence.Measurand);
        }

        return variant.Sizes.TryGetValue(name, out double size) ? LogSize(evidence.Measurand, evidence.Value!, size) : LogAny(evidence.Measurand);
    }

    /// <summary>ln of the density on a part of which nothing is known: even over all the profile allows.</summary>
    public static double LogAny(Measurand measurand) => measurand.Kind is ReadingKind.Size or ReadingKind.Angle
        ? -Math.Log(measurand.Most - measurand.Least)
        : -Math.Log(Choices(measurand));

    public static double LogSize(Measurand measurand, Readings.SpecimenValue read, double size)
    {
        double made = measurand.Spread(size);
        double deviation = Math.Sqrt((made * made) + (read.Own * read.Own) + (read.Common * read.Common));
        double distance = read.Value - size;
        return !read.IsWorn
            ? NormalLaw.LogDensity(distance, deviation)
            : WornLaw.LogMixed(measurand.Wear == WearSide.Larger ? -distance : distance, deviation, measurand.UsualWear);
    }

    private static int Choices(Measurand measurand) => measurand.Kind == ReadingKind.Taper ? 2 : measurand.Words.IsEmpty ? FreeTexts : measurand.Words.Length;
}
