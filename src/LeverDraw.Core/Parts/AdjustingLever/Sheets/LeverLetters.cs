namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>Letters of cuts, details and extra views, in one place. A, B and C are the datums'; I, O and Q are never used.</summary>
internal static class LeverLetters
{
    public const string Section = "D", Nose = "E", Pad = "F", Tongue = "G";

    public static string Caption(string cut) => cut + "–" + cut;
}
