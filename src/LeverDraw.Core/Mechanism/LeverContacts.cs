using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever;

namespace LeverDraw.Mechanism;

/// <summary>Where the lever bears on the nut and on the cap iron in a given pose, from its real outline.</summary>
/// <remarks>Frame: (n, z) of the lever when its arms stand square to the stud and its hole is in the middle of its play; n runs along the stud toward the plane's toe. Millimetres.</remarks>
internal sealed class LeverContacts
{
    private readonly Edge[] _pads;
    private readonly Edge[] _tongue;
    private readonly double _padChange, _tongueChange;
    private readonly (double From, double To) _padBand, _slotBand;

    /// <param name="padChange">Thickness of the pads over the drawn one, what their offset adds included; <paramref name="tongueChange"/> likewise.</param>
    public LeverContacts(Lever lever, SlotFrame frame, double padChange, double tongueChange)
    {
        Frame = frame;
        bool flange = frame.FlangeReach is not null;
        _pads = [.. lever.Side.Edges.Where(e => e.Name.StartsWith("crown", StringComparison.Ordinal) || e.Name.StartsWith("pad-", StringComparison.Ordinal)
            || (flange && (e.Name.StartsWith("step-", StringComparison.Ordinal) || e.Name.StartsWith("shoulder-", StringComparison.Ordinal) || e.Name.StartsWith("arm-", StringComparison.Ordinal)))).Select(e => e.Edge)];
        _tongue = [.. lever.Side.Edges.Where(e => e.Name.Contains("flank", StringComparison.Ordinal) || e.Name.StartsWith("nose", StringComparison.Ordinal) || e.Name.StartsWith("neck", StringComparison.Ordinal)).Select(e => e.Edge)];
        _padChange = padChange / 2;
        _tongueChange = tongueChange / 2;
        double reach = frame.FlangeReach ?? frame.StudDistance / 2;
        _padBand = (-frame.StudDistance - reach, -frame.StudDistance + reach);
        _slotBand = (frame.SlotBottom, frame.SlotTop);
    }

    public SlotFrame Frame { get; }

    /// <summary>On the flange toward the toe; <see cref="PadBack"/> on the other. Null when no pad stands between the flanges.</summary>
    public BandExtent? PadFront(LeverPose pose) => At(_pads, pose, SlotFrame.Stud, _padBand, _padChange);

    public BandExtent? PadBack(LeverPose pose) => At(_pads, pose, -SlotFrame.Stud, _padBand, _padChange);

    /// <summary>On the slot's end nearer to the edge of the iron; <see cref="TongueBack"/> on the other. Null when the tongue does not reach the slot.</summary>
    public BandExtent? TongueFront(LeverPose pose) => At(_tongue, pose, Frame.Bed, _slotBand, _tongueChange);

    public BandExtent? TongueBack(LeverPose pose) => At(_tongue, pose, -Frame.Bed, _slotBand, _tongueChange);

    /// <summary>The contacts of a lever turned one way when it pushes and the other way when it pulls, told of the lever in the middle; null when it leaves the slot.</summary>
    public SlotContacts? SlotContactsAt(double pushed, double pulled) =>
        InMiddle(new LeverPose(pushed, default), Frame.Bed) is { } front && InMiddle(new LeverPose(pulled, default), -Frame.Bed) is { } back ? new SlotContacts(front, back) : null;

    /// <summary>Where a flat face bears, the same point of the lever; where the face's end bears, the outline at the same height.</summary>
    private BandExtent? InMiddle(LeverPose pose, Vector2D direction)
    {
        if (At(_tongue, pose, direction, _slotBand, _tongueChange) is not { } turned)
            return null;
        if (turned.Normal.Dot(direction) < 1 - 1e-12)
        {
            double height = (turned.Point - Point2D.Origin).Dot(Frame.Up);
            return At(_tongue, default, direction, (height, height), _tongueChange);
        }

        Point2D point = Point2D.Origin + pose.ToLever(turned.Point - (direction * _tongueChange) - Point2D.Origin);
        return new BandExtent((point - Point2D.Origin).Dot(direction) + _tongueChange, point + (direction * _tongueChange), direction);
    }

    /// <summary>Height of the tongue's tip over the pin's axis, square to the bed.</summary>
    public double TipHeight(LeverPose pose)
    {
        Vector2D up = pose.ToLever(Frame.Up);
        double highest = double.NegativeInfinity;
        foreach (Edge edge in _tongue)
        {
            highest = Math.Max(highest, Math.Max((edge.Start - Point2D.Origin).Dot(up), (edge.End - Point2D.Origin).Dot(up)));
            if (edge is ArcEdge { Sweep: > 0 } arc && arc.ContainsAngle(up.Angle))
                highest = Math.Max(highest, (arc.Centre - Point2D.Origin).Dot(up) + arc.Radius);
        }

        return highest + pose.Offset.Dot(Frame.Up);
    }

    private static BandExtent? At(Edge[] edges, LeverPose pose, Vector2D direction, (double From, double To) band, double change)
    {
        // A direction turned about has its left, and so the band, upside down.
        Vector2D own = pose.ToLever(direction), level = direction.Left;
        bool turned = level.Dot(new Vector2D(0, 1)) < 0;
        double shift = pose.Offset.Dot(level);
        (double from, double to) = turned ? (-band.To, -band.From) : band;
        if (BandExtent.Of(edges, own, from - shift, to - shift) is not { } found)
            return null;
        return new BandExtent(found.Reach + pose.Offset.Dot(direction) + change, pose.ToPlane(found.Point) + (direction * change), pose.ToPlane(found.Normal));
    }
}
