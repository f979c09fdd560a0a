using System.Collections.Immutable;
using LeverDraw.Standards;

namespace LeverDraw.Parts;

/// <summary>Which row of the materials, and which metal group of the casting grades, a title block's free words mean. No guess: words it does not know have none.</summary>
internal static class MaterialOfText
{
    /// <summary>All of the words, the material, the group of casting metals, the foundry's word; the first row that fits holds.</summary>
    private static readonly ImmutableArray<(string[] Words, string Material, string Group, string? Foundry)> _rows =
    [
        (["alumin", "bronze"], "aluminium bronze (3-10 % Al)", "copper alloys", "aluminium-bronze"),
        (["phosphor", "bronze"], "phosphor bronze", "copper alloys", "gunmetal"),
        (["gunmetal"], "CuSn5Zn5Pb5 (CC491K) sand", "copper alloys", "gunmetal"),
        (["brass"], "brass, casting", "copper alloys", "brass"),
        (["bronze"], "bronze, 8-14 % Sn", "copper alloys", "gunmetal"),
        (["malleable"], "malleable iron", "malleable iron", "malleable-iron"),
        (["ductile"], "EN-GJS-400-15", "ductile (SG) iron", "ductile-iron"),
        (["iron"], "grey iron, generic", "grey iron", "grey-iron"),
        (["cast steel"], "cast steel", "steel", null),
        (["steel"], "steel, rolled", "steel", null),
        (["alumin"], "aluminium", "light alloys", "aluminium"),
    ];

    public static Material? Material(string text) =>
        Row(text) is { } row && Materials.Named(row.Material) is { IsGiven: true } found && found.Value.HasDensity ? found.Value : null;

    /// <summary>As <see cref="CastingGradesByProcess"/> spells it.</summary>
    public static string? CastingGroup(string text) => Row(text)?.Group;

    /// <summary>The word the casting fields have for the metal; null for one that no table of the foundry holds.</summary>
    public static string? FoundryWord(string text) => Row(text)?.Foundry;

    private static (string[] Words, string Material, string Group, string? Foundry)? Row(string text)
    {
        foreach ((string[] Words, string Material, string Group, string? Foundry) row in _rows)
        {
            if (row.Words.All(word => text.Contains(word, StringComparison.OrdinalIgnoreCase)))
                return row;
        }

        return null;
    }
}
