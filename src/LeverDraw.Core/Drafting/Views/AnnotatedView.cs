using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Views;

/// <summary>A view at one scale and in one style with every place its annotations might take; placing it more or less thriftily is then cheap. Not for two threads at once.</summary>
internal sealed class AnnotatedView
{
    private readonly ViewSource _view;
    private readonly double _scale;
    private readonly DraftingStyle _style;
    private readonly ViewInk _ink;
    private readonly ViewField _field;
    private readonly int[] _order;
    private readonly PlaceSet[] _places;

    /// <summary>The angles' positions in the order.</summary>
    private readonly int[] _angles;
    private readonly PlaceShape _scratch = new(), _lines = new();

    /// <summary>The placing that holds at every price from one on, if one was found.</summary>
    private (double From, ViewBlock Block)? _atAnyPrice;

    public AnnotatedView(ViewSource view, double scale, DraftingStyle style, LabelStore? labels = null)
    {
        _view = view;
        _scale = scale;
        _style = style;
        Transform2D toBlock = view.Orientation with { Scale = scale };
        _ink = new ViewInk(view, toBlock, style);
        _field = new ViewField(_ink.Strokes);
        ImmutableArray<ArcEdge> circles = [.. view.Edges.Where(e => PlacingContext.IsThinCircle(e.Role, e.Edge)).Select(e => ((ArcEdge)e.Edge).Transformed(toBlock))];
        var context = new PlacingContext(view.Id, toBlock, _ink.Core, style) { Labels = labels ?? new LabelStore(), Strokes = _ink.Strokes, Circle = view.IsDetail ? circles.FirstOrDefault() : null, Circles = circles };
        _order = [.. Enumerable.Range(0, view.Annotations.Length).OrderBy(i => Rank(view.Annotations[i])).ThenBy(i => Reach(view.Annotations[i]))];
        _angles = [.. Enumerable.Range(0, _order.Length).Where(at => view.Annotations[_order[at]] is AngleDimension)];
        _places = [.. _order.Select(i => AnnotationCandidates.For(view.Annotations[i], IdOf(i), context))];
    }

    /// <param name="thrift">Price of each millimetre by which an annotation makes the block wider; high where paper is narrow.</param>
    public ViewBlock Place(double thrift)
    {
        if (_atAnyPrice is { } known && thrift >= known.From)
            return known.Block;
        (Candidate[] chosen, int[] unplaced, bool paysForRoom) = AnnotationSolver.Solve(_field, _places, Sprawl.Around(_ink.Core, _style, thrift), _scratch, _lines, First(thrift));
        Box2D bounds = _ink.Bounds;
        foreach (Candidate candidate in chosen)
            bounds = bounds.Union(candidate.Bounds);
        var block = new ViewBlock(_view, _scale, bounds, _ink.Core, room => Ink(chosen, bounds.Union(room)), [.. unplaced.Select(i => _view.Annotations[_order[i]].Name)]);
        if (!paysForRoom)
            _atAnyPrice = (thrift, block);
        return block;
    }

    /// <summary>An angle has the fewest places, so it takes one before the rest, or a tongue's length would stand in its only ones; where room is dearest the short dimensions' inner tiers come first.</summary>
    private ReadOnlySpan<int> First(double thrift) => thrift < Sprawl.Thrifty ? _angles : [];

    private BlockInk Ink(Candidate[] placed, Box2D room)
    {
        // Only now is it known that the block is drawn: its room is taken, and may as well be used.
        Candidate[] settled = [.. placed];
        AnnotationSolver.Settle(_field, _places, settled, room, _scratch, _lines);
        Candidate[] chosen = new Candidate[settled.Length];
        for (int position = 0; position < settled.Length; position++)
            chosen[_order[position]] = settled[position];
        Box2D taken = _ink.Bounds;
        foreach (Candidate candidate in chosen)
            taken = taken.Union(candidate.Bounds);
        var items = ImmutableArray.CreateBuilder<PlotItem>(_ink.Items.Count + (chosen.Length * 8));
        // A note that ends inside a face has a dot, round which no line need be open.
        items.AddRange(LineBreaks.Broken(_ink.Items, [.. chosen.Where((_, i) => _view.Annotations[i] is not LeaderNote { OnFace: true })]));
        var dimensions = ImmutableArray.CreateBuilder<PlotDimension>(chosen.Length);
        foreach (Candidate candidate in chosen)
        {
            AnnotationInk drawn = candidate.Ink();
            items.AddRange(LineBreaks.Broken(drawn, candidate, chosen));
            if (drawn.Meaning is { } meaning)
                dimensions.Add(meaning);
            dimensions.AddRange(drawn.Members);
        }

        return new BlockInk(items.ToImmutable(), dimensions.ToImmutable()) { Taken = taken };
    }

    private string IdOf(int annotation) => string.Create(CultureInfo.InvariantCulture, $"{_view.Id}-{annotation + 1}");

    /// <summary>Short linear dimensions first, so that they get the inner tiers; then angles; then leaders, which are the freest.</summary>
    private static int Rank(Annotation annotation) => annotation switch
    {
        LinearDimension or DimensionRun => 0,
        AngleDimension => 1,
        SectionEnd or ViewArrow or MouldJoint => 3,
        _ => 2,
    };

    private double Reach(Annotation annotation) => annotation switch
    {
        LinearDimension linear => (linear.Second - linear.First).Length * _scale,
        DimensionRun run => run.Single().Max(d => (d.Second - d.First).Length) * _scale,
        _ => 0,
    };
}
