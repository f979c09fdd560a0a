using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>Frame, marks and reference grid of an ISO drawing sheet, on paper.</summary>
public static class SheetLayout
{
    public static StandardSource Source { get; } = new(
        "Frame, centring marks, reference grid", "ISO 5457", "1999", "", Certainty.Thin,
        "borders: one drafting page and memory (an older rule had 20 mm all round on A0 and A1); the rest from memory");

    /// <summary>The filing border.</summary>
    public static Length LeftBorder { get; } = Mm(20);

    public static Length OtherBorder { get; } = Mm(10);

    public static Length FrameLineWidth { get; } = Mm(0.7);

    public static Length CentringMarkLineWidth { get; } = Mm(0.7);

    /// <summary>How far a centring mark runs on past the frame into the drawing space, about. The marks stand in the middle of the trimmed sheet, not of the frame.</summary>
    public static Length CentringMarkPastFrame { get; } = Mm(10);

    /// <summary>Width of the strip outside the frame that holds the reference grid; centring marks begin at its edge.</summary>
    public static Length GridStrip { get; } = Mm(5);

    /// <summary>Pitch of the reference grid, counted from the centring marks.</summary>
    public static Length FieldLength { get; } = Mm(50);

    public static Length FieldLetterHeight { get; } = Mm(3.5);

    public static Length FieldLineWidth { get; } = Mm(0.35);

    /// <summary>Letters of the rows, top to bottom: no I, no O.</summary>
    public static string RowLetters => "ABCDEFGHJKLMNPQRSTUVWXYZ";

    /// <summary>A trimming mark is two such bars laid over each other at each corner.</summary>
    public static Length TrimmingMarkLength { get; } = Mm(10);

    public static Length TrimmingMarkWidth { get; } = Mm(5);

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
