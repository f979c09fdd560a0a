using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;
using LeverDraw.Standards;

namespace LeverDraw.Drafting.TitleBlocks;

/// <summary>Frame, centring marks and reference grid of a sheet.</summary>
public static class SheetFrame
{
    /// <summary>A centring mark ends this far before a block that stands in its way, or it would read as a line of it.</summary>
    private const double MarkClear = 2.5;

    /// <summary>The drawing field inside the frame.</summary>
    public static Box2D Field(SheetFormat sheet) => new(
        sheet.Borders.Left.Millimetres,
        sheet.Borders.Bottom.Millimetres,
        sheet.Width.Millimetres - sheet.Borders.Right.Millimetres,
        sheet.Height.Millimetres - sheet.Borders.Top.Millimetres);

    /// <param name="occupied">Blocks inside the frame; centring marks stop short of them.</param>
    public static ImmutableArray<PlotItem> Draw(SheetFormat sheet, params ReadOnlySpan<Box2D> occupied)
    {
        var items = ImmutableArray.CreateBuilder<PlotItem>();
        Box2D field = Field(sheet);
        items.AddRange(Rectangle(field, LineRole.Frame));
        double strip = Math.Min(SheetLayout.GridStrip.Millimetres, Math.Min(sheet.Borders.Right.Millimetres, sheet.Borders.Bottom.Millimetres) - 1);
        var middle = new Point2D(sheet.Width.Millimetres / 2, sheet.Height.Millimetres / 2);
        items.AddRange(Marks(field, middle, strip, occupied));
        if (sheet.FieldsAlongWidth > 0)
            items.AddRange(Grid(sheet, field, middle, strip));
        return items.ToImmutable();
    }

    /// <summary>The four centring marks, from the outer edge of the strip over the frame and into the drawing space: alike, as far as nothing stands before any of them; where the title block stands at the frame itself, to the frame.</summary>
    private static ImmutableArray<PlotItem> Marks(Box2D field, Point2D middle, double strip, ReadOnlySpan<Box2D> occupied)
    {
        (Point2D OnFrame, Vector2D Inwards)[] all =
        [
            (new(field.MinX, middle.Y), new(1, 0)), (new(field.MaxX, middle.Y), new(-1, 0)),
            (new(middle.X, field.MaxY), new(0, -1)), (new(middle.X, field.MinY), new(0, 1)),
        ];
        double[] free = new double[all.Length];
        for (int i = 0; i < all.Length; i++)
            free[i] = Free(all[i].OnFrame, all[i].Inwards, occupied);
        double alike = free.Where(f => f > 0).DefaultIfEmpty().Min();
        return [.. all.Select((m, i) => new PlotStroke(LineRole.Frame, new LineEdge(m.OnFrame - (m.Inwards * strip), m.OnFrame + (m.Inwards * (free[i] > 0 ? alike : 0)))))];
    }

    private static double Free(Point2D onFrame, Vector2D inwards, ReadOnlySpan<Box2D> occupied)
    {
        double inside = SheetLayout.CentringMarkPastFrame.Millimetres;
        foreach (Box2D block in occupied)
        {
            Box2D near = block.Inflated(MarkClear);
            if (near.Overlaps(Box2D.Empty.Including(onFrame).Including(onFrame + (inwards * inside))))
                inside = Math.Max(0, Math.Min(inside, Nearest(near, onFrame, inwards)));
        }

        return inside;
    }

    private static double Nearest(Box2D box, Point2D from, Vector2D inwards) =>
        inwards.X > 0 ? box.MinX - from.X : inwards.X < 0 ? from.X - box.MaxX : inwards.Y > 0 ? box.MinY - from.Y : from.Y - box.MaxY;

    /// <summary>Fields counted from the centring marks: numbers left to right, letters top to bottom; the outermost take what is left.</summary>
    private static IEnumerable<PlotItem> Grid(SheetFormat sheet, Box2D field, Point2D middle, double strip)
    {
        foreach (PlotItem side in Rectangle(field.Inflated(strip), LineRole.Table))
            yield return side;
        double[] xs = Borders(field.MinX, middle.X, field.MaxX, sheet.FieldsAlongWidth);
        for (int i = 0; i + 1 < xs.Length; i++)
        {
            string number = (i + 1).ToString(CultureInfo.InvariantCulture);
            foreach (double y in (double[])[field.MinY - (strip / 2), field.MaxY + (strip / 2)])
                yield return Centred(number, new Point2D((xs[i] + xs[i + 1]) / 2, y));
            if (i == 0)
                continue;
            yield return Tick(new Point2D(xs[i], field.MinY - strip), new Point2D(xs[i], field.MinY));
            yield return Tick(new Point2D(xs[i], field.MaxY), new Point2D(xs[i], field.MaxY + strip));
        }

        double[] ys = Borders(field.MinY, middle.Y, field.MaxY, sheet.FieldsAlongHeight);
        for (int i = 0; i + 1 < ys.Length; i++)
        {
            string letter = SheetLayout.RowLetters[ys.Length - 2 - i].ToString();
            foreach (double x in (double[])[field.MinX - (strip / 2), field.MaxX + (strip / 2)])
                yield return Centred(letter, new Point2D(x, (ys[i] + ys[i + 1]) / 2));
            if (i == 0)
                continue;
            yield return Tick(new Point2D(field.MinX - strip, ys[i]), new Point2D(field.MinX, ys[i]));
            yield return Tick(new Point2D(field.MaxX, ys[i]), new Point2D(field.MaxX + strip, ys[i]));
        }
    }

    /// <summary>Field borders from end to end, an even number of fields, half of them on each side of the middle.</summary>
    private static double[] Borders(double from, double middle, double to, int fields)
    {
        int half = fields / 2;
        var all = new List<double> { from };
        for (int i = 1 - half; i < half; i++)
            all.Add(middle + (i * SheetLayout.FieldLength.Millimetres));
        all.Add(to);
        return [.. all];
    }

    private static PlotStroke Tick(Point2D from, Point2D to) => new(LineRole.Table, new LineEdge(from, to));

    private static double GridLettering => SheetLayout.FieldLetterHeight.Millimetres;

    private static PlotText Centred(string text, Point2D at) =>
        StrokeLettering.Compose(text, at - new Vector2D(StrokeLettering.WidthOf(text, GridLettering) / 2, GridLettering / 2), GridLettering);

    private static IEnumerable<PlotItem> Rectangle(Box2D box, LineRole role)
    {
        Point2D[] corners = [new(box.MinX, box.MinY), new(box.MaxX, box.MinY), new(box.MaxX, box.MaxY), new(box.MinX, box.MaxY)];
        for (int i = 0; i < 4; i++)
            yield return new PlotStroke(role, new LineEdge(corners[i], corners[(i + 1) % 4]));
    }
}
