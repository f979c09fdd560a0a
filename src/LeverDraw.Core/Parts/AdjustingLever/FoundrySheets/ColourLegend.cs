using System.Collections.Immutable;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Profiles;
using LeverDraw.Standards;

namespace LeverDraw.Parts.AdjustingLever.FoundrySheets;

/// <summary>The legend of letters and colours of the faces that a pattern has, with the name of the list it follows.</summary>
internal sealed class ColourLegend
{
    private const string Machined = StockMarks.Letter, CorePrint = "C", LoosePiece = "L", AsCast = "";

    private readonly PatternColourScheme? _scheme;
    private readonly ImmutableArray<(string Letter, string Face, string Colour)> _rows;

    private ColourLegend(PatternColourScheme? scheme, ImmutableArray<(string Letter, string Face, string Colour)> rows) => (_scheme, _rows) = (scheme, rows);

    /// <summary>Letters alone when the profile wants no colours.</summary>
    public static ColourLegend Of(FoundryPlan plan, PartingCandidate parting, IFieldValues values)
    {
        bool hasPrints = plan.CoredHole is not null && plan.Process.Sand;
        var letters = new HashSet<string> { Machined, AsCast };
        if (hasPrints)
            letters.Add(CorePrint);
        if (!parting.Draws)
            letters.Add(LoosePiece);
        PatternColourScheme? scheme = PatternColours.Find(values.Get(CastingFields.Colours));
        ImmutableArray<(string Letter, string Face, string Colour)> all = scheme?.Colours ?? [(Machined, "MACHINED", ""), (CorePrint, "CORE PRINT", ""), (LoosePiece, "LOOSE PIECE", "")];
        return new ColourLegend(scheme, [.. all.Where(row => letters.Contains(row.Letter))]);
    }

    public string InWords => _scheme is { } scheme
        ? "COLOURS, " + scheme.Name + " (NO LIST IS UNIVERSAL): " + string.Join(", ", _rows.Select(r => (r.Letter + " " + r.Face).TrimStart() + " " + r.Colour)) + "."
        : "LETTERS, NO COLOURS: " + string.Join(", ", _rows.Select(r => r.Letter + " " + r.Face)) + ".";

    public SheetTable InTable => _scheme is { } scheme
        ? new SheetTable("COLOURS: " + scheme.Name + " (NO LIST IS UNIVERSAL)", [new("LETTER", 0.5), new("FACE"), new("COLOUR")], [.. _rows.Select(r => ImmutableArray.Create(r.Letter, r.Face, r.Colour))])
        : new SheetTable("LETTERS, NO COLOURS", [new("LETTER", 0.5), new("FACE")], [.. _rows.Select(r => ImmutableArray.Create(r.Letter, r.Face))]);
}
