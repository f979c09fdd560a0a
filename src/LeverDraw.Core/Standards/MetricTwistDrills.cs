using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>Metric twist drills: every 0.05 mm from 1 to 3, every 0.1 to 14, every 0.25 to 25 mm.</summary>
public static class MetricTwistDrills
{
    public static StandardSource Source { get; } = new(
        "Metric twist drills", "BS 328", "", "", Certainty.Thin, "the steps of the series from one encyclopedia article; its finer sizes below 1 mm are left out");

    /// <summary>The largest drill not above a diameter; a nanometre short counts as equal.</summary>
    public static Answer<Length> NearestNotAbove(Length diameter)
    {
        double mm = SizeSteps.ToBorder(diameter);
        if (mm < 1 || mm > 25)
            return Answer<Length>.Refused(Outside);
        double perMillimetre = PerMillimetre(mm);
        return Answer<Length>.Given(Length.FromMillimetres(Math.Floor(mm * perMillimetre + 1e-6) / perMillimetre));
    }

    /// <summary>The smallest drill not below a diameter; a nanometre over counts as equal.</summary>
    public static Answer<Length> NearestNotBelow(Length diameter)
    {
        double mm = SizeSteps.ToBorder(diameter);
        if (mm < 1 || mm > 25)
            return Answer<Length>.Refused(Outside);
        double perMillimetre = PerMillimetre(mm);
        return Answer<Length>.Given(Length.FromMillimetres(Math.Ceiling(mm * perMillimetre - 1e-6) / perMillimetre));
    }

    private const string Outside = "metric drills are given from 1 to 25 mm";

    private static double PerMillimetre(double mm) => mm < 3 ? 20 : mm < 14 ? 10 : 4;
}
