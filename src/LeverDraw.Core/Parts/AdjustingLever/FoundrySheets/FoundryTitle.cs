using System.Globalization;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Profiles;

namespace LeverDraw.Parts.AdjustingLever.FoundrySheets;

/// <summary>The title block of a state: its contraction flag, quantity, metal and process as they were reckoned with.</summary>
internal static class FoundryTitle
{
    /// <param name="suffix">Of the drawing number: another state is another document.</param>
    public static TitleBlock Of(FoundryState state, Profile profile, string documentType, string suffix, string tolerance, ShownUnits units)
    {
        TitleBlock title = SheetTitle.Of(profile, "ADJUSTING LEVER", documentType, tolerance, units);
        FoundryPlan plan = state.Plan;
        return title with
        {
            DrawingNumber = title.DrawingNumber.Length > 0 ? title.DrawingNumber + suffix : "",
            Material = MaterialOfText.FoundryWord(title.Material) == plan.Metal.Word ? title.Material : Capital(plan.Metal.Name),
            Process = Capital(plan.Process.Name),
            Flag = state.Flag.Text,
            Quantity = profile.Values.Get(CastingFields.Quantity) is { Length: > 0 } quantity ? quantity : "AS ORDERED",
        };
    }

    private static string Capital(string words) => char.ToUpper(words[0], CultureInfo.InvariantCulture) + words[1..];
}
