using LeverDraw.Drafting.Layout;
using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Annotations;

/// <summary>The places of a label at the end of a leader: from several tips, each along a direction, longer and shorter, the shoulder to either side.</summary>
/// <param name="ink">The ink of a leader along a ray.</param>
internal sealed class LeaderPlaces(LeaderList leaders, LabelBox label, DraftingStyle style, Func<LeaderShape, int, AnnotationInk> ink) : PlaceSet(leaders.Places.Costs, leaders.Rays.Count)
{
    public override void LineGroup(int group, PlaceShape shape)
    {
        (Point2D tip, Vector2D direction) = leaders.Rays[group];
        shape.AddStroke(LeaderShape.Slant(tip, direction, LeaderShape.SlantLength(LeaderList.Lengths[leaders.Shortest(group)], style)));
        shape.AddHead(Arrowhead.Back(tip, -direction, style));
    }

    protected override double BlemishOf(int place) => leaders.BlemishOf(leaders.Places[place].Ray);

    protected override int GroupOf(int place) => leaders.Places[place].Ray;

    /// <summary>Where its shoulder begins.</summary>
    protected override Point2D? PointOf(int place)
    {
        (Point2D tip, Vector2D direction) = leaders.Rays[leaders.Places[place].Ray];
        return tip + (direction * LengthOf(place));
    }

    protected override bool LetterPlace(int place, PlaceShape shape) => Shape(place).Letter(shape);

    protected override bool LinePlace(int place, PlaceShape shape)
    {
        Shape(place).Line(shape);
        (Point2D tip, Vector2D direction) = leaders.Rays[leaders.Places[place].Ray];
        shape.AddHead(Arrowhead.Back(tip, -direction, style));
        return true;
    }

    protected override AnnotationInk InkOf(int place) => ink(Shape(place), leaders.Places[place].Ray);

    private LeaderShape Shape(int place)
    {
        LeaderPlace at = leaders.Places[place];
        (Point2D tip, Vector2D direction) = leaders.Rays[at.Ray];
        return new LeaderShape(label, style, tip, direction, LengthOf(place), at.ToRight);
    }

    /// <summary>From its tip to its shoulder.</summary>
    private double LengthOf(int place) => LeaderShape.SlantLength(LeaderList.Lengths[leaders.Places[place].Length], style);
}

/// <param name="Ray">Which of the rays the leader takes.</param>
/// <param name="Length">Which of <see cref="LeaderList.Lengths"/>.</param>
internal readonly record struct LeaderPlace(short Ray, byte Length, bool ToRight);

/// <summary>The leaders that a label might take.</summary>
internal sealed class LeaderList
{
    /// <summary>From the tip to the elbow, millimetres, the shortest first.</summary>
    public static ReadOnlySpan<double> Lengths => [5, 7, 9, 11, 13, 16, 19, 22, 25, 29, 37, 46, 56, 68];

    /// <summary>Which of them a leader takes that has room all round. Within a hollow of the part it may take any: there a millimetre decides whether the label goes in.</summary>
    private static ReadOnlySpan<byte> Usual => [1, 3, 5, 7, 9, 10, 11, 12, 13];

    private static readonly byte[] _all = [.. Enumerable.Range(0, Lengths.Length).Select(i => (byte)i)];

    public PlaceList<LeaderPlace> Places { get; } = new(256);

    public List<(Point2D Tip, Vector2D Direction)> Rays { get; } = new(28);

    private readonly List<double> _blemishes = new(28);

    private readonly List<bool> _inHollow = new(28);

    /// <summary>What a ray costs besides, once the view is drawn and settles.</summary>
    public double BlemishOf(int ray) => _blemishes[ray];

    /// <summary>Which of <see cref="Lengths"/> is the shortest along a ray.</summary>
    public int Shortest(int ray) => _inHollow[ray] ? 0 : Usual[0];

    /// <summary>Adds the leaders along one direction from a tip.</summary>
    /// <param name="direction">Length one.</param>
    /// <param name="blemish">What it costs besides, once the view is drawn and settles.</param>
    /// <param name="inHollow">The label may stand in a hollow of the part.</param>
    public void Add(Point2D tip, Vector2D direction, double cost, double blemish = 0, bool inHollow = false)
    {
        double slope = Math.Abs(direction.Y);
        double awkward = slope < 0.259 || slope > 0.966 ? PlacingCosts.AwkwardLeader : 0;
        bool toRight = direction.X >= 0;
        bool mayFold = Math.Abs(direction.X) <= (inHollow ? 0.55 : 0.5);
        short ray = (short)Rays.Count;
        Rays.Add((tip, direction));
        _blemishes.Add(blemish);
        _inHollow.Add(inHollow);
        foreach (byte i in inHollow ? _all : Usual)
        {
            Places.Add(cost + awkward + (Lengths[i] * 0.16), new LeaderPlace(ray, i, toRight));
            if (mayFold)
                Places.Add(cost + awkward + 3 + (Lengths[i] * 0.16), new LeaderPlace(ray, i, !toRight));
        }
    }
}
