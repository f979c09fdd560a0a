using LeverDraw.Geometry;

namespace LeverDraw.Writers.Dxf;

/// <summary>The OBJECTS section: the root dictionary and what must hang from it. Nothing here is drawn.</summary>
internal sealed class DxfObjects(DxfPage page)
{
    public void Write(Box2D extents, Box2D limits)
    {
        page.Word(0, "SECTION"u8);
        page.Word(2, "OBJECTS"u8);
        Dictionary(DxfHandle.RootDictionary, DxfHandle.None, [("ACAD_GROUP", DxfHandle.GroupDictionary), ("ACAD_LAYOUT", DxfHandle.LayoutDictionary), ("ACAD_PLOTSTYLENAME", DxfHandle.PlotStyleDictionary)]);
        Dictionary(DxfHandle.GroupDictionary, DxfHandle.RootDictionary, []);
        Dictionary(DxfHandle.LayoutDictionary, DxfHandle.RootDictionary, [("Model", DxfHandle.ModelLayout), ("Layout1", DxfHandle.PaperLayout)]);
        PlotStyles();
        Layout(DxfHandle.ModelLayout, "Model", 0, DxfHandle.ModelSpace, extents, limits);
        Layout(DxfHandle.PaperLayout, "Layout1", 1, DxfHandle.PaperSpace, extents, limits);
        page.Word(0, "ENDSEC"u8);
    }

    private void Dictionary(long handle, long owner, ReadOnlySpan<(string Key, long Handle)> entries)
    {
        page.Record("DICTIONARY"u8, owner, handle);
        page.Word(100, "AcDbDictionary"u8);
        page.Integer(281, 1);
        foreach ((string key, long entry) in entries)
        {
            page.Name(3, key);
            page.Handle(350, entry);
        }
    }

    private void PlotStyles()
    {
        page.Record("ACDBDICTIONARYWDFLT"u8, DxfHandle.RootDictionary, DxfHandle.PlotStyleDictionary);
        page.Word(100, "AcDbDictionary"u8);
        page.Integer(281, 1);
        page.Word(3, "Normal"u8);
        page.Handle(350, DxfHandle.PlotStyle);
        page.Word(100, "AcDbDictionaryWithDefault"u8);
        page.Handle(340, DxfHandle.PlotStyle);
        page.Record("ACDBPLACEHOLDER"u8, DxfHandle.PlotStyleDictionary, DxfHandle.PlotStyle);
    }

    private void Layout(long handle, string name, int tab, long space, Box2D extents, Box2D limits)
    {
        page.Record("LAYOUT"u8, DxfHandle.LayoutDictionary, handle);
        page.Word(100, "AcDbPlotSettings"u8);
        page.Empty(1);
        page.Word(2, "none_device"u8);
        page.Empty(4);
        page.Empty(6);
        for (int code = 40; code <= 49; code++)
            page.Real(code, 0);
        page.Real(140, 0);
        page.Real(141, 0);
        page.Real(142, 1);
        page.Real(143, 1);
        page.Integer(70, tab == 0 ? 1024 : 0);
        page.Integer(72, 1);
        page.Integer(73, 0);
        page.Integer(74, 5);
        page.Empty(7);
        page.Integer(75, 16);
        page.Real(147, 1);
        page.Real(148, 0);
        page.Real(149, 0);
        page.Word(100, "AcDbLayout"u8);
        page.Name(1, name);
        page.Integer(70, 1);
        page.Integer(71, tab);
        page.Pair(10, new(limits.MinX, limits.MinY));
        page.Pair(11, new(limits.MaxX, limits.MaxY));
        page.Point(12, Point2D.Origin);
        page.Point(14, new(extents.MinX, extents.MinY));
        page.Point(15, new(extents.MaxX, extents.MaxY));
        page.Real(146, 0);
        page.Point(13, Point2D.Origin);
        page.Point(16, 1, 0, 0);
        page.Point(17, 0, 1, 0);
        page.Integer(76, 0);
        page.Handle(330, space);
    }
}
