namespace LeverDraw.Parts;

/// <summary>What every reproduction part's sheet says, so that nobody sells it as an old one; a part this small has no room for the words itself.</summary>
internal static class ReproductionNote
{
    public const string Text = "REPRODUCTION PART: SAY SO ON PACKET AND BILL.";
}
