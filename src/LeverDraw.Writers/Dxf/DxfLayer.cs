using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;

namespace LeverDraw.Writers.Dxf;

/// <param name="Colour">Index colour, 1 to 255.</param>
/// <param name="Weight">Line width in 1/100 mm, one of the format's list; −3 for the reader's own.</param>
internal sealed record DxfLayer(string Name, int Colour, int Weight, string Linetype = DxfLinetype.Continuous, bool Plotted = true);

/// <summary>The layers, by what a shop does with them. Their names are a promise to users' own scripts.</summary>
internal static class DxfLayers
{
    public const string Zero = "0";
    public const string HoleCentres = "HOLE_CENTRES";
    public const string Edges = "EDGES";
    public const string Dimensions = "DIM";
    public const string Text = "TEXT";
    private const string Definitions = "Defpoints";

    private static readonly ImmutableArray<DxfLayer> Annotation =
    [
        new(Edges, 7, 50),
        new("RAISED_MARK", 7, 25),
        new("HIDDEN", 8, 25, DxfLinetype.Hidden),
        new("CENTRE", 1, 25, DxfLinetype.Centre),
        new("PHANTOM", 6, 25, DxfLinetype.Phantom),
        new("PARTING", 5, 25, DxfLinetype.Centre),
        new("ALLOWANCE", 30, 35),
        new("CORE", 94, 35),
        new("CUTTING_PLANE", 7, 50),
        new("OVERLAY_A", 7, 50),
        new("OVERLAY_B", 1, 25, DxfLinetype.Phantom),
        new("HATCH", 8, 18),
        new(Dimensions, 3, 18),
        new(Text, 4, 25),
        new("FRAME", 7, 35),
        new(Definitions, 7, -3, Plotted: false),
    ];

    /// <summary>In the order they stand in the file.</summary>
    public static IEnumerable<DxfLayer> Of(PartState state, DxfContent content) =>
    [
        new(Zero, 7, -3),
        new(Outline(state), 7, 50),
        new(HoleCentres, 1, 18),
        .. content == DxfContent.Full ? Annotation : [],
    ];

    /// <summary>Closed loops at true size, and nothing else, stand here; the state is in the name so that a casting is not cut as a finished part.</summary>
    public static string Outline(PartState state) => state switch
    {
        PartState.Finished => "OUTLINE_FINISHED",
        PartState.Casting => "OUTLINE_CASTING",
        PartState.Pattern => "OUTLINE_PATTERN",
        PartState.Pin => "OUTLINE_PIN",
        PartState.Assembly => "OUTLINE_ASSEMBLY",
        _ => throw new ArgumentOutOfRangeException(nameof(state)),
    };

    /// <summary>The layer of ink. An outline of a view at another scale is only a picture, so it goes with the edges.</summary>
    public static string Of(LineRole role) => role switch
    {
        LineRole.Outline or LineRole.Edge or LineRole.Section => Edges,
        LineRole.RaisedMark => "RAISED_MARK",
        LineRole.Hidden => "HIDDEN",
        LineRole.Centre => "CENTRE",
        LineRole.Phantom => "PHANTOM",
        LineRole.Hatch => "HATCH",
        LineRole.Dimension or LineRole.Symbol => Dimensions,
        LineRole.CuttingPlane => "CUTTING_PLANE",
        LineRole.Lettering => Text,
        LineRole.Frame or LineRole.TitleBlock or LineRole.Table => "FRAME",
        LineRole.Parting => "PARTING",
        LineRole.Allowance => "ALLOWANCE",
        LineRole.OverlayA => "OVERLAY_A",
        LineRole.OverlayB => "OVERLAY_B",
        _ => throw new ArgumentOutOfRangeException(nameof(role)),
    };
}
