using System.Collections.Immutable;

namespace LeverDraw.Diagnostics;

/// <content>LD5xx: laying out the sheet.</content>
public static partial class DiagnosticCatalogue
{
    public static DiagnosticKind SheetTooSmall { get; } = new("LD501", Severity.Error, "sheet cannot be laid out",
        "The {0} sheet cannot be laid out on {1}: {2}.",
        "Take a larger paper or fewer views.",
        "a long pin on A4 with no scale small enough", ["pin", "A4", "the views need 320 mm, the frame is 277 mm wide"]);

    public static DiagnosticKind TextDoesNotFit { get; } = new("LD502", Severity.Error, "text does not fit its box",
        "'{0}' is {1} wide in lettering {2} high; its box is {3} wide.",
        "Shorten the text.",
        "a title of sixty wide letters", ["sheet.title", "190 mm", "3.5 mm", "120 mm"]);

    public static DiagnosticKind LetterNotDrawn { get; } = new("LD503", Severity.Warning, "character without a shape",
        "'{0}' holds the character {1}, which the lettering has no shape for; a box is drawn instead.",
        "Write it with Latin letters.",
        "author = \"Ж. Thessaby\"", ["sheet.author", "U+0416"]);

    public static DiagnosticKind VariantsDiffer { get; } = new("LD510", Severity.Error, "variants cannot share a tabled sheet",
        "'{0}' cannot stand in the table of '{1}': the drawing has no place for {2}.",
        "Draw it by itself, or put the variant first that shows all of these sizes.",
        "a lever with a round head in the table of one with a block head", ["TC-L-04", "TC-L-02", "head.corner_radius"]);

    private static ImmutableArray<DiagnosticKind> Drafting() => [SheetTooSmall, TextDoesNotFit, LetterNotDrawn, VariantsDiffer];
}
