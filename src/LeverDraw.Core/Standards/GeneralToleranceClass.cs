namespace LeverDraw.Standards;

/// <summary>The classes of general tolerances: fine, medium, coarse, very coarse; lettered f, m, c, v.</summary>
public enum GeneralToleranceClass
{
    Fine,
    Medium,
    Coarse,
    VeryCoarse,
}
