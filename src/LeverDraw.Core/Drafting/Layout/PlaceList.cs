namespace LeverDraw.Drafting.Layout;

/// <summary>The places of one annotation as they are thought of: price and whatever its kind needs to work out the rest.</summary>
internal sealed class PlaceList<T>(int capacity)
{
    private double[] _costs = new double[capacity];
    private T[] _places = new T[capacity];
    private int _count;

    /// <summary>By place; not to be changed.</summary>
    public ArraySegment<double> Costs => new(_costs, 0, _count);

    public T this[int place] => _places[place];

    public void Add(double cost, T place)
    {
        if (_count == _costs.Length)
        {
            Array.Resize(ref _costs, 2 * _count);
            Array.Resize(ref _places, 2 * _count);
        }

        _costs[_count] = cost;
        _places[_count++] = place;
    }
}
