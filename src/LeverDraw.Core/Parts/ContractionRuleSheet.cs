using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Rules;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Profiles;
using LeverDraw.Standards;
using LeverDraw.Tolerancing.Allowances;

namespace LeverDraw.Parts;

/// <summary>The contraction rule by itself: one for each way the casting contracts.</summary>
public static class ContractionRuleSheet
{
    public const string Kind = "rule";

    /// <param name="profile">Whose title block it carries; null for a rule of a metal alone.</param>
    public static Checked<PlotSheet> Of(AxisRates rates, FoundryMetal metal, Profile? profile, SheetOptions options)
    {
        ArgumentNullException.ThrowIfNull(metal);
        ArgumentNullException.ThrowIfNull(options);
        ImmutableArray<RuleScale> rules = rates.AreAlike
            ? [Rule(rates.X, "")]
            : [Rule(rates.X, ", ALONG THE PIN"), Rule(rates.N, ", SQUARE TO THE ARMS"), Rule(rates.Z, ", ALONG THE ARMS")];
        ImmutableArray<string> notes =
        [
            "PRINT AT 100 % AND MEASURE THE CHECK BAR. A LENGTH OF THE CASTING READ ON THIS RULE IS THE PATTERN'S LENGTH.",
            FoundrySheetWords.Contraction(rates, metal) + ".",
            "FOR DRAWINGS WITHOUT CONTRACTION ONLY: A DRAWING THAT HAS IT TAKES A PLAIN RULE.",
            "PAPER STRETCHES WITH DAMP: TRANSFER THE GRADUATIONS TO WOOD OR METAL FOR LONGER USE.",
        ];
        SheetFormat paper = options.Paper ?? IsoSheets.A4;
        return RuleSheet.Of(rules, notes, Title(rates, metal, profile, options), paper, options) is { } sheet
            ? Checked<PlotSheet>.Good(sheet)
            : Checked<PlotSheet>.Bad([DiagnosticCatalogue.SheetTooSmall.At(null, null, Kind, paper.Name, "the rules and notes need more room")]);
    }

    private static RuleScale Rule(ContractionRate rate, string along) =>
        new(rate.Factor, "CONTRACTION RULE " + ContractionText.OneIn(rate) + " (" + ContractionText.Percent(rate) + ")" + along);

    private static TitleBlock Title(AxisRates rates, FoundryMetal metal, Profile? profile, SheetOptions options)
    {
        string name = char.ToUpper(metal.Name[0], CultureInfo.InvariantCulture) + metal.Name[1..];
        string rate = rates.AreAlike ? ContractionText.OneIn(rates.X) : "a rule for each way";
        TitleBlock title = profile is { } of
            ? SheetTitle.Of(of, "CONTRACTION RULE", "", "", options.Units)
            : new TitleBlock("", "", "", "", "", "", "", "", "", "", "", "", options.FirstUnit == SheetUnit.Inch ? "in" : "mm", "1 of 1", false);
        return title with
        {
            Title = "CONTRACTION RULE",
            SupplementaryTitle = name + ", " + rate,
            DrawingNumber = title.DrawingNumber.Length > 0 ? title.DrawingNumber + "-R" : "",
            DocumentType = "RULE, TRUE TO LENGTH AT 100 %",
            Material = name,
            Process = "",
        };
    }
}
