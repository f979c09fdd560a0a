using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Writers.Dxf;

/// <summary>DIMENSION entities. Each names the block that holds its picture and the whole text, so no reader has to work anything out.</summary>
internal sealed class DxfDimensions(DxfPage page, DxfSpace space)
{
    private const int OwnBlock = 32;
    private const int TextPlacedByHand = 128;
    private const int MiddleCentre = 5;
    private const int OrdinateKind = 6;
    private const int OrdinateX = 64;

    /// <summary>False for what is plain ink: a note measures nothing, and an arc's length has no entity that old readers know.</summary>
    public static bool IsEntity(PlotDimension dimension) => dimension.Kind is not (PlotDimensionKind.Note or PlotDimensionKind.ArcLength);

    public void Write(PlotDimension dimension, string block, string style)
    {
        Point2D[] at = [.. dimension.Points.Select(space.Place)];
        switch (dimension.Kind)
        {
            case PlotDimensionKind.Ordinate when AlongX(dimension) is { } alongX:
                Ordinate(dimension, at, alongX, block, style);
                break;
            case PlotDimensionKind.Linear or PlotDimensionKind.Chain or PlotDimensionKind.Baseline or PlotDimensionKind.Ordinate:
                Linear(dimension, at, block, style);
                break;
            case PlotDimensionKind.Diameter:
                Common(dimension, at[0], 3, at[0].DistanceTo(at[1]), block, style);
                Round("AcDbDiametricDimension"u8, at[1]);
                break;
            case PlotDimensionKind.Radius:
                Common(dimension, at[0], 4, at[0].DistanceTo(at[1]), block, style);
                Round("AcDbRadialDimension"u8, at[1]);
                break;
            case PlotDimensionKind.Angle:
                Angle(dimension, at, block, style);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(dimension), "It has no entity.");
        }
    }

    /// <summary>Always the rotated kind with its true angle: readers measure the aligned kind differently.</summary>
    private void Linear(PlotDimension dimension, Point2D[] at, string block, string style)
    {
        Vector2D along = Vector2D.FromAngle(dimension.Direction);
        Point2D onLine = at[1] + (along.Left * (at[2] - at[1]).Dot(along.Left));
        Common(dimension, onLine, 0, Math.Abs((at[1] - at[0]).Dot(along)), block, style);
        page.Word(100, "AcDbAlignedDimension"u8);
        page.Point(13, at[0]);
        page.Point(14, at[1]);
        page.Real(50, DxfShapes.Degrees(dimension.Direction));
        page.Word(100, "AcDbRotatedDimension"u8);
    }

    /// <summary>From the zero at 10 to the point at 13; the extension line ends at 14.</summary>
    private void Ordinate(PlotDimension dimension, Point2D[] at, bool alongX, string block, string style)
    {
        Vector2D from = at[1] - at[0];
        Common(dimension, at[0], alongX ? OrdinateKind + OrdinateX : OrdinateKind, Math.Abs(alongX ? from.X : from.Y), block, style);
        page.Word(100, "AcDbOrdinateDimension"u8);
        page.Point(13, at[1]);
        page.Point(14, at[2]);
    }

    /// <summary>Null for a sloping one: an ordinate entity measures along x or y only, so it goes out as a linear one.</summary>
    private static bool? AlongX(PlotDimension dimension)
    {
        Vector2D along = Vector2D.FromAngle(dimension.Direction);
        return Math.Abs(along.Y) < 1e-12 ? true : Math.Abs(along.X) < 1e-12 ? false : null;
    }

    private void Round(ReadOnlySpan<byte> marker, Point2D near)
    {
        page.Word(100, marker);
        page.Point(15, near);
        page.Real(40, 0);
    }

    /// <summary>Three points and the arc's place, counter-clockwise; the measured value is in radians.</summary>
    private void Angle(PlotDimension dimension, Point2D[] at, string block, string style)
    {
        double turned = (at[2] - at[0]).Angle - (at[1] - at[0]).Angle;
        if (turned < 0)
            turned += 2 * Math.PI;
        Common(dimension, at[3], 5, turned, block, style);
        page.Word(100, "AcDb3PointAngularDimension"u8);
        page.Point(13, at[1]);
        page.Point(14, at[2]);
        page.Point(15, at[0]);
        page.Real(40, 0);
    }

    private void Common(PlotDimension dimension, Point2D defining, int kind, double measured, string block, string style)
    {
        page.Entity("DIMENSION"u8, new DxfTarget(DxfHandle.ModelSpace, DxfLayers.Dimensions));
        page.Word(100, "AcDbDimension"u8);
        if (page.Encoding == DxfEncoding.Utf8)
            page.Integer(280, 0);
        page.Name(2, block);
        page.Point(10, defining);
        page.Point(11, space.Place(dimension.TextMiddle));
        page.Integer(70, kind + OwnBlock + TextPlacedByHand);
        page.Integer(71, MiddleCentre);
        page.Real(42, measured);
        page.Encoded(1, DxfString.Paragraph(dimension.Text, page.Encoding));
        page.Name(3, style);
    }
}
