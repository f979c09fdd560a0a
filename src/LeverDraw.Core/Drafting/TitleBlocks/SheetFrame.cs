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
    /// <summary>The strip of the reference grid outside the frame, millimetres (ISO 5457, from memory).</summary>
    private const double Strip = 5;

    /// <summary>Centring marks end this far inside the frame; blocks keep further away, so a mark meets nothing.</summary>
    private const double MarkInside = 4;

    private const double GridLettering = 2.5;

    /// <summary>The drawing field inside the frame.</summary>
    public static Box2D Field(SheetFormat sheet) => new(
        sheet.Borders.Left.Millimetres,
        sheet.Borders.Bottom.Millimetres,
        sheet.Width.Millimetres - sheet.Borders.Right.Millimetres,
        sheet.Height.Millimetres - sheet.Borders.Top.Millimetres);

    public static ImmutableArray<PlotItem> Draw(SheetFormat sheet, Box2D title)
    {
        var items = ImmutableArray.CreateBuilder<PlotItem>();
        Box2D field = Field(sheet);
        items.AddRange(Rectangle(field, LineRole.Frame));
        double strip = Math.Min(Strip, Math.Min(sheet.Borders.Right.Millimetres, sheet.Borders.Bottom.Millimetres) - 1);
        Point2D middle = field.Centre;
        void Mark(Point2D from, Point2D to) => items.Add(new PlotStroke(LineRole.Frame, new LineEdge(from, to)));
        Mark(new Point2D(field.MinX - strip, middle.Y), new Point2D(field.MinX + MarkInside, middle.Y));
        Mark(new Point2D(field.MaxX + strip, middle.Y), new Point2D(field.MaxX - MarkInside, middle.Y));
        Mark(new Point2D(middle.X, field.MaxY + strip), new Point2D(middle.X, field.MaxY - MarkInside));
        double inside = title.MinX <= middle.X ? 0 : MarkInside;
        Mark(new Point2D(middle.X, field.MinY - strip), new Point2D(middle.X, field.MinY + inside));
        if (sheet.FieldsAlongWidth > 0)
            items.AddRange(Grid(field, strip));
        return items.ToImmutable();
    }

    /// <summary>50 mm fields counted from the centring marks: numbers left to right, letters top to bottom.</summary>
    private static IEnumerable<PlotItem> Grid(Box2D field, double strip)
    {
        foreach (PlotItem side in Rectangle(field.Inflated(strip), LineRole.Table))
            yield return side;
        double pitch = SheetLayout.FieldLength.Millimetres;
        double[] xs = Borders(field.MinX, field.MaxX, pitch);
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

        double[] ys = Borders(field.MinY, field.MaxY, pitch);
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

    /// <summary>Field borders from end to end; a rest shorter than a third of a field joins its neighbour.</summary>
    private static double[] Borders(double from, double to, double pitch)
    {
        double middle = (from + to) / 2;
        int half = (int)Math.Floor((((to - from) / 2) / pitch) + (2.0 / 3));
        var all = new List<double> { from };
        for (int i = 1 - half; i < half; i++)
            all.Add(middle + (i * pitch));
        all.Add(to);
        return [.. all];
    }

    private static PlotStroke Tick(Point2D from, Point2D to) => new(LineRole.Table, new LineEdge(from, to));

    private static PlotText Centred(string text, Point2D at) =>
        StrokeLettering.Compose(text, at - new Vector2D(StrokeLettering.WidthOf(text, GridLettering) / 2, GridLettering / 2), GridLettering);

    private static IEnumerable<PlotItem> Rectangle(Box2D box, LineRole role)
    {
        Point2D[] corners = [new(box.MinX, box.MinY), new(box.MaxX, box.MinY), new(box.MaxX, box.MaxY), new(box.MinX, box.MaxY)];
        for (int i = 0; i < 4; i++)
            yield return new PlotStroke(role, new LineEdge(corners[i], corners[(i + 1) % 4]));
    }
}
