using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Profiles;
using LeverDraw.Standards;

namespace LeverDraw.Parts.AdjustingLever.FoundrySheets;

/// <summary>The legend of letters and colours, with the name of the list it follows.</summary>
internal static class ColourLegend
{
    public static string InWords(IFieldValues values) => PatternColours.Find(values.Get(CastingFields.Colours)) is { } scheme
        ? "COLOURS, " + scheme.Name + " (NO LIST IS UNIVERSAL): " + string.Join(", ", scheme.Colours.Select(c => (c.Letter + " " + c.Face).TrimStart() + " " + c.Colour)) + "."
        : "LETTERS, NO COLOURS: M MACHINED, C CORE PRINT, L LOOSE PIECE.";

    /// <summary>The legend; letters alone when the profile wants no colours.</summary>
    public static SheetTable Of(IFieldValues values)
    {
        if (PatternColours.Find(values.Get(CastingFields.Colours)) is { } scheme)
        {
            return new SheetTable(
                "COLOURS: " + scheme.Name + " (NO LIST IS UNIVERSAL)",
                [new("LETTER", 0.5), new("FACE"), new("COLOUR")],
                [.. scheme.Colours.Select(c => System.Collections.Immutable.ImmutableArray.Create(c.Letter, c.Face, c.Colour))]);
        }

        return new SheetTable("LETTERS, NO COLOURS", [new("LETTER", 0.5), new("FACE")], [["M", "MACHINED"], ["C", "CORE PRINT"], ["L", "LOOSE PIECE"]]);
    }
}
