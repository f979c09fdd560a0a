using LeverDraw.Units;

namespace LeverDraw.Tolerancing.Allowances;

/// <summary>Casting modulus, volume by cooling surface: the larger, the later it sets. Closed forms of simple bodies.</summary>
public static class CastingModulus
{
    /// <summary>A long bar w × h, ends not counted: wh / 2(w + h).</summary>
    public static Length Bar(Length width, Length height) => Length.FromMillimetres(
        width.Millimetres * height.Millimetres / (2 * (width.Millimetres + height.Millimetres)));

    /// <summary>A wide plate: half its thickness.</summary>
    public static Length Plate(Length thickness) => thickness / 2;

    /// <summary>A cylinder with both ends: rl / 2(r + l).</summary>
    public static Length Cylinder(Length diameter, Length length)
    {
        double r = diameter.Millimetres / 2, l = length.Millimetres;
        return Length.FromMillimetres(r * l / (2 * (r + l)));
    }

    /// <summary>A block with all six faces: abc / 2(ab + bc + ca).</summary>
    public static Length Block(Length a, Length b, Length c)
    {
        double x = a.Millimetres, y = b.Millimetres, z = c.Millimetres;
        return Length.FromMillimetres(x * y * z / (2 * ((x * y) + (y * z) + (z * x))));
    }
}
