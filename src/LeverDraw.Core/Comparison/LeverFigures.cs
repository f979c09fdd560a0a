using LeverDraw.Parts;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Profiles;
using LeverDraw.Standards;

namespace LeverDraw.Comparison;

/// <summary>What a lever weighs and bears.</summary>
/// <param name="Grams">At the middle of the densities that its metal's sources give; null when no density is held for the metal's words.</param>
public sealed record LeverFigures(double CubicCentimetres, double? Grams, ArmStrength Strength)
{
    public static LeverFigures Of(LeverVariant variant)
    {
        double volume = LeverMass.Of(variant.Lever).CubicCentimetres;
        Material? metal = MaterialOfText.Material(variant.Profile.Values.Get(CommonFields.Material));
        return new LeverFigures(volume, metal is { } m ? volume * (m.DensityMin + m.DensityMax) / 2 : null, ArmStrength.Of(variant.Lever));
    }
}
