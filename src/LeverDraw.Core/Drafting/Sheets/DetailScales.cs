using LeverDraw.Drafting.Views;
using LeverDraw.Standards;

namespace LeverDraw.Drafting.Sheets;

/// <summary>The scales at which the other views may stand, best first: all enlarged, then only details and the smaller ones, then none. An enlarged view stays smaller than the main views, or it would look like the principal one.</summary>
internal sealed class DetailScales
{
    /// <summary>Greatest size of an enlarged view, of the largest main view's.</summary>
    private const double LargestShare = 0.82;

    private readonly DrawingScale _main;
    private readonly bool[] _mayGrow;
    private readonly bool[] _areDetails;
    private readonly double[] _readable;
    private readonly double[] _sizes;
    private readonly double _mainSize;

    /// <param name="sizeOf">Greater side of a view, view millimetres.</param>
    public DetailScales(SheetContent content, DrawingScale main, Func<ViewSource, double> sizeOf)
    {
        _main = main;
        _mayGrow = [.. content.Others.Select(v => !v.IsMain)];
        _areDetails = [.. content.Others.Select(v => v.IsDetail)];
        _readable = [.. content.Others.Select(v => v.ReadableFrom)];
        _sizes = [.. content.Others.Select(sizeOf)];
        _mainSize = sizeOf(content.Front) * main.Factor;
        foreach (ViewSource view in content.FromLeft.Concat(content.FromRight))
            _mainSize = Math.Max(_mainSize, sizeOf(view) * main.Factor);
    }

    public IEnumerable<DrawingScale[]> All()
    {
        int[] smallestFirst = [.. Enumerable.Range(0, _sizes.Length).Where(i => _mayGrow[i]).OrderByDescending(i => _areDetails[i]).ThenBy(i => _sizes[i])];
        var tried = new List<DrawingScale[]>();
        for (int count = smallestFirst.Length; count > 0; count--)
        {
            foreach (DrawingScale enlarged in Enlargements())
            {
                DrawingScale[] scales = [.. _sizes.Select((_, i) => Array.IndexOf(smallestFirst, i) is >= 0 and var at && at < count ? Largest(i, enlarged) : _main)];
                if (IsNew(scales))
                    yield return scales;
            }
        }

        DrawingScale[] none = [.. _sizes.Select(_ => _main)];
        if (IsNew(none))
            yield return none;

        bool IsNew(DrawingScale[] scales)
        {
            foreach (DrawingScale[] earlier in tried)
            {
                if (earlier.AsSpan().SequenceEqual(scales))
                    return false;
            }

            tried.Add(scales);
            return true;
        }
    }

    /// <summary>Whether details and sections stand at these scales as this ease has them: for what is easier, there was another try.</summary>
    public bool Suit(SheetEase ease, DrawingScale[] scales) => ease switch
    {
        SheetEase.PlainDetails => !EnlargesDetails(scales),
        SheetEase.SmallSections => EnlargesDetails(scales) && !AreReadable(scales),
        _ => EnlargesDetails(scales) && AreReadable(scales),
    };

    /// <summary>Every detail is larger than in the view it is taken from.</summary>
    private bool EnlargesDetails(DrawingScale[] scales) => !_areDetails.Where((isDetail, i) => isDetail && scales[i].Factor <= _main.Factor).Any();

    private bool AreReadable(DrawingScale[] scales) => !_readable.Where((least, i) => scales[i].Factor < least).Any();

    /// <summary>The largest enlargement up to a limit at which the view stays smaller than the main views; else the main scale.</summary>
    private DrawingScale Largest(int view, DrawingScale limit)
    {
        foreach (DrawingScale own in Enlargements())
        {
            if (own.Factor <= limit.Factor && own.Factor * _sizes[view] <= _mainSize * LargestShare)
                return own;
        }

        return _main;
    }

    /// <summary>The next two preferred scales, and twice the main scale.</summary>
    private IEnumerable<DrawingScale> Enlargements()
    {
        int at = DrawingScales.All.IndexOf(_main);
        if (at < 0)
            return [new DrawingScale(2 * _main.Drawn, _main.Real)];
        IEnumerable<DrawingScale> larger = DrawingScales.All.Take(at).TakeLast(2);
        return _main.Factor >= 1 ? larger.Append(new DrawingScale((_main.Factor > 1 ? 2 : 4) * _main.Drawn, _main.Real)).Distinct().OrderByDescending(s => s.Factor) : larger;
    }
}
