using System.Collections.Immutable;

namespace LeverDraw.Drafting;

/// <summary>Sizes of everything that is drawn round a view, paper millimetres. One record for a whole sheet, so that rows line up.</summary>
/// <remarks>Multiples follow ISO 129-1 practice as collected in reference 10h (from memory there): overshoot about 8 d, first line about 10 mm out, further ones 6 to 8 mm.</remarks>
/// <param name="LetteringHeight">Of dimension text.</param>
/// <param name="ArrowLength">Arrowheads are three times as long as wide.</param>
/// <param name="FirstTier">From the view to the first dimension line.</param>
/// <param name="TierSpacing">Between parallel dimension lines.</param>
/// <param name="Overshoot">Of an extension line past its dimension line.</param>
/// <param name="FeatureGap">Between the feature and its extension line.</param>
/// <param name="TextGap">From a dimension line to the baseline of the text on it; brackets hang 0.25 h below that. No less than both that and the clearance, or the text would strike an extension line that runs on along its own dimension line.</param>
/// <param name="Clearance">Least free distance round any lettering.</param>
/// <param name="HatchSpacing">Between section lines.</param>
public sealed record DraftingStyle(
    double LetteringHeight,
    double ArrowLength,
    double FirstTier,
    double TierSpacing,
    double Overshoot,
    double FeatureGap,
    double TextGap,
    double Clearance,
    double HatchSpacing)
{
    /// <summary>For A4 and letter sheets: lettering 2.5.</summary>
    public static DraftingStyle Small { get; } = new(2.5, 2.5, 7, 6, 1.5, 0.8, 1.25, 0.6, 2);

    /// <summary>For crowded small sheets: lettering 1.8, the smallest of ISO 3098.</summary>
    public static DraftingStyle Tiny { get; } = new(1.8, 2, 6, 4.6, 1.25, 0.6, 0.9, 0.45, 1.6);

    /// <summary>For A3 and larger: lettering 3.5.</summary>
    public static DraftingStyle Large { get; } = new(3.5, 3.5, 10, 8.5, 2, 1, 1.7, 0.8, 2.5);

    /// <summary>For sheets larger than A3 that would stay empty otherwise: lettering 5.</summary>
    public static DraftingStyle Huge { get; } = new(5, 5, 14, 12, 2.5, 1.5, 2.4, 1.1, 3.5);

    /// <summary>Heights for notes and tables, the usual first; 1.8, the smallest of ISO 3098, only beside dimensions of 2.5.</summary>
    public ImmutableArray<double> NotesLettering => LetteringHeight > 3.5 ? [5, 3.5, 2.5] : LetteringHeight > 2.5 ? [3.5, 2.5] : [2.5, 1.8];

    /// <summary>An arrowhead is so many times as long as wide (reference 10h: inch practice 3:1).</summary>
    internal const double ArrowSlimness = 3;

    public double ArrowHalfWidth => ArrowLength / (2 * ArrowSlimness);

    public double CaptionLettering => LetteringHeight > 3.5 ? 7 : LetteringHeight > 2.5 ? 5 : 3.5;
}
