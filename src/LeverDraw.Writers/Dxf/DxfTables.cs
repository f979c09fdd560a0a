using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Writers.Dxf;

/// <summary>The TABLES section: all nine tables, empty ones too, since strict readers miss them.</summary>
internal sealed class DxfTables(DxfPage page)
{
    public const string LetteringStyle = "LETTERING";

    /// <param name="blocks">Names of the dimensions' blocks.</param>
    /// <returns>The handle of each block's record.</returns>
    public long[] Write(PlotSheet sheet, DxfContent content, Box2D extents, DxfDimensionStyles styles, IReadOnlyList<string> blocks)
    {
        page.Word(0, "SECTION"u8);
        page.Word(2, "TABLES"u8);
        Begin("VPORT"u8, DxfHandle.VportTable, 1);
        Viewport(extents);
        End();
        Begin("LTYPE"u8, DxfHandle.LinetypeTable, DxfLinetype.All.Length);
        foreach (DxfLinetype linetype in DxfLinetype.All)
            Linetype(linetype);
        End();
        DxfLayer[] layers = [.. DxfLayers.Of(sheet.State, content)];
        Begin("LAYER"u8, DxfHandle.LayerTable, layers.Length);
        foreach (DxfLayer layer in layers)
            Layer(layer);
        End();
        Begin("STYLE"u8, DxfHandle.StyleTable, 2);
        TextStyle("Standard", DxfHandle.None);
        TextStyle(LetteringStyle, DxfHandle.LetteringStyle);
        End();
        Begin("VIEW"u8, DxfHandle.ViewTable, 0);
        End();
        Begin("UCS"u8, DxfHandle.UcsTable, 0);
        End();
        Begin("APPID"u8, DxfHandle.ApplicationTable, 1);
        Record("APPID"u8, DxfHandle.ApplicationTable, "AcDbRegAppTableRecord"u8, "ACAD");
        End();
        Begin("DIMSTYLE"u8, DxfHandle.DimensionStyleTable, styles.Names.Length + 1);
        styles.Write(page);
        End();
        long[] records = BlockRecords(blocks);
        page.Word(0, "ENDSEC"u8);
        return records;
    }

    private void Begin(ReadOnlySpan<byte> name, long handle, int count)
    {
        page.Word(0, "TABLE"u8);
        page.Word(2, name);
        page.Handle(5, handle);
        page.Handle(330, DxfHandle.None);
        page.Word(100, "AcDbSymbolTable"u8);
        page.Integer(70, count);
        if (handle == DxfHandle.DimensionStyleTable)
            page.Word(100, "AcDbDimStyleTable"u8);
    }

    private void End() => page.Word(0, "ENDTAB"u8);

    private void Record(ReadOnlySpan<byte> type, long table, ReadOnlySpan<byte> marker, string name, long handle = DxfHandle.None)
    {
        page.Record(type, table, handle);
        page.Word(100, "AcDbSymbolTableRecord"u8);
        page.Word(100, marker);
        page.Name(2, name);
        page.Integer(70, 0);
    }

    /// <summary>Without a view of the extents a drawing opens blank in some programs.</summary>
    private void Viewport(Box2D extents)
    {
        const double aspect = 1.5;
        const double margin = 1.1;
        Record("VPORT"u8, DxfHandle.VportTable, "AcDbViewportTableRecord"u8, "*Active");
        page.Pair(10, Point2D.Origin);
        page.Pair(11, new(1, 1));
        page.Pair(12, extents.Centre);
        page.Pair(13, Point2D.Origin);
        page.Pair(14, new(10, 10));
        page.Pair(15, new(10, 10));
        page.Point(16, 0, 0, 1);
        page.Point(17, Point2D.Origin);
        page.Real(40, margin * Math.Max(extents.Height, extents.Width / aspect));
        page.Real(41, aspect);
        page.Real(42, 50);
        page.Real(43, 0);
        page.Real(44, 0);
        page.Real(50, 0);
        page.Real(51, 0);
        page.Integer(71, 0);
        page.Integer(72, 1000);
        page.Integer(73, 1);
        page.Integer(74, 3);
        page.Integer(75, 0);
        page.Integer(76, 0);
        page.Integer(77, 0);
        page.Integer(78, 0);
    }

    private void Linetype(DxfLinetype linetype)
    {
        Record("LTYPE"u8, DxfHandle.LinetypeTable, "AcDbLinetypeTableRecord"u8, linetype.Name);
        page.Name(3, linetype.Description);
        page.Integer(72, 'A');
        page.Integer(73, linetype.Elements.Length);
        page.Real(40, linetype.Elements.Sum(Math.Abs));
        foreach (double element in linetype.Elements)
        {
            page.Real(49, element);
            page.Integer(74, 0);
        }
    }

    private void Layer(DxfLayer layer)
    {
        Record("LAYER"u8, DxfHandle.LayerTable, "AcDbLayerTableRecord"u8, layer.Name);
        page.Integer(62, layer.Colour);
        page.Name(6, layer.Linetype);
        if (!layer.Plotted)
            page.Integer(290, 0);
        page.Integer(370, layer.Weight);
        page.Handle(390, DxfHandle.PlotStyle);
    }

    private void TextStyle(string name, long handle)
    {
        Record("STYLE"u8, DxfHandle.StyleTable, "AcDbTextStyleTableRecord"u8, name, handle);
        page.Real(40, 0);
        page.Real(41, 1);
        page.Real(50, 0);
        page.Integer(71, 0);
        page.Real(42, 2.5);
        page.Word(3, "txt.shx"u8);
        page.Empty(4);
    }

    private long[] BlockRecords(IReadOnlyList<string> blocks)
    {
        Begin("BLOCK_RECORD"u8, DxfHandle.BlockRecordTable, blocks.Count + 2);
        BlockRecord("*Model_Space", DxfHandle.ModelSpace, DxfHandle.ModelLayout);
        BlockRecord("*Paper_Space", DxfHandle.PaperSpace, DxfHandle.PaperLayout);
        long[] records = new long[blocks.Count];
        for (int i = 0; i < records.Length; i++)
        {
            records[i] = page.NewHandle();
            BlockRecord(blocks[i], records[i], DxfHandle.None);
        }

        End();
        return records;
    }

    private void BlockRecord(string name, long handle, long layout)
    {
        page.Record("BLOCK_RECORD"u8, DxfHandle.BlockRecordTable, handle);
        page.Word(100, "AcDbSymbolTableRecord"u8);
        page.Word(100, "AcDbBlockTableRecord"u8);
        page.Name(2, name);
        page.Handle(340, layout);
        if (page.Encoding != DxfEncoding.Utf8)
            return;
        page.Integer(70, 4);
        page.Integer(280, 1);
        page.Integer(281, 0);
    }
}
