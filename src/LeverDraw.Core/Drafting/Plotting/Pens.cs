namespace LeverDraw.Drafting.Plotting;

/// <summary>A pen: line width and dash pattern in paper millimetres (empty for a continuous line).</summary>
public sealed record Pen(double Width, double[] Dashes);

/// <summary>Which pen each role is drawn with. Line group 0.5 of ISO 128: wide 0.5, narrow 0.25, dimensions' lettering 0.35 (reference 10e, grouping from memory); patterns in multiples of width as reference 10f.</summary>
public static class Pens
{
    private const double Wide = 0.5;
    private const double Narrow = 0.25;

    private static readonly Pen WideLine = new(Wide, []);
    private static readonly Pen NarrowLine = new(Narrow, []);
    private static readonly Pen Dashed = new(Narrow, [12 * Narrow, 3 * Narrow]);
    private static readonly Pen Chain = new(Narrow, [24 * Narrow, 3 * Narrow, 0.5 * Narrow, 3 * Narrow]);
    private static readonly Pen DoubleChain = new(Narrow, [24 * Narrow, 3 * Narrow, 0.5 * Narrow, 3 * Narrow, 0.5 * Narrow, 3 * Narrow]);
    private static readonly Pen FrameLine = new(0.7, []);
    private static readonly Pen TableLine = new(0.35, []);

    public static Pen Of(LineRole role) => role switch
    {
        LineRole.Outline or LineRole.Edge or LineRole.Section or LineRole.OverlayA => WideLine,
        LineRole.CuttingPlane => WideLine,
        LineRole.Hidden => Dashed,
        LineRole.Centre or LineRole.Parting => Chain,
        LineRole.Phantom or LineRole.OverlayB => DoubleChain,
        LineRole.Frame => FrameLine,
        LineRole.TitleBlock or LineRole.Table or LineRole.Symbol or LineRole.Allowance => TableLine,
        _ => NarrowLine,
    };

    /// <summary>Stroke width of lettering of a height: h/10 (ISO 3098 type B, reference 10g).</summary>
    public static double LetteringWidth(double height) => height / 10;
}
