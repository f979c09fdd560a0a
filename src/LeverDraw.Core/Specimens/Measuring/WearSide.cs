namespace LeverDraw.Specimens.Measuring;

/// <summary>Which way wear moves a size.</summary>
public enum WearSide
{
    None,
    Smaller,
    Larger,
}

/// <summary>How a surface was made, which says how much the same size scatters from part to part.</summary>
internal enum MadeBy
{
    Cast,
    CastRadius,
    Filed,
    Faced,
    Reamed,
    Ground,
    Cut,
    Angle,
}
