using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Tolerancing;

/// <summary>The tolerance a size has when the drawing gives it none of its own: ISO 2768-1 in one class.</summary>
public readonly record struct GeneralTolerance(GeneralToleranceClass Class)
{
    /// <summary>As written in the title block: <c>ISO 2768-m</c>.</summary>
    public string Text => "ISO 2768-" + GeneralToleranceClasses.Letter(Class);

    /// <param name="nominal">0.5 to 4000 mm; class f to 2000 mm, class v over 3 mm.</param>
    public Answer<LimitDeviations> OfLength(Length nominal) => Iso2768Linear.PlusMinus(Class, nominal).Map(LimitDeviations.PlusMinus);

    /// <param name="nominal">Radius or chamfer height, 0.5 mm or more.</param>
    public Answer<LimitDeviations> OfRadius(Length nominal) => Iso2768Radii.PlusMinus(Class, nominal).Map(LimitDeviations.PlusMinus);

    /// <summary>Plus or minus.</summary>
    /// <param name="shorterSide">The shorter side of the angle as drawn, over 0.</param>
    public Answer<Angle> OfAngle(Length shorterSide) => Iso2768Angles.PlusMinus(Class, shorterSide);
}
