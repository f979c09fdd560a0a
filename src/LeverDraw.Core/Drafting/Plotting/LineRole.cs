namespace LeverDraw.Drafting.Plotting;

/// <summary>What a piece of ink is for. Writers turn it into a class, a layer and a pen; nothing else decides how a line looks.</summary>
public enum LineRole
{
    /// <summary>The outline of a view: closed loops only.</summary>
    Outline,

    /// <summary>A visible edge inside an outline, or part of one that is not closed (a detail view).</summary>
    Edge,

    /// <summary>A part's raised letters: narrow, since at full size a wide line would fill them.</summary>
    RaisedMark,
    Hidden,
    Centre,

    /// <summary>Long-dashed double-dotted: neighbouring parts, the finished part on a casting.</summary>
    Phantom,

    /// <summary>The outline of a cut face.</summary>
    Section,
    Hatch,

    /// <summary>Dimension lines, extension lines, leaders, arrowheads, detail circles.</summary>
    Dimension,

    /// <summary>Thick ends of a cutting plane's line.</summary>
    CuttingPlane,
    Lettering,

    /// <summary>Frame, centring marks, check bar.</summary>
    Frame,
    TitleBlock,

    /// <summary>Lines of a table or of a box in the notes.</summary>
    Table,

    /// <summary>Feature-control frames, surface-texture signs, datum triangles.</summary>
    Symbol,
    Parting,
    Allowance,
    OverlayA,
    OverlayB,
}
