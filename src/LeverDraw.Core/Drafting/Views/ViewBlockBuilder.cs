using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Views;

/// <summary>Draws one view at one scale and places its annotations.</summary>
public static class ViewBlockBuilder
{
    /// <param name="thrift">Price of width; see <see cref="PlacingContext"/>.</param>
    public static ViewBlock Build(ViewSource view, double scale, string? caption, DraftingStyle style, double thrift)
    {
        Transform2D toBlock = view.Orientation with { Scale = scale };
        var ink = new ViewInk(view, toBlock, style);
        var field = new ViewField(ink.Strokes);
        var context = new PlacingContext(view.Id, toBlock, ink.Core, style, thrift);

        string[] ids = [.. view.Annotations.Select((a, i) => string.Create(CultureInfo.InvariantCulture, $"{view.Id}-{i + 1}"))];
        int[] order = [.. Enumerable.Range(0, view.Annotations.Length).OrderBy(i => Rank(view.Annotations[i])).ThenBy(i => Reach(view.Annotations[i], scale))];
        IReadOnlyList<Candidate>[] candidates = [.. order.Select(i => (IReadOnlyList<Candidate>)AnnotationCandidates.For(view.Annotations[i], ids[i], context))];
        (Candidate[] chosen, int[] unplaced) = AnnotationSolver.Solve(field, candidates);

        var items = ink.Items.ToBuilder();
        var dimensions = ImmutableArray.CreateBuilder<PlotDimension>(chosen.Length);
        Box2D bounds = ink.Bounds;
        foreach (int position in Enumerable.Range(0, order.Length).OrderBy(p => order[p]))
        {
            AnnotationInk drawn = chosen[position].Ink();
            items.AddRange(drawn.Items);
            if (drawn.Meaning is { } meaning)
                dimensions.Add(meaning);
            bounds = bounds.Union(chosen[position].Bounds);
        }

        if (caption is not null)
        {
            double height = style.CaptionLettering;
            double width = StrokeLettering.WidthOf(caption, height);
            var anchor = new Point2D(ink.Core.Centre.X - (width / 2), bounds.MaxY + (0.8 * height));
            items.Add(StrokeLettering.Compose(caption, anchor, height, 0, null, view.Id));
            bounds = bounds.Union(new Box2D(anchor.X - 1, anchor.Y - 1, anchor.X + width + 1, anchor.Y + height + 1));
        }

        return new ViewBlock(view, scale, bounds, ink.Core, items.ToImmutable(), dimensions.ToImmutable(), [.. unplaced.Select(i => view.Annotations[order[i]].Name)]);
    }

    /// <summary>Short linear dimensions first, so that they get the inner tiers; then angles; then leaders, which are the freest.</summary>
    private static int Rank(Annotation annotation) => annotation switch
    {
        LinearDimension => 0,
        AngleDimension => 1,
        SectionEnd or ViewArrow => 3,
        _ => 2,
    };

    private static double Reach(Annotation annotation, double scale) =>
        annotation is LinearDimension linear ? (linear.Second - linear.First).Length * scale : 0;
}
