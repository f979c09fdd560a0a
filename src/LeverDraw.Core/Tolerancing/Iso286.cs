using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Tolerancing;

/// <summary>What to do with an odd tolerance when js halves it.</summary>
public enum JsHalving
{
    /// <summary>Half the tolerance exactly, as the checked tables print it.</summary>
    Exact,

    /// <summary>Grades 7 to 11 with an odd number of µm use the even number below (an older allowance, from memory).</summary>
    EvenBelow,
}

/// <summary>Limit deviations of a zone on a nominal size, ISO 286-1:2010 (tables <see cref="Iso286Grades"/>, <see cref="Iso286Shafts"/>, <see cref="Iso286Holes"/>).</summary>
public static class Iso286
{
    /// <summary>
    /// The deviations, or why there are none. The tabled deviation is the limit next to the nominal size; the other limit lies one tolerance away from it:
    /// below it for shafts c to h and holes K to S, above it for holes C to H and shafts k to s. js and JS lie evenly.
    /// </summary>
    /// <param name="nominal">Over 0 up to 500 mm.</param>
    public static Answer<LimitDeviations> Deviations(ToleranceZone zone, Length nominal, JsHalving halving = JsHalving.Exact) =>
        Iso286Grades.WidthMicrometres(zone.Grade, nominal).Then(width => zone switch
        {
            { Letter: DeviationLetter.JS } => Answer<LimitDeviations>.Given(Even(zone.Grade, width, halving)),
            { Feature: FitFeature.Shaft } => Iso286Shafts.Micrometres(zone.Letter, zone.Grade, nominal)
                .Map(near => zone.Letter <= DeviationLetter.H ? Micrometres(near - width, near) : Micrometres(near, near + width)),
            _ => Iso286Holes.Micrometres(zone.Letter, zone.Grade, nominal)
                .Map(near => zone.Letter <= DeviationLetter.H ? Micrometres(near, near + width) : Micrometres(near - width, near)),
        });

    /// <summary>The limits of size of a zone on a nominal size.</summary>
    public static Answer<SizeLimits> Limits(ToleranceZone zone, Length nominal, JsHalving halving = JsHalving.Exact) =>
        Deviations(zone, nominal, halving).Map(deviations => deviations.About(nominal));

    private static LimitDeviations Even(int grade, double width, JsHalving halving)
    {
        bool odd = width % 2 == 1;
        double used = halving == JsHalving.EvenBelow && grade is >= 7 and <= 11 && odd ? width - 1 : width;
        return Micrometres(-used / 2, used / 2);
    }

    private static LimitDeviations Micrometres(double lower, double upper) =>
        new(Length.FromMillimetres(lower / 1000), Length.FromMillimetres(upper / 1000));
}
