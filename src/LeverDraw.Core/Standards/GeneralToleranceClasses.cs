namespace LeverDraw.Standards;

/// <summary>The letters of the general-tolerance classes.</summary>
public static class GeneralToleranceClasses
{
    private const string Letters = "fmcv";

    public static char Letter(GeneralToleranceClass toleranceClass) => Letters[(int)toleranceClass];

    /// <param name="text">One of f m c v, in small letters as the standard writes them.</param>
    public static Answer<GeneralToleranceClass> Lettered(string text)
    {
        int at = text.Length == 1 ? Letters.IndexOf(text[0], StringComparison.Ordinal) : -1;
        return at >= 0
            ? Answer<GeneralToleranceClass>.Given((GeneralToleranceClass)at)
            : Answer<GeneralToleranceClass>.Refused("the general-tolerance classes are f, m, c and v, not \"" + text + "\"");
    }
}
