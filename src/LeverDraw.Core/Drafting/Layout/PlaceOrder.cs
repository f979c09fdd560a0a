namespace LeverDraw.Drafting.Layout;

/// <summary>Places by price, equals in their own order. They are dealt into classes of price at once and put in order within a class only when it is reached: the dearest seldom are.</summary>
internal sealed class PlaceOrder
{
    private const int Classes = 32;

    private readonly ArraySegment<double> _costs;
    private readonly short[] _places;
    private readonly short[] _ends = new short[Classes];
    private int _class;
    private int _inOrder;

    public PlaceOrder(ArraySegment<double> costs)
    {
        _costs = costs;
        _places = new short[costs.Count];
        double least = double.PositiveInfinity, most = double.NegativeInfinity;
        foreach (double cost in costs)
            (least, most) = (Math.Min(least, cost), Math.Max(most, cost));
        // Prices that break a hard rule would leave all others in one class.
        most = Math.Min(most, Math.Max(least, PlacingCosts.Broken) + 1);
        double perClass = most > least ? (Classes - 1) / (most - least) : 0;
        Span<short> next = stackalloc short[Classes];
        next.Clear();
        foreach (double cost in costs)
            next[ClassOf(cost)]++;
        short at = 0;
        for (int i = 0; i < Classes; i++)
        {
            short count = next[i];
            next[i] = at;
            _ends[i] = at += count;
        }

        for (int i = 0; i < costs.Count; i++)
            _places[next[ClassOf(costs[i])]++] = (short)i;

        int ClassOf(double cost) => (int)Math.Min(Classes - 1, (cost - least) * perClass);
    }

    public double CostAt(int rank) => _costs[PlaceAt(rank)];

    public int PlaceAt(int rank)
    {
        while (rank >= _inOrder)
            OrderNextClass();
        return _places[rank];
    }

    private void OrderNextClass()
    {
        int end = _ends[_class++];
        for (int i = _inOrder + 1; i < end; i++)
        {
            short place = _places[i];
            double cost = _costs[place];
            int at = i;
            for (; at > _inOrder && _costs[_places[at - 1]] > cost; at--)
                _places[at] = _places[at - 1];
            _places[at] = place;
        }

        _inOrder = end;
    }
}
