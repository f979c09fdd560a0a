using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Views;

/// <summary>A view drawn and annotated at one scale, in paper millimetres about the view's own origin: a rigid block, ready to be put on the sheet.</summary>
/// <param name="Bounds">Of all its ink, lettering's clearance included.</param>
/// <param name="Core">Of the view itself, without annotations.</param>
/// <param name="DrawWithin">Its ink, given the box that its annotations may use, which is not smaller than <paramref name="Bounds"/>: drawn only once it is known that the block goes on the sheet.</param>
/// <param name="Unplaced">Names of annotations that found no clear place.</param>
public sealed record ViewBlock(ViewSource Source, double Scale, Box2D Bounds, Box2D Core, Func<Box2D, BlockInk> DrawWithin, ImmutableArray<string> Unplaced)
{
    /// <summary>Between the view and its caption, in the caption's height.</summary>
    public const double CaptionGap = 0.8;

    /// <summary>Drawn anew at each call.</summary>
    public ImmutableArray<PlotItem> Items => Draw().Items;

    /// <summary>Its ink within its own room.</summary>
    public BlockInk Draw() => DrawWithin(Bounds);

    /// <summary>The same with a caption over the middle of the view.</summary>
    /// <param name="scale">The words after the name, and after the sign of a turned view: the view's own scale, or none.</param>
    /// <param name="level">The least height that the caption stands above, so that those of a row are level; the block's own top where none is given.</param>
    public ViewBlock Captioned(string name, DraftingStyle style, string scale = "", double level = double.NegativeInfinity)
    {
        double height = style.CaptionLettering;
        var caption = new ViewCaption(name, Source.Turned, scale, height);
        double width = caption.Width;
        double under = Math.Max(Bounds.MaxY, level);
        var anchor = new Point2D(Core.Centre.X - (width / 2), under + (CaptionGap * height));
        Func<Box2D, BlockInk> bare = DrawWithin;
        Box2D ink = new(anchor.X - 1, anchor.Y - 1, anchor.X + width + 1, anchor.Y + height + 1);
        return this with
        {
            Bounds = Bounds.Union(ink),
            DrawWithin = room => bare(room with { MaxY = Math.Min(room.MaxY, under) }).With(caption.Ink(anchor, Source.Id), ink),
        };
    }
}
