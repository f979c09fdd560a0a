namespace LeverDraw.Writers.Dxf;

/// <summary>Handles of the records every file has; all others are counted on from <see cref="FirstFree"/> in writing order.</summary>
internal static class DxfHandle
{
    public const long None = 0;
    public const long VportTable = 0x1;
    public const long LinetypeTable = 0x2;
    public const long LayerTable = 0x3;
    public const long StyleTable = 0x4;
    public const long ViewTable = 0x5;
    public const long UcsTable = 0x6;
    public const long ApplicationTable = 0x7;
    public const long DimensionStyleTable = 0x8;
    public const long BlockRecordTable = 0x9;
    public const long ModelSpace = 0xA;
    public const long PaperSpace = 0xB;
    public const long RootDictionary = 0xC;
    public const long GroupDictionary = 0xD;
    public const long LayoutDictionary = 0xE;
    public const long PlotStyleDictionary = 0xF;
    public const long PlotStyle = 0x10;
    public const long ModelLayout = 0x11;
    public const long PaperLayout = 0x12;
    public const long LetteringStyle = 0x13;
    public const long FirstFree = 0x20;
}
