using LeverDraw.Units;

namespace LeverDraw.Tolerancing.Allowances;

/// <summary>Raw size of a casting from the finished size F, the required machining allowance RMA per face and the casting tolerance DCT, given as plus or minus (half its width). Source: reference 03f, ISO 8062-3, from memory, agreeing with a published design guide.</summary>
public static class RawSize
{
    /// <summary>R = F + RMA + DCT/2: one face machined.</summary>
    public static Length OneFace(Length finished, Length allowance, Length plusMinus) => finished + allowance + plusMinus;

    /// <summary>R = F + 2 RMA + DCT/2: an outside size with both faces machined.</summary>
    public static Length BothFaces(Length finished, Length allowance, Length plusMinus) => finished + (2 * allowance) + plusMinus;

    /// <summary>R = F − 2 RMA − DCT/2: an inside size with both faces machined.</summary>
    public static Length Bore(Length finished, Length allowance, Length plusMinus) => finished - (2 * allowance) - plusMinus;
}
