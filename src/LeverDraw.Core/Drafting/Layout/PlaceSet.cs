using LeverDraw.Drafting.Annotations;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>Every place that one annotation might take, by rank: cheapest by itself first, equals in the order they were thought of. Not for two threads at once.</summary>
/// <remarks>Most places are never looked at, because dearer than one that is clear: only prices are known beforehand; a place's lettering is worked out when it is first looked at, and its lines when its lettering stands clear.</remarks>
internal abstract class PlaceSet
{
    private readonly PlaceOrder _order;
    private readonly PlaceFindings[] _findings;
    private readonly double[] _groupsInView;
    private readonly double[] _groupsAmongOthers;
    private readonly Dictionary<int, Candidate> _made = new(4);

    /// <param name="groups">Of places that have lines in common.</param>
    protected PlaceSet(ArraySegment<double> costs, int groups = 0)
    {
        _order = new PlaceOrder(costs);
        _findings = new PlaceFindings[costs.Count];
        Array.Fill(_findings, PlaceFindings.None);
        _groupsInView = new double[groups];
        _groupsAmongOthers = new double[groups];
        Array.Fill(_groupsInView, double.NaN);
    }

    public int Count => _findings.Length;

    /// <summary>Length, tier, an unusual text place: what it costs whatever stands round it.</summary>
    public double CostAt(int rank) => _order.CostAt(rank);

    /// <summary>What it costs besides, once the view is drawn and settles.</summary>
    public double BlemishAt(int rank) => BlemishOf(_order.PlaceAt(rank));

    /// <summary>The place is not for planning where room is dearest: there it may be taken only once the view is drawn and settles.</summary>
    public bool WaitsAt(int rank) => WaitsOnNarrowPaper(_order.PlaceAt(rank));

    /// <summary>What is known so far of a place's cost in its view.</summary>
    public ref PlaceFindings FindingsAt(int rank) => ref _findings[rank];

    /// <summary>Which places have lines in common with this one; none below zero.</summary>
    public int GroupAt(int rank) => _groupsInView.Length == 0 ? -1 : GroupOf(_order.PlaceAt(rank));

    /// <summary>The least that a group's lines cost in the view; NaN until it is asked for.</summary>
    public ref double GroupInView(int group) => ref _groupsInView[group];

    /// <summary>The least that a group's lines cost among the annotations that stand; NaN until it is asked for.</summary>
    public ref double GroupAmongOthers(int group) => ref _groupsAmongOthers[group];

    /// <summary>Forgets what was found out about other annotations.</summary>
    public void ForgetOthers() => Array.Fill(_groupsAmongOthers, double.NaN);

    /// <summary>Adds to an empty shape the lines that all places of a group have: whole, or the beginning of longer ones.</summary>
    public virtual void LineGroup(int group, PlaceShape shape)
    {
    }

    /// <summary>Forgets what was found out for one price of room.</summary>
    public void ForgetFloors()
    {
        foreach (ref PlaceFindings found in _findings.AsSpan())
            found.Floor = found.Least;
    }

    /// <summary>Adds a place's lettering to an empty shape. False where the place turns out to be impossible.</summary>
    public bool Letter(int rank, PlaceShape shape) => LetterPlace(_order.PlaceAt(rank), shape);

    /// <summary>Adds its lines and arrowheads to a shape that has its lettering. False where the place turns out to be impossible.</summary>
    public bool Line(int rank, PlaceShape shape) => LinePlace(_order.PlaceAt(rank), shape);

    /// <summary>A place to keep, made once; null where it is impossible.</summary>
    public Candidate? Make(int rank, PlaceShape scratch)
    {
        if (_made.TryGetValue(rank, out Candidate? made))
            return made;
        scratch.Clear();
        return Letter(rank, scratch) && Line(rank, scratch) ? Keep(rank, scratch) : null;
    }

    /// <summary>Every possible place, worked out.</summary>
    public IEnumerable<Candidate> All()
    {
        var scratch = new PlaceShape();
        for (int rank = 0; rank < Count; rank++)
        {
            if (Make(rank, scratch) is { } place)
                yield return place;
        }
    }

    /// <summary>The place whose finished shape is given.</summary>
    public Candidate Keep(int rank, PlaceShape shape)
    {
        if (!_made.TryGetValue(rank, out Candidate? made))
            _made.Add(rank, made = MakePlace(_order.PlaceAt(rank), CostAt(rank), shape));
        return made;
    }

    /// <summary>Some point of a place's ink, soon worked out; null where none is.</summary>
    public Point2D? PointAt(int rank) => PointOf(_order.PlaceAt(rank));

    protected virtual Point2D? PointOf(int place) => null;

    protected virtual int GroupOf(int place) => -1;

    protected virtual double BlemishOf(int place) => 0;

    protected virtual bool WaitsOnNarrowPaper(int place) => false;

    protected abstract bool LetterPlace(int place, PlaceShape shape);

    protected abstract bool LinePlace(int place, PlaceShape shape);

    /// <summary>The ink of a place, drawn anew at each call.</summary>
    protected abstract AnnotationInk InkOf(int place);

    protected virtual Candidate MakePlace(int place, double cost, PlaceShape shape) =>
        new(shape.Texts.ToArray(), shape.Strokes.ToArray(), cost, () => InkOf(place), shape.Heads.ToArray()) { Blemish = BlemishOf(place) };
}
