using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Sheets;

/// <summary>What is known, estimated or guessed of the room that views take on paper. Lives as long as one composing.</summary>
internal sealed class ViewSizes
{
    /// <summary>Of the room that annotations take round a view, how much is surely needed at another scale, and (per lettering height) in another style.</summary>
    private const double SameStyle = 0.85, OtherStyle = 0.8;

    private readonly Dictionary<ViewKey, ViewBlock> _placed = [];
    private readonly Dictionary<(string View, DraftingStyle Style), PlacedView> _first = [];
    private readonly Dictionary<string, PlacedView> _firstOfAll = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double> _seen = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Box2D> _bare = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Box2D> _drawn = new(StringComparer.Ordinal);

    /// <summary>The view as it was placed, if it was.</summary>
    public ViewBlock? Placed(in ViewKey key) => _placed.GetValueOrDefault(key);

    /// <summary>Takes note of a view that has been placed.</summary>
    public void Keep(in ViewKey key, ViewBlock block)
    {
        var placed = new PlacedView(block, key.Style);
        _first.TryAdd((key.View, key.Style), placed);
        _firstOfAll.TryAdd(key.View, placed);
        _placed.Add(key, block);
    }

    /// <summary>The least room a view is likely to take: what it takes if it has been placed so; else what it takes at a cheaper price of width, less what that price is for; else by what it takes where it was first placed; of one that has not been placed at all, what is drawn (of a main view, its outlines).</summary>
    /// <param name="of">Of the estimated room for annotations, what is counted.</param>
    /// <remarks>Lettering and dimension lines round a view hardly depend on its scale. The shares make up for sizes that find room inside a larger view, and for thrift.</remarks>
    public (double Width, double Height) Estimate(ViewSource view, double factor, DraftingStyle style, double thrift, double of = 1)
    {
        double caption = CaptionOf(view, style);
        var key = new ViewKey(view.Id, factor, style, thrift);
        if (Placed(key) is { } placed)
            return (placed.Bounds.Width, placed.Bounds.Height + caption);
        if (AtCheaperPrice(key) is { } cheaper)
        {
            Box2D least = cheaper.Bounds.Intersection(Sprawl.Around(cheaper.Core, style, thrift).Free);
            return (least.Width, least.Height + caption);
        }

        double share = SameStyle;
        if (!_first.TryGetValue((view.Id, style), out PlacedView? known))
        {
            if (!_firstOfAll.TryGetValue(view.Id, out known))
            {
                Box2D box = Least(view);
                return (box.Width * factor, (box.Height * factor) + caption);
            }

            share = OtherStyle * style.LetteringHeight / known.Style.LetteringHeight;
        }

        share *= of;
        Box2D core = known.Block.Core, bounds = known.Block.Bounds;
        double grown = factor / known.Block.Scale;
        return (
            (core.Width * grown) + ((bounds.Width - core.Width) * share),
            (core.Height * grown) + ((bounds.Height - core.Height) * share) + caption);
    }

    /// <summary>What a view that has not been placed may well take, by how many annotations it has. Good enough to choose where to begin, not to give a scale up.</summary>
    public (double Width, double Height) Guess(ViewSource view, double factor, DraftingStyle style)
    {
        // Own, from the levers' and pins' views: the room round them in lettering heights goes about with the root of the number.
        (double wide, double high) = view.IsMain ? (4.7, 2.2) : (6, 3);
        double room = Math.Sqrt(view.Annotations.Length) * style.LetteringHeight;
        Box2D box = Least(view);
        return ((box.Width * factor) + (wide * room), (box.Height * factor) + (high * room) + CaptionOf(view, style));
    }

    /// <summary>The box of a view's outlines as it stands on the sheet, view millimetres.</summary>
    public Box2D Bare(ViewSource view)
    {
        if (!_bare.TryGetValue(view.Id, out Box2D box))
            _bare.Add(view.Id, box = view.Outlines.Aggregate(Box2D.Empty, (b, o) => b.Union(o.Contour.Transformed(view.Orientation).Box)));
        return box;
    }

    /// <summary>Greater side of what is seen in a view, centre lines apart; view millimetres.</summary>
    public double SizeOf(ViewSource view)
    {
        if (_seen.TryGetValue(view.Id, out double size))
            return size;
        Box2D box = Box2D.Empty;
        foreach (PlotOutline outline in view.Outlines)
        {
            foreach (Edge edge in outline.Contour.Edges)
                box = box.Union(edge.Box);
        }

        foreach (ViewEdge edge in view.Edges)
        {
            if (edge.Role != LineRole.Centre)
                box = box.Union(edge.Edge.Box);
        }

        _seen.Add(view.Id, size = Math.Max(box.Width, box.Height));
        return size;
    }

    private static double CaptionOf(ViewSource view, DraftingStyle style) => view.Title is null ? 0 : (ViewBlock.CaptionGap + 1) * style.CaptionLettering;

    /// <summary>The view as placed at the dearest price below the one asked for.</summary>
    private ViewBlock? AtCheaperPrice(in ViewKey key)
    {
        foreach (double price in (ReadOnlySpan<double>)[Sprawl.Thrifty, Sprawl.Generous])
        {
            if (price < key.Thrift && Placed(key with { Thrift = price }) is { } placed)
                return placed;
        }

        return null;
    }

    private Box2D Least(ViewSource view) => view.IsMain ? Bare(view) : Drawn(view);

    /// <summary>The box of all lines of a view as it stands on the sheet, view millimetres: its block is never smaller.</summary>
    private Box2D Drawn(ViewSource view)
    {
        if (!_drawn.TryGetValue(view.Id, out Box2D box))
        {
            box = view.Loops.Aggregate(Bare(view), (b, l) => b.Union(l.Contour.Transformed(view.Orientation).Box));
            _drawn.Add(view.Id, box = view.Edges.Aggregate(box, (b, e) => b.Union(e.Edge.Transformed(view.Orientation).Box)));
        }

        return box;
    }

    /// <summary>A view as it was placed, and in which style.</summary>
    private sealed record PlacedView(ViewBlock Block, DraftingStyle Style);
}
