using LeverDraw.Drafting.Sheets;

namespace LeverDraw.Parts.AdjustingLever.FoundrySheets;

/// <summary>What small paper makes the foundry's sheets leave to tables, words and other sheets: it has room for neither legend, rule, the tongue's own view nor a tolerance beside each size. Those stand in the table, which is set close.</summary>
internal static class SmallPaper
{
    /// <summary>Sizes in both units on small paper: those that follow from others stand nowhere.</summary>
    public static bool IsTight(SheetOptions options) => options.IsOnSmallPaper && options.Units is (ShownUnits.MillimetresAndInches or ShownUnits.InchesAndMillimetres);
}
