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

    public static DiagnosticKind VariantsDiffer { get; } = new("LD504", Severity.Error, "variants cannot share a tabled sheet",
        "'{0}' cannot stand in the table of '{1}': the drawing has no place for {2}.",
        "Draw it by itself, or put the variant first that shows all of these sizes.",
        "a lever with a round head in the table of one with a block head", ["TC-L-04", "TC-L-02", "head.corner_radius"]);

    public static DiagnosticKind DrawnReduced { get; } = new("LD505", Severity.Warning, "small part drawn reduced",
        "On {1} the {0} sheet goes at {2} only, smaller than the part.",
        "Take a larger paper, or one unit of measurement instead of two.",
        "a lever in millimetres and inches on A4", ["finished", "A4", "1:2"]);

    public static DiagnosticKind NotDimensioned { get; } = new("LD510", Severity.Error, "sheet leaves the shape free",
        "The {0} sheet leaves the shape free: no size on it holds {1}.",
        "Do not make the part from this sheet. A dimension is missing: that is a fault of the tool, please report it with the profile.",
        "a sheet that gives a length from the axis to the pads, but no length of the pads", ["finished", "'pads.length'"]);

    public static DiagnosticKind DimensionedTwice { get; } = new("LD511", Severity.Error, "size stated twice",
        "The {0} sheet states a size twice: of {1} one follows from the rest.",
        "Do not make the part from this sheet. One of these belongs in round brackets: that is a fault of the tool, please report it with the profile.",
        "a sheet that gives both arms, the gap between them and the width over all, none in brackets", ["finished", "'arms.width', 'fork.gap', 'fork.outside'"]);

    public static DiagnosticKind WronglyBracketed { get; } = new("LD512", Severity.Error, "size in brackets does not follow",
        "The {0} sheet gives {1} in brackets, and no other size holds it.",
        "Do not make the part from this sheet. The brackets are wrong: that is a fault of the tool, please report it with the profile.",
        "a sheet that gives the gap of the fork in brackets, and no width over all", ["finished", "'fork.gap'"]);

    public static DiagnosticKind DimensioningUnclear { get; } = new("LD513", Severity.Warning, "dimensioning not proved",
        "Whether the {0} sheet fixes the shape exactly once cannot be told: {1}.",
        "Change one of the sizes by a hundredth of a millimetre and check again, or check the sheet by hand.",
        "a round that takes up its whole face to the last micrometre", ["finished", "'pads.end_corner' stands at the edge of what this form allows"]);

    private static ImmutableArray<DiagnosticKind> Drafting() =>
        [SheetTooSmall, TextDoesNotFit, LetterNotDrawn, VariantsDiffer, DrawnReduced, NotDimensioned, DimensionedTwice, WronglyBracketed, DimensioningUnclear];
}
