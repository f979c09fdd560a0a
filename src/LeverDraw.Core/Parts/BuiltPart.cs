using System.Collections.Immutable;
using LeverDraw.Profiles;

namespace LeverDraw.Parts;

/// <summary>A part of any kind, sound in all its sizes, and the sheets it can be drawn on.</summary>
public sealed record BuiltPart(PartKind Kind, Profile Profile, ImmutableArray<BuiltSheet> Sheets)
{
    /// <summary>The sheet of that name, or null.</summary>
    public BuiltSheet? Find(string sheet) =>
        Sheets.FirstOrDefault(s => string.Equals(s.Name, sheet, StringComparison.OrdinalIgnoreCase));
}
