namespace LeverDraw.Standards;

/// <summary>The deviations held here: capitals are written for holes, small letters for shafts.</summary>
public enum DeviationLetter
{
    C,
    D,
    E,
    F,
    G,
    H,
    JS,
    K,
    M,
    N,
    P,
    R,
    S,
}
