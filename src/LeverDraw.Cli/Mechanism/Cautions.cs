namespace LeverDraw.Cli.Mechanism;

/// <summary>What is said wherever a pin or a lug is to be worked on.</summary>
internal static class Cautions
{
    public const string Pins = "Old lugs are brittle iron: find the pin's small end, support the lug itself, wear eye protection, stop early and drill rather than hammer.";

    public const string Reaming = "What is reamed or filed off does not grow back: try the part that can be replaced first. Ream by hand, seat the pin by hand.";
}
