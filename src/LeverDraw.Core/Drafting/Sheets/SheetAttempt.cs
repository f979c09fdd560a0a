using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Standards;

namespace LeverDraw.Drafting.Sheets;

/// <summary>One try at a sheet: a paper size and a main scale. Details take their preferred enlargement, or the next smaller one that fits.</summary>
internal sealed class SheetAttempt(SheetContent content, SheetOptions options, SheetFormat sheet, DrawingScale scale, DraftingStyle style)
{
    private readonly Box2D _field = SheetFrame.Field(sheet);

    private const double NotesLettering = 2.5;

    /// <summary>Where nothing else fits: the smallest height of ISO 3098.</summary>
    private const double SmallestNotes = 1.8;

    /// <summary>Prices of width: the usual one, and those for paper that is too narrow for that.</summary>
    private const double Generous = 0.25;

    private const double Thrifty = 2;

    private const double Stingy = 8;

    /// <summary>A row this many times too wide is not made to fit by thrift (seen on random levers: it saves a third at most).</summary>
    private const double Hopeless = 1.5;

    private SheetUnit FirstUnit => options.Units is ShownUnits.Millimetres or ShownUnits.MillimetresAndInches ? SheetUnit.Millimetre : SheetUnit.Inch;

    /// <summary>The finished sheet, or null with the reason when it does not go on this paper at this scale.</summary>
    public PlotSheet? Run(out string? reason)
    {
        reason = null;
        double titleWidth = _field.Width < TitleBlockInk.FullWidth + 60 ? _field.Width : TitleBlockInk.FullWidth;
        var title = new Box2D(_field.MaxX - titleWidth, _field.MinY, _field.MaxX, _field.MinY + (TitleBlockInk.Rows * TitleBlockInk.RowHeight));
        string[] tooLong = [.. TitleBlockInk.TooLong(content.Title, titleWidth)];
        if (tooLong.Length > 0)
        {
            reason = "the title block's entries are too long: " + string.Join(", ", tooLong);
            return null;
        }

        ImmutableArray<ViewSource> projected = options.Projection == ProjectionMethod.ThirdAngle
            ? [.. content.FromLeft, content.Front, .. content.FromRight]
            : [.. content.FromRight, content.Front, .. content.FromLeft];
        if (CannotFit(projected, title))
            return null;
        double[] noteWidths = titleWidth < _field.Width ? [_field.Width - titleWidth - 14, titleWidth - 14, 100, 75] : [_field.Width - 14, 85, 75];
        foreach (double thrift in (double[])[Generous, Thrifty, Stingy])
        {
            PaperBlock[] main = [.. projected.Select(v => PaperBlock.Of(ViewBlockBuilder.Build(v, scale.Factor, null, style, thrift)))];
            double width = main.Sum(b => b.Bounds.Width) + ((main.Length + 1) * Cell.Gap);
            if (width > _field.Width * Hopeless || main.Any(b => b.Bounds.Height > _field.Height))
                return null;
            if (width > _field.Width)
                continue;
            if (WithDetails(title, noteWidths, main, thrift == Stingy ? Thrifty : Generous, ref reason) is { } plot)
                return plot;
        }

        return null;
    }

    private PlotSheet? WithDetails(Box2D title, double[] noteWidths, PaperBlock[] main, double thrift, ref string? reason)
    {
        foreach (DrawingScale detailScale in DetailScales())
        {
            PaperBlock[] others = [.. content.Others.Select(v => Detail(v, detailScale, thrift))];
            foreach ((double width, double lettering) in noteWidths.Select(w => (w, NotesLettering)).Concat(noteWidths.Select(w => (w, SmallestNotes))))
            {
                PaperBlock notes = NotesBlock.Build(content.Notes, width, lettering, FirstUnit);
                List<PlacedBlock>? placed = SheetArrangement.Best(_field, title, main, others, [notes]);
                if (placed is null)
                    continue;
                string[] unplaced = [.. placed.SelectMany(p => p.Block.View?.Unplaced ?? [])];
                if (unplaced.Length == 0)
                    return Assemble(placed, title);
                reason = "no clear place for " + string.Join(", ", unplaced);
            }

            if (content.Others.IsEmpty)
                break;
        }

        return null;
    }

    /// <summary>Scales for details: the next preferred one, twice the main scale, or the main scale itself.</summary>
    private IEnumerable<DrawingScale> DetailScales()
    {
        int at = DrawingScales.All.IndexOf(scale);
        if (at > 0)
            yield return DrawingScales.All[at - 1];
        if (scale.Factor > 1 && (at <= 0 || DrawingScales.All[at - 1].Factor != 2 * scale.Factor))
            yield return new DrawingScale(2 * scale.Drawn, scale.Real);
        yield return scale;
    }

    /// <summary>Bare views plus one tier all round: cheap to know before anything is placed.</summary>
    private bool CannotFit(ImmutableArray<ViewSource> views, Box2D title)
    {
        double ring = style.FirstTier + 4;
        double width = 0;
        double height = 0;
        foreach (ViewSource view in views)
        {
            Box2D box = view.Outlines.Aggregate(Box2D.Empty, (b, o) => b.Union(o.Contour.Transformed(view.Orientation).Box));
            width += (box.Width * scale.Factor) + ring;
            height = Math.Max(height, (box.Height * scale.Factor) + ring);
        }

        return width > _field.Width || height > _field.Height || (height > _field.Height - title.Height && width > title.MinX - _field.MinX + 1 && title.Width >= _field.Width);
    }

    private PaperBlock Detail(ViewSource view, DrawingScale detailScale, double thrift)
    {
        DrawingScale own = view.IsMain ? scale : detailScale;
        string? caption = view.Title is null ? null : own == scale ? view.Title : view.Title + "  (" + own.Text + ")";
        return PaperBlock.Of(ViewBlockBuilder.Build(view, own.Factor, caption, style, thrift));
    }

    private PlotSheet Assemble(List<PlacedBlock> placed, Box2D title)
    {
        var items = ImmutableArray.CreateBuilder<PlotItem>(512);
        var dimensions = ImmutableArray.CreateBuilder<PlotDimension>();
        var views = ImmutableArray.CreateBuilder<PlotView>();
        items.AddRange(SheetFrame.Draw(sheet, [title, .. placed.Select(p => p.Block.Bounds.Moved(p.Shift))]));
        items.AddRange(TitleBlockInk.Draw(content.Title, scale.Text, sheet.Name, options.Projection, title));
        foreach (PlacedBlock block in placed)
        {
            items.AddRange(block.Block.Items.Select(i => i.Moved(block.Shift)));
            dimensions.AddRange(block.Block.Dimensions.Select(d => d.Moved(block.Shift)));
            if (block.Block.View is not { } view)
                continue;
            Transform2D toPaper = view.Source.Orientation with { Scale = view.Scale, Translation = block.Shift };
            views.Add(new PlotView(view.Source.Id, view.Source.Title ?? view.Source.Id, toPaper, view.Scale == scale.Factor, view.Source.Outlines));
        }

        return new PlotSheet(
            sheet.Width.Millimetres,
            sheet.Height.Millimetres,
            content.Title.DrawingNumber + " " + content.Title.Title,
            content.State,
            FirstUnit,
            scale.Factor,
            style.LetteringHeight,
            style.ArrowLength,
            items.ToImmutable(),
            views.ToImmutable(),
            dimensions.ToImmutable());
    }
}
