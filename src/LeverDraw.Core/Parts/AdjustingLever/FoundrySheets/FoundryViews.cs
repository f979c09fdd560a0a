using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Parts.AdjustingLever.Sheets;
using LeverDraw.Profiles;

namespace LeverDraw.Parts.AdjustingLever.FoundrySheets;

/// <summary>The views of a casting or pattern: those of the finished lever with the state's own outlines and sizes, the finished faces within, joint, stock and draft.</summary>
internal sealed class FoundryViews
{
    private readonly FoundryState _state;
    private readonly Lever _shape, _within;
    private readonly DimensionText _text;
    private readonly bool _toleranced, _tongueView, _tight;
    private readonly JointMarks _joint;
    private readonly HeadSection _head;

    /// <param name="toleranced">Whether each size shows its casting tolerance.</param>
    /// <param name="small">On small paper the tongue has no view of its own: its width is true in the fork view too.</param>
    /// <param name="tight">Without the sizes that only follow from others.</param>
    public FoundryViews(FoundryState state, PartingCandidate parting, DimensionText text, bool toleranced, bool small = false, bool tight = false)
    {
        (_state, _text, _toleranced, _tight) = (state, text, toleranced, tight);
        (_shape, _within) = (LetteredSizes.On(state, toleranced), state.FinishedWithin);
        _tongueView = !small && LeverTongueView.IsNeeded(_shape);
        _joint = new JointMarks(parting, state.Plan.Process);
        Draft = PatternDraft.Of(state.Plan, parting, state.Shape);
        _head = HeadSection.Of(_shape, Draft);
    }

    public PatternDraft Draft { get; }

    /// <summary>With the sizes lettered.</summary>
    public Lever Shape => _shape;

    public ViewSource Fork()
    {
        ViewGeometry seen = LeverViews.Fork(_shape);
        double half = _shape.Hole.HalfLength.Millimetres;
        ImmutableArray<Annotation> cut =
        [
            new SectionEnd("section.left", LeverLetters.Section, new Point2D(-half, 0), new Vector2D(-1, 0), new Vector2D(0, -1)),
            new SectionEnd("section.right", LeverLetters.Section, new Point2D(half, 0), new Vector2D(1, 0), new Vector2D(0, -1)),
        ];
        return View("fork", null, seen, [.. LeverForkAnnotations.Of(_shape, _text).Select(HeadWidth), .. TongueWidth(), .. cut], FinishedFaces.Of(LeverViews.Fork(_within).Outlines[0].Contour.Edges, seen.Outlines[0].Contour));
    }

    public ViewSource Side()
    {
        ViewGeometry seen = LeverViews.Side(_shape);
        IEnumerable<ViewEdge> extra =
        [
            LeverNoseDetail.Mark(_shape), LeverPadDetail.Mark(_shape),
            .. SideFaces(), .. HoleToCome(), .. _joint.ThroughSideView(_shape),
        ];
        return View("side", null, seen, [.. LeverSideAnnotations.Of(_shape, _text, curveNoted: false).Where(a => _tongueView || a is not ViewArrow), .. _joint.InSideView(_shape), StockMarks.Gate(_shape)], extra);
    }

    public ImmutableArray<ViewSource> Others()
    {
        ImmutableArray<ViewSource> details =
        [
            Section(),
            Detail(LeverNoseDetail.Of(_shape, _text), _shape.Side.NoseCentre, LeverNoseDetail.CircleRadius(_shape), StockMarks.OnTongue(_shape, _state.Plan.Stock.Tongue, _text)),
            Detail(LeverPadDetail.Of(_shape, _text), _shape.Side.PadCentre, LeverPadDetail.CircleRadius(_shape), StockMarks.OnPads(_shape.Side, _state.Plan.Stock.Pads, _text)),
        ];
        return _tongueView ? details.Add(LeverTongueView.Of(_shape, _text)) : details;
    }

    private ViewSource Section()
    {
        // A cored hole leaves nothing of the solid section; its draft is told in the notes alone.
        bool cored = _shape.Hole.Supply != LeverFields.Solid;
        ViewGeometry cut = cored ? LeverViews.SectionThroughPin(_shape) : _head.Seen();
        ImmutableArray<ViewEdge> faces = [.. cut.Outlines.SelectMany(o => o.Contour.Edges).Select(e => new ViewEdge(LineRole.Section, e))];
        return View("section", LeverLetters.Caption(LeverLetters.Section), cut with { Outlines = [], Edges = [.. faces, .. cut.Edges] }, [.. InSection(cored)], _head.Finished(_within)) with { IsMain = false };
    }

    private IEnumerable<Annotation> InSection(bool cored)
    {
        foreach (Annotation mark in StockMarks.OnHead(_head, _state.Plan.Stock.Head, _text))
            yield return mark;
        foreach (Annotation mark in _joint.InSection(_head))
            yield return mark;
        foreach (Annotation draft in DraftMarks.In(_head, Draft, _text))
            yield return draft;
        if (_shape.Boss is { } boss)
        {
            double half = _shape.Hole.HalfLength.Millimetres, radius = boss.Diameter.Millimetres / 2;
            Units.Length over = _shape.Hole.HalfLength * 2;
            SizeValue size = new(over, _toleranced ? LetteredSizes.Tolerance(_state.Plan, over) : null);
            yield return new LinearDimension(LeverSection.OverBosses, over.Millimetres, _text.Size(size), new Point2D(-half, radius), new Point2D(half, radius), 0);
            yield return new LinearDimension(LeverFields.BossDiameter.Name, boss.Diameter.Millimetres, _text.Size(boss.Diameter, "⌀"), new Point2D(half, -radius), new Point2D(half, radius), LinearDimension.Upright);
        }

        if (cored)
        {
            double r = _shape.Hole.AtMid.Millimetres / 2, end = _shape.Hole.HalfLength.Millimetres;
            yield return new LinearDimension(LeverFields.HoleDiameter.Name, 2 * r, _text.Size(_shape.Hole.AtMid, "⌀", " CORED"), new Point2D(-end, -r), new Point2D(-end, r), LinearDimension.Upright);
        }
    }

    private ViewSource Detail(ViewSource view, Point2D centre, double reach, IEnumerable<Annotation> marks)
    {
        IEnumerable<ViewEdge> within = SideFaces().SelectMany(f => EdgeClip.ToCircle([f.Edge], centre, reach)).Select(e => new ViewEdge(LineRole.Phantom, e));
        return Full(view with { Edges = [.. view.Edges, .. within], Annotations = [.. view.Annotations, .. marks] });
    }

    private IEnumerable<Annotation> TongueWidth()
    {
        if (!_tongueView && LeverTongueView.IsNeeded(_shape))
            yield return LeverTongueView.Width(_shape, _text, _shape.Fork.TongueSide.PointAt(0.7).Y, DimensionSides.Left);
    }

    /// <summary>Beside bosses the finished sheet leaves the head's own width without a tolerance.</summary>
    private Annotation HeadWidth(Annotation annotation) => annotation.Name == LeverFields.HeadWidth.Name
        ? annotation with { Label = _text.Size(_shape.Sizes[LeverFields.HeadWidth]) }
        : annotation;

    private ViewSource Full(ViewSource view) => Truthful.Of(_tight ? view with { Annotations = [.. view.Annotations.Where(a => !a.Label.IsReference)] } : view);

    private IEnumerable<ViewEdge> SideFaces() => FinishedFaces.Of(_within.SideProfile.Edges, _shape.SideProfile);

    private IEnumerable<ViewEdge> HoleToCome()
    {
        if (_shape.Hole.Supply == LeverFields.Solid)
            yield return new ViewEdge(LineRole.Phantom, ArcEdge.FullCircle(Point2D.Origin, _within.Hole.AtRight.Millimetres / 2));
    }

    private ViewSource View(string id, string? title, ViewGeometry seen, ImmutableArray<Annotation> annotations, IEnumerable<ViewEdge> extra) => Full(
        new ViewSource(id, title) { Outlines = seen.Outlines, Edges = [.. seen.Edges, .. extra], Hatching = seen.Hatching, Annotations = annotations });
}
