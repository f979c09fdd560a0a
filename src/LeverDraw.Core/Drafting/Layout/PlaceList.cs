using System.Runtime.InteropServices;

namespace LeverDraw.Drafting.Layout;

/// <summary>The places of one annotation as they are thought of: price and whatever its kind needs to work out the rest.</summary>
internal sealed class PlaceList<T>(int capacity)
{
    private readonly List<double> _costs = new(capacity);
    private readonly List<T> _places = new(capacity);

    public double[] Costs => [.. CollectionsMarshal.AsSpan(_costs)];

    public T this[int place] => _places[place];

    public void Add(double cost, T place)
    {
        _costs.Add(cost);
        _places.Add(place);
    }
}
