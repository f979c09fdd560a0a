namespace LeverDraw.Drafting.Symbols;

/// <summary>The characteristics of ISO 1101 as characters of the lettering (code points: reference 10j; flatness and cylindricity from memory there).</summary>
public static class GeometricSigns
{
    public const string Straightness = "\u23E4";
    public const string Flatness = "\u23E5";
    public const string Roundness = "\u25CB";
    public const string Cylindricity = "\u232D";
    public const string LineProfile = "\u2312";
    public const string SurfaceProfile = "\u2313";
    public const string Parallelism = "\u2225";
    public const string Perpendicularity = "\u27C2";
    public const string Angularity = "\u2220";
    public const string Position = "\u2316";
    public const string Coaxiality = "\u25CE";
    public const string Symmetry = "\u232F";
    public const string CircularRunOut = "\u2197";
    public const string TotalRunOut = "\u2330";
}
