using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Profiles;

namespace LeverDraw.Parts;

/// <summary>The title block of any part's sheet, from the profile's common fields.</summary>
internal static class SheetTitle
{
    public static TitleBlock Of(Profile profile, string defaultTitle, string documentType, string generalTolerance, ShownUnits units)
    {
        string title = profile.Values.Get(CommonFields.Title);
        return new TitleBlock(
            Owner: profile.Values.Get(CommonFields.Owner),
            Title: title.Length > 0 ? title : defaultTitle,
            SupplementaryTitle: Variant(profile.Name, defaultTitle),
            DrawingNumber: profile.Values.Get(CommonFields.Number),
            Revision: profile.Values.Get(CommonFields.Revision),
            Date: profile.Values.Get(CommonFields.Date),
            Creator: profile.Values.Get(CommonFields.Author),
            Approver: profile.Values.Get(CommonFields.Approved),
            DocumentType: documentType,
            Material: profile.Values.Get(CommonFields.Material),
            Process: profile.Values.Get(CommonFields.Process),
            GeneralTolerance: generalTolerance,
            Units: units.Words(),
            Sheet: "1 of 1",
            Reproduction: profile.Values.Get(CommonFields.Reproduction));
    }

    /// <summary>The name without the words that the title says already: <c>Adjusting lever, middle</c> is <c>Middle</c>.</summary>
    public static string Variant(string name, string title)
    {
        string rest = name.StartsWith(title, StringComparison.OrdinalIgnoreCase) ? name[title.Length..].TrimStart(' ', ',', ':', '–', '-') : string.Empty;
        return rest.Length > 0 ? char.ToUpperInvariant(rest[0]) + rest[1..] : name;
    }
}
