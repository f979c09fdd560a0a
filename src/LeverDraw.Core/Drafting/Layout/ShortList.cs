using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>The cheapest few of one annotation's places, the cheapest first. Of those alike, which have the same in their way, only the cheapest stays: places of one group, and places close together.</summary>
/// <param name="most">So many stay.</param>
/// <param name="apart">Places nearer to each other than this are alike, millimetres.</param>
internal sealed class ShortList(int most, double apart)
{
    private readonly List<Entry> _entries = new(most + 1);

    public IEnumerable<int> Ranks => _entries.Select(e => e.Rank);

    /// <summary>From this price on a place does not get in.</summary>
    /// <param name="dearer">By how much one may be dearer than the cheapest.</param>
    public double Limit(double hopeless, double dearer)
    {
        double limit = _entries.Count < most ? hopeless : _entries[^1].Cost;
        return _entries.Count > 0 ? Math.Min(limit, _entries[0].Cost + dearer) : limit;
    }

    /// <summary>One of a group is here that is no dearer than a price.</summary>
    /// <param name="group">Below zero where the place has none.</param>
    public bool HasCheaper(int group, double price)
    {
        foreach (Entry entry in _entries)
        {
            if (group >= 0 && entry.Group == group && entry.Cost <= price)
                return true;
        }

        return false;
    }

    public void Offer(double cost, int group, int rank, Point2D middle)
    {
        foreach (Entry entry in _entries)
        {
            if (entry.Cost <= cost && IsAlike(entry))
                return;
        }

        int at = 0;
        while (at < _entries.Count && _entries[at].Cost <= cost)
            at++;
        for (int i = _entries.Count - 1; i >= at; i--)
        {
            if (IsAlike(_entries[i]))
                _entries.RemoveAt(i);
        }

        _entries.Insert(at, new Entry(cost, group, rank, middle));
        if (_entries.Count > most)
            _entries.RemoveAt(most);

        bool IsAlike(in Entry entry) => (group >= 0 && entry.Group == group) || entry.Middle.DistanceTo(middle) < apart;
    }

    private readonly record struct Entry(double Cost, int Group, int Rank, Point2D Middle);
}
