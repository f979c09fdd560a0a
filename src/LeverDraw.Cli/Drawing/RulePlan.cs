using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Tolerancing.Allowances;

namespace LeverDraw.Cli.Drawing;

/// <summary>A contraction rule of a metal alone, without a profile.</summary>
internal static class RulePlan
{
    public static IReadOnlyList<DrawJob> Make(DrawChoices choices, FoundryChoice choice, List<UsageFault> faults)
    {
        if (choices.Sheets is not [ContractionRuleSheet.Kind])
        {
            faults.Add(new UsageFault("'draw' needs FILE.", "Give a profile; only a contraction rule can be drawn without one, by --sheet rule --metal METAL."));
            return [];
        }

        if (choice.Metal is not { } metal)
        {
            faults.Add(new UsageFault("A rule without a profile needs a metal.", "Give --metal, such as --metal brass."));
            return [];
        }

        AxisRates rates = AxisRates.Alike(choice.Contraction is { } text && ContractionText.Parse(text) is { } stated ? stated : metal.BookRate);
        SheetOptions options = choices.Sheet with { Units = choices.Units ?? ShownUnits.Millimetres };
        BuiltSheet sheet = new(ContractionRuleSheet.Kind, PartState.Pattern, _ => throw new InvalidOperationException("A rule is drawn at once."))
        {
            Plot = o => ContractionRuleSheet.Of(rates, metal, null, o),
        };
        return [DrawPlan.JobOf(metal.Word, sheet, options, choices)];
    }
}
