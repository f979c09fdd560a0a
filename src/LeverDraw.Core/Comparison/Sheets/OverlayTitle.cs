using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Parts;

namespace LeverDraw.Comparison.Sheets;

/// <summary>The overlay's title block, derived from both variants' own; a note on the sheet says so. Nobody has approved it.</summary>
internal static class OverlayTitle
{
    public static TitleBlock Of(LeverComparison c, ShownUnits units)
    {
        TitleBlock a = Own(c.A, units), b = Own(c.B, units);
        return a with
        {
            Owner = Joined(a.Owner, b.Owner),
            Title = "ADJUSTING LEVERS, OVERLAY OF TWO",
            SupplementaryTitle = "A " + c.A.ShortName + " / B " + c.B.ShortName,
            DrawingNumber = Joined(a.DrawingNumber, b.DrawingNumber),
            // Both, even where they are equal: A/A is the revisions of two drawings.
            Revision = a.Revision + "/" + b.Revision,
            Date = string.CompareOrdinal(a.Date, b.Date) >= 0 ? a.Date : b.Date,
            Creator = Joined(a.Creator, b.Creator),
            Approver = string.Empty,
            Material = Joined(a.Material, b.Material),
            Process = Joined(a.Process, b.Process),
            Reproduction = a.Reproduction || b.Reproduction,
        };
    }

    private static TitleBlock Own(LeverVariant variant, ShownUnits units) =>
        SheetTitle.Of(variant.Profile, "ADJUSTING LEVER", "COMPARISON, FINISHED PARTS", "SEE EACH LEVER'S DRAWING", units);

    private static string Joined(string a, string b) => a == b || b.Length == 0 ? a : a.Length == 0 ? b : a + " / " + b;
}
