using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Views;

/// <summary>A view's own ink at one scale: what is drawn, and the same as short straight strokes for collision tests.</summary>
internal sealed class ViewInk
{
    /// <summary>How far the chords that stand for an arc may lie off it, millimetres: far inside the clearance that lettering keeps.</summary>
    public const double ChordError = 0.05;

    private readonly ImmutableArray<PlotItem>.Builder _items = ImmutableArray.CreateBuilder<PlotItem>();
    private readonly List<Stroke> _strokes = [];
    private readonly string _view;

    /// <summary>Centre lines stand out as far as extension lines do (ISO 128 practice, from memory); lettering on the first tier clears that.</summary>
    private readonly double _overshoot;

    public ViewInk(ViewSource view, Transform2D toBlock, DraftingStyle style)
    {
        _view = view.Id;
        _overshoot = style.Overshoot;
        foreach (HatchedRegion region in view.Hatching)
            AddHatch(region, [.. region.Loops.Select(loop => loop.Transformed(toBlock))], style.HatchSpacing * region.Spacing);
        foreach (PlotOutline outline in view.Outlines)
            AddLoop(LineRole.Outline, outline.Contour.Transformed(toBlock));
        foreach (ViewLoop loop in view.Loops)
            AddLoop(loop.Role, loop.Contour.Transformed(toBlock));
        foreach (ViewEdge edge in view.Edges)
            AddEdge(edge.Role, edge.Edge.Transformed(toBlock));
        Core = _strokes.Where(s => s.Kind == StrokeKind.Feature).Aggregate(Box2D.Empty, (box, s) => box.Union(s.Bounds));
        Bounds = _strokes.Aggregate(Box2D.Empty, (box, s) => box.Union(s.Bounds));
    }

    public IReadOnlyList<PlotItem> Items => _items;

    public IReadOnlyList<Stroke> Strokes => _strokes;

    /// <summary>Of outlines and edges: what dimension tiers are counted from.</summary>
    public Box2D Core { get; }

    public Box2D Bounds { get; }

    private void AddLoop(LineRole role, Contour loop)
    {
        _items.Add(new PlotLoop(role, loop, null, _view));
        foreach (Edge edge in loop.Edges)
            AddStrokes(edge, StrokeKind.Feature);
    }

    private void AddEdge(LineRole role, Edge edge)
    {
        if (role == LineRole.Centre && edge is LineEdge line)
        {
            Vector2D u = (line.To - line.From).Unit() * _overshoot;
            edge = new LineEdge(line.From - u, line.To + u);
        }

        _items.Add(new PlotStroke(role, edge, null, _view));
        AddStrokes(edge, role is LineRole.Centre or LineRole.Phantom or LineRole.Parting or LineRole.Hatch or LineRole.Dimension ? StrokeKind.Light : StrokeKind.Feature);
    }

    private void AddStrokes(Edge edge, StrokeKind kind)
    {
        if (edge is not ArcEdge arc)
        {
            _strokes.Add(new Stroke(edge.Start, edge.End, kind));
            return;
        }

        double step = 2 * Math.Acos(Math.Max(0, 1 - (ChordError / Math.Max(arc.Radius, 0.06))));
        int pieces = Math.Max(2, (int)Math.Ceiling(Math.Abs(arc.Sweep) / step));
        for (int i = 0; i < pieces; i++)
            _strokes.Add(new Stroke(arc.PointAt((double)i / pieces), arc.PointAt((i + 1.0) / pieces), kind));
    }

    private void AddHatch(HatchedRegion region, ImmutableArray<Contour> loops, double spacing)
    {
        ImmutableArray<LineEdge> lines = HatchLines.Across(loops, region.Angle, spacing);
        _items.Add(new PlotHatch(region.Role, loops, region.Angle, spacing, lines, null, _view));
        foreach (LineEdge line in lines)
            _strokes.Add(new Stroke(line.From, line.To, StrokeKind.Lining));
    }
}
