using System.Globalization;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Writers.Dxf;

/// <summary>The order of a DXF file after its header: classes, tables, blocks, entities, objects.</summary>
internal sealed class DxfContentWriter
{
    private readonly DxfPage page;
    private readonly PlotSheet sheet;
    private readonly DxfContent content;
    private readonly DxfInk ink;
    private readonly DxfDimensions dimensions;
    private readonly PlotDimension[] measured;
    private readonly ILookup<string, PlotItem> ownInk;

    public DxfContentWriter(DxfPage page, PlotSheet sheet, DxfContent content)
    {
        (this.page, this.sheet, this.content) = (page, sheet, content);
        Space = new DxfSpace(sheet);
        ink = new DxfInk(page, Space);
        dimensions = new DxfDimensions(page, Space);
        Styles = new DxfDimensionStyles(sheet, Space);
        measured = content == DxfContent.Full ? [.. sheet.Dimensions.Where(DxfDimensions.IsEntity)] : [];
        ownInk = sheet.Items.Where(i => i.Owner is not null).ToLookup(i => i.Owner!, StringComparer.Ordinal);
        Extents = DxfExtents.Of(sheet, Space, content);
        Limits = content == DxfContent.Full ? DxfExtents.Sheet(sheet, Space) : Extents;
        PlotDimension? bare = measured.FirstOrDefault(d => !ownInk.Contains(d.Id));
        if (bare is not null)
            throw new ArgumentException($"Dimension '{bare.Id}' has no ink, so most readers would not show it.", nameof(sheet));
    }

    public DxfSpace Space { get; }

    public DxfDimensionStyles Styles { get; }

    public Box2D Extents { get; }

    public Box2D Limits { get; }

    public void Write()
    {
        Section("CLASSES"u8);
        page.Word(0, "ENDSEC"u8);
        string[] names = [.. Enumerable.Range(1, measured.Length).Select(n => string.Create(CultureInfo.InvariantCulture, $"*D{n}"))];
        long[] records = new DxfTables(page).Write(sheet, content, Extents, Styles, names);
        Blocks(names, records);
        Section("ENTITIES"u8);
        foreach (PlotView view in sheet.Views.Where(v => v.IsMain))
            ink.Outlines(view, DxfLayers.Outline(sheet.State));
        if (content == DxfContent.Full)
            Drawing(names);
        page.Word(0, "ENDSEC"u8);
        new DxfObjects(page).Write(Extents, Limits);
        page.Word(0, "EOF"u8);
    }

    private void Section(ReadOnlySpan<byte> name)
    {
        page.Word(0, "SECTION"u8);
        page.Word(2, name);
    }

    private void Blocks(string[] names, long[] records)
    {
        Section("BLOCKS"u8);
        Block("*Model_Space", DxfHandle.ModelSpace, []);
        Block("*Paper_Space", DxfHandle.PaperSpace, []);
        for (int i = 0; i < names.Length; i++)
            Block(names[i], records[i], ownInk[measured[i].Id]);
        page.Word(0, "ENDSEC"u8);
    }

    private void Block(string name, long record, IEnumerable<PlotItem> items)
    {
        bool anonymous = name.StartsWith("*D", StringComparison.Ordinal);
        BlockEnd("BLOCK"u8, record, "AcDbBlockBegin"u8);
        page.Name(2, name);
        page.Integer(70, anonymous ? 1 : 0);
        page.Point(10, Point2D.Origin);
        page.Name(3, name);
        page.Empty(1);
        foreach (PlotItem item in items)
            ink.Write(item, record, DxfLayers.Dimensions);
        BlockEnd("ENDBLK"u8, record, "AcDbBlockEnd"u8);
    }

    private void BlockEnd(ReadOnlySpan<byte> type, long record, ReadOnlySpan<byte> marker)
    {
        page.Record(type, record);
        page.Word(100, "AcDbEntity"u8);
        if (record == DxfHandle.PaperSpace)
            page.Integer(67, 1);
        page.Word(8, "0"u8);
        page.Word(100, marker);
    }

    /// <summary>All ink but what blocks hold and what the outlines already say; a note is plain ink on the dimensions' layer.</summary>
    private void Drawing(string[] names)
    {
        var inBlocks = measured.Select(d => d.Id).ToHashSet(StringComparer.Ordinal);
        foreach (PlotItem item in sheet.Items)
        {
            if (Space.IsOutlineTwin(item) || (item.Owner is { } owner && inBlocks.Contains(owner)))
                continue;
            ink.Write(item, DxfHandle.ModelSpace, item.Owner is null ? null : DxfLayers.Dimensions);
        }

        for (int i = 0; i < names.Length; i++)
            dimensions.Write(measured[i], names[i], Styles.NameOf(measured[i]));
    }
}
