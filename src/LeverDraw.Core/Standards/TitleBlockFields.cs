using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>A data field of the title block.</summary>
/// <param name="Characters">Recommended number of characters; 0 when the table gives none.</param>
public sealed record TitleBlockField(string Name, int Characters, bool Mandatory);

/// <summary>The data fields of the title block.</summary>
public static class TitleBlockFields
{
    public static StandardSource Source { get; } = new(
        "Title block fields", "ISO 7200", "2004", "", Certainty.Mixed,
        "fields: one secondary listing, seen in three languages, agrees with memory; width from memory");

    /// <summary>The block is this wide, at the bottom right of the drawing space.</summary>
    public static Length BlockWidth { get; } = Length.FromMillimetres(180);

    public static ImmutableArray<TitleBlockField> All { get; } =
    [
        new("legal owner", 0, true),
        new("identification number", 16, true),
        new("revision index", 2, false),
        new("date of issue", 10, true),
        new("segment/sheet number", 4, true),
        new("number of segments/sheets", 4, false),
        new("language code", 4, false),
        new("title", 25, true),
        new("supplementary title", 25, false),
        new("responsible department", 10, false),
        new("technical reference", 20, false),
        new("approval person", 20, true),
        new("creator", 20, true),
        new("document type", 30, true),
        new("classification/key words", 0, false),
        new("document status", 20, false),
        new("page number", 4, false),
        new("number of pages", 4, false),
        new("paper size", 4, false),
    ];
}
