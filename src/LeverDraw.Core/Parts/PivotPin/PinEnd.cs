using LeverDraw.Units;

namespace LeverDraw.Parts.PivotPin;

/// <summary>One end's form, millimetres.</summary>
/// <param name="Depth">How far the form reaches in from the end plane.</param>
/// <param name="Base">The cone's radius there.</param>
/// <param name="Tip">Radius of the flat in the end plane; zero for a crown.</param>
internal readonly record struct PinEnd(double Depth, double Base, double Tip)
{
    /// <param name="diameter">Of the cone in the end plane.</param>
    /// <param name="inward">Change of the cone's diameter per millimetre on the way in from this end.</param>
    /// <returns>Null when the form does not fit the end.</returns>
    public static PinEnd? Of(Length diameter, double inward, Length? crown, Length? chamfer)
    {
        double r = diameter.Millimetres / 2, half = inward / 2;
        if (crown is { Millimetres: var radius })
        {
            // The sphere touches the end plane on the axis: base² = 2·R·h − h² with base = r + half·h.
            double a = 1 + (half * half), b = radius - (half * r), root = (b * b) - (a * r * r);
            if (root < 0 || radius < r)
                return null;
            double h = r * r / (b + Math.Sqrt(root));
            return new PinEnd(h, r + (half * h), 0);
        }

        if (chamfer is { Millimetres: var c })
        {
            double at = r + (half * c);
            return at - c < 0.1 ? null : new PinEnd(c, at, at - c);
        }

        return new PinEnd(0, r, r);
    }
}
