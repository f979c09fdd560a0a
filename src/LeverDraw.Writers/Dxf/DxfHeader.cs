using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Writers.Dxf;

/// <summary>The HEADER section: version, unit, extents, current names. No date, user or identifier: the same sheet gives the same bytes.</summary>
internal sealed class DxfHeader(DxfPage page)
{
    public void Write(PlotSheet sheet, DxfSpace space, Box2D extents, Box2D limits, string dimensionStyle, long handleSeed)
    {
        bool inch = sheet.Unit == SheetUnit.Inch;
        page.Word(0, "SECTION"u8);
        page.Word(2, "HEADER"u8);
        Word("$ACADVER"u8, 1, page.Encoding == DxfEncoding.Utf8 ? "AC1024"u8 : "AC1015"u8);
        page.Word(9, "$HANDSEED"u8);
        page.Handle(5, handleSeed);
        Word("$DWGCODEPAGE"u8, 3, "ANSI_1252"u8);
        Point("$INSBASE"u8, Point2D.Origin);
        Point("$EXTMIN"u8, new(extents.MinX, extents.MinY));
        Point("$EXTMAX"u8, new(extents.MaxX, extents.MaxY));
        Pair("$LIMMIN"u8, new(limits.MinX, limits.MinY));
        Pair("$LIMMAX"u8, new(limits.MaxX, limits.MaxY));
        Real("$LTSCALE"u8, space.FromPaper);
        Real("$TEXTSIZE"u8, sheet.LetteringHeight * space.FromPaper);
        page.Word(9, "$TEXTSTYLE"u8);
        page.Name(7, DxfTables.LetteringStyle);
        Word("$CLAYER"u8, 8, "0"u8);
        Word("$CELTYPE"u8, 6, "ByLayer"u8);
        Integer("$CECOLOR"u8, 62, 256);
        page.Word(9, "$DIMSTYLE"u8);
        page.Name(2, dimensionStyle);
        Integer("$LUNITS"u8, 70, 2);
        Integer("$LUPREC"u8, 70, inch ? 4 : 3);
        Integer("$AUNITS"u8, 70, 0);
        Integer("$AUPREC"u8, 70, 1);
        Integer("$MEASUREMENT"u8, 70, inch ? 0 : 1);
        Integer("$INSUNITS"u8, 70, inch ? 1 : 4);
        Integer("$LWDISPLAY"u8, 290, 1);
        page.Word(0, "ENDSEC"u8);
    }

    private void Word(ReadOnlySpan<byte> name, int code, ReadOnlySpan<byte> value)
    {
        page.Word(9, name);
        page.Word(code, value);
    }

    private void Integer(ReadOnlySpan<byte> name, int code, int value)
    {
        page.Word(9, name);
        page.Integer(code, value);
    }

    private void Real(ReadOnlySpan<byte> name, double value)
    {
        page.Word(9, name);
        page.Real(40, value);
    }

    private void Pair(ReadOnlySpan<byte> name, Point2D value)
    {
        page.Word(9, name);
        page.Pair(10, value);
    }

    private void Point(ReadOnlySpan<byte> name, Point2D value)
    {
        page.Word(9, name);
        page.Point(10, value);
    }
}
