using System.Globalization;

namespace LeverDraw.Drafting.Lettering;

/// <summary>Characters that leave no ink.</summary>
internal static class CharacterKinds
{
    /// <summary>A blank of a word gap: spaces, tabs, line ends and other control characters.</summary>
    public static bool IsBlank(char character) => char.IsWhiteSpace(character) || char.IsControl(character);

    /// <summary>Joiners, direction marks, soft hyphens: they take no room.</summary>
    public static bool IsInvisible(char character) => CharUnicodeInfo.GetUnicodeCategory(character) is UnicodeCategory.Format;
}
