using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Symbols;

/// <summary>The general signs in a row: texture of the rest, in brackets the bare sign for the others, then the edges.</summary>
internal sealed class GeneralSignsShape
{
    private readonly double _h;
    private readonly TextureShape _rest;
    private readonly TextureShape? _others;
    private readonly EdgeShape? _edges;
    private readonly double _bracket;

    public GeneralSignsShape(GeneralSigns signs, DraftingStyle style)
    {
        _h = style.LetteringHeight;
        _rest = new TextureShape(signs.Rest, style);
        _others = signs.HasOthers ? new TextureShape(new TextureSign(TextureProcess.Any), style) : null;
        _edges = signs.Edges is { } edges ? new EdgeShape(edges, style) : null;
        _bracket = StrokeLettering.WidthOf("(", BracketHeight);
    }

    public double Width => EdgesAt + (_edges?.Width ?? -Gap);

    public double Height => Math.Max(_rest.Height, _edges?.Height ?? 0);

    private double Gap => 1.5 * _h;

    private double BracketHeight => 2 * _h;

    private double OpenAt => _rest.Width + _h;

    private double OthersAt => OpenAt + _bracket + (0.5 * _h);

    private double CloseAt => OthersAt + (_others?.Width ?? 0) + (0.5 * _h);

    private double EdgesAt => (_others is null ? _rest.Width : CloseAt + _bracket) + Gap;

    public IEnumerable<PlotItem> Ink(Point2D corner)
    {
        var pen = new SymbolPen(SymbolPen.At(corner, 0), LineRole.Symbol, null, null);
        double lift = 0.5 * _h;
        return
        [
            .. _rest.Ink(corner + new Vector2D(_rest.Left, 0), 0, null, null),
            .. _others is { } others
                ? [
                    pen.Text("(", new Point2D(OpenAt, lift), BracketHeight),
                    .. others.Ink(corner + new Vector2D(OthersAt + others.Left, 0), 0, null, null),
                    pen.Text(")", new Point2D(CloseAt, lift), BracketHeight),
                ]
                : Enumerable.Empty<PlotItem>(),
            .. _edges?.Ink(corner + new Vector2D(EdgesAt, 0), null, null) ?? [],
        ];
    }
}
