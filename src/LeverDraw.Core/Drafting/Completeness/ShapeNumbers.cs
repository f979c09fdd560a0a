using System.Collections.Immutable;
using System.Text;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Completeness;

/// <summary>Gathers what shapes metal, in a fixed order.</summary>
public sealed class ShapeNumbers
{
    private readonly StringBuilder _form = new();
    private readonly ImmutableArray<double>.Builder _numbers = ImmutableArray.CreateBuilder<double>();

    public ShapeNumbers Add(string what, params ReadOnlySpan<double> numbers)
    {
        _form.Append(what).Append(';');
        _numbers.AddRange(numbers);
        return this;
    }

    /// <summary>A piece of a closed outline; it ends where the next begins. An arc by its middle, for the centre of a flat one runs away at the least change.</summary>
    public ShapeNumbers Add(string what, Edge edge) => edge is ArcEdge arc
        ? Add(what + " arc", arc.Start.X, arc.Start.Y, arc.PointAt(0.5).X, arc.PointAt(0.5).Y)
        : Add(what + " line", edge.Start.X, edge.Start.Y);

    public ShapeSample With(ImmutableArray<SheetSize> sizes) => new(_form.ToString(), _numbers.ToImmutable(), sizes);
}
