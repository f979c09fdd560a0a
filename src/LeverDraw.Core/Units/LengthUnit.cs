namespace LeverDraw.Units;

/// <summary>The unit a length is written in.</summary>
public enum LengthUnit
{
    Millimetre,
    Inch,
}
