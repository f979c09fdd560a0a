namespace LeverDraw.Units;

/// <summary>The unit a length is written in.</summary>
public enum LengthUnit
{
    Millimetre,
    Inch,
}

/// <summary>What the units are called.</summary>
public static class LengthUnits
{
    /// <summary><c>mm</c> or <c>in</c>.</summary>
    public static string Word(this LengthUnit unit) => unit == LengthUnit.Inch ? "in" : "mm";
}
