namespace LeverDraw.Writers.Dxf;

/// <summary>The file version to write; see docs/adr/0003-dxf-model-space.md.</summary>
public enum DxfVersion
{
    /// <summary>Release 2000 in plain ASCII, unless a string needs more: then release 2010.</summary>
    Automatic,

    /// <summary>Release 2000 (AC1015); characters outside ASCII are written as <c>\U+XXXX</c>, which few readers show as they should.</summary>
    R2000,

    /// <summary>Release 2010 (AC1024), UTF-8.</summary>
    R2010,
}

public enum DxfContent
{
    /// <summary>The whole drawing.</summary>
    Full,

    /// <summary>Only closed outlines and hole centres, for cutting and CAM.</summary>
    OutlinesOnly,
}

public sealed record DxfOptions(DxfVersion Version = DxfVersion.Automatic, DxfContent Content = DxfContent.Full);
