using System.Globalization;
using LeverDraw.Standards;

namespace LeverDraw.Parts;

/// <summary>What the part weighs, over the range of densities its material's sources give.</summary>
internal static class MassNote
{
    /// <param name="cubicCentimetres">Volume of the finished part.</param>
    /// <param name="material">The title block's words.</param>
    /// <returns>Null when no density is held for those words.</returns>
    public static string? Of(double cubicCentimetres, string material)
    {
        if (MaterialOfText.Material(material) is not { } metal)
            return null;
        string least = Digits(cubicCentimetres * metal.DensityMin), most = Digits(cubicCentimetres * metal.DensityMax);
        string density = metal.DensityMin == metal.DensityMax ? Plain(metal.DensityMin) : Plain(metal.DensityMin) + " TO " + Plain(metal.DensityMax);
        return "MASS " + (least == most ? "ABOUT " + least : least + " TO " + most) + " g AT " + density + " g/cm³.";
    }

    /// <summary>Three figures.</summary>
    private static string Digits(double grams) => grams.ToString(grams >= 100 ? "0" : grams >= 10 ? "0.0" : "0.00", CultureInfo.InvariantCulture);

    private static string Plain(double density) => density.ToString("0.##", CultureInfo.InvariantCulture);
}
