using System.Collections.Immutable;
using LeverDraw.Standards;

namespace LeverDraw.Parts;

/// <summary>Which row of the materials, and which metal group of the casting grades, a title block's free words mean. No guess: words it does not know have none.</summary>
internal static class MaterialOfText
{
    /// <summary>All of the words, the material, the group of casting metals; the first row that fits holds.</summary>
    private static readonly ImmutableArray<(string[] Words, string Material, string Group)> _rows =
    [
        (["alumin", "bronze"], "aluminium bronze (3-10 % Al)", "copper alloys"),
        (["phosphor", "bronze"], "phosphor bronze", "copper alloys"),
        (["gunmetal"], "CuSn5Zn5Pb5 (CC491K) sand", "copper alloys"),
        (["brass"], "brass, casting", "copper alloys"),
        (["bronze"], "bronze, 8-14 % Sn", "copper alloys"),
        (["malleable"], "malleable iron", "malleable iron"),
        (["ductile"], "EN-GJS-400-15", "ductile (SG) iron"),
        (["iron"], "grey iron, generic", "grey iron"),
        (["cast steel"], "cast steel", "steel"),
        (["steel"], "steel, rolled", "steel"),
        (["alumin"], "aluminium", "light alloys"),
    ];

    public static Material? Material(string text) =>
        Row(text) is { } row && Materials.Named(row.Material) is { IsGiven: true } found && found.Value.HasDensity ? found.Value : null;

    /// <summary>As <see cref="CastingGradesByProcess"/> spells it.</summary>
    public static string? CastingGroup(string text) => Row(text)?.Group;

    private static (string[] Words, string Material, string Group)? Row(string text)
    {
        foreach ((string[] Words, string Material, string Group) row in _rows)
        {
            if (row.Words.All(word => text.Contains(word, StringComparison.OrdinalIgnoreCase)))
                return row;
        }

        return null;
    }
}
