namespace LeverDraw.Parts.PivotPin;

/// <summary>What a pin weighs.</summary>
public static class PinMass
{
    /// <summary>mm³, by closed formulas: frustum π·h·(R² + R·r + r²)/3 and cap π·h²·(3R − h)/3.</summary>
    public static double Volume(Pin pin)
    {
        double half = pin.Length.Millimetres / 2;
        double volume = Frustum(pin.LargeBase.X - pin.SmallBase.X, pin.LargeBase.Y, pin.SmallBase.Y);
        foreach ((double depth, double at) in new[] { (half - pin.LargeBase.X, pin.LargeBase.Y), (half + pin.SmallBase.X, pin.SmallBase.Y) })
        {
            if (pin.CrownRadius is { Millimetres: var radius })
                volume += Math.PI * depth * depth * ((3 * radius) - depth) / 3;
            else
                volume += Frustum(depth, at, at - depth);
        }

        return volume;
    }

    /// <param name="density">g/cm³.</param>
    public static double Grams(Pin pin, double density) => Volume(pin) / 1000 * density;

    private static double Frustum(double height, double a, double b) => Math.PI * height * ((a * a) + (a * b) + (b * b)) / 3;
}
