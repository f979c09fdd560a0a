using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever;

namespace LeverDraw.Mechanism.Sheets;

/// <summary>Lever, pin, nut, iron and cap iron cut through, the nut driving the iron down, every gap open on the idle side. In the (n, z) of the plane, millimetres.</summary>
internal sealed class MechanismPicture
{
    /// <summary>Lengths that only the picture has: of the irons beside the slot, the least of the cap iron's broken edge, how far the iron's long slot is drawn from the tongue, of flange, knob and stud.</summary>
    private const double Iron = 8, LeastBreak = 0.5, IronSlot = 2.2, Flange = 2, Knob = 6, KnobHalf = 5, StudHalf = 2, StudOut = 3, Wave = 1.6;

    private readonly Linkage _linkage;
    private readonly LeverPose _pose;
    private readonly DrawnGaps _gaps;
    private readonly SlotFrame _frame;
    private readonly Contour _outline;
    private readonly ImmutableArray<ViewEdge>.Builder _edges = ImmutableArray.CreateBuilder<ViewEdge>();
    private readonly ImmutableArray<HatchedRegion>.Builder _hatching = ImmutableArray.CreateBuilder<HatchedRegion>();

    public MechanismPicture(Linkage linkage, LeverPose pose, DrawnGaps gaps)
    {
        _linkage = linkage;
        _pose = pose with { Offset = default };
        _gaps = gaps;
        _frame = linkage.Contacts.Frame;
        _outline = linkage.Assembly.Lever.SideProfile.Transformed(Transform2D.Turn(_pose.Turn));
        PadFront = linkage.Contacts.PadFront(_pose)!.Value;
        PadBack = linkage.Contacts.PadBack(_pose)!.Value;
        TongueFront = linkage.Contacts.TongueFront(_pose)!.Value;
        TongueBack = linkage.Contacts.TongueBack(_pose)!.Value;
        Lever();
        Irons();
        Nut();
    }

    public BandExtent PadFront { get; }

    public BandExtent PadBack { get; }

    public BandExtent TongueFront { get; }

    public BandExtent TongueBack { get; }

    public ImmutableArray<ViewEdge> Edges => _edges.ToImmutable();

    public ImmutableArray<HatchedRegion> Hatching => _hatching.ToImmutable();

    /// <summary>The view turned so that the sole is level.</summary>
    public Transform2D Orientation => Transform2D.Turn(_frame.Angle - _linkage.Assembly.Plane.BedAngle.Radians);

    /// <summary>The way the lever's section lines run: at 45 degrees on paper.</summary>
    public Vector2D Lining => Vector2D.FromAngle((Math.PI / 4) - _frame.Angle + _linkage.Assembly.Plane.BedAngle.Radians);

    /// <summary>Where each gap can be pointed at, and the open way to it: groove and slot at their mouths, since deeper in an arrow would come across pad or cap iron; the thread at either flank of the stud, from the knob's free face; the pin's at the hole's wall where it is widest, since between the two circles an arrowhead has no room.</summary>
    public ImmutableArray<SurfacePoint> PlacesIn(Gap gap) => gap switch
    {
        Gap.Groove => [AtRim(-1), AtRim(1)],
        Gap.Slot => [new SurfacePoint(AtBed(-TongueBack.Reach - (_gaps.Slot / 2), (0.1 * _frame.SlotBottom) + (0.9 * _frame.SlotTop)), _frame.Up)],
        Gap.Pivot => [.. new double[] { 0, -20, 20, -40, 40, -60, 60, -80, 80 }.Select(degrees => OnWall(degrees * Math.PI / 180))],
        _ => [AtStud(1), AtStud(-1)],
    };

    /// <summary>Where the stud's drawn end lies, along it.</summary>
    public double StudEnd => KnobFace - StudOut;

    /// <summary>Places that the parts' names may point to, and which way the part's edges run there.</summary>
    public ImmutableArray<(string Name, ImmutableArray<Point2D> Places, Vector2D Grain)> Names
    {
        get
        {
            double iron = (_linkage.Assembly.Plane.PivotDepth.Millimetres + Joint) / 2, cap = (Joint + _frame.SlotTop) / 2;
            double front = TongueFront.Reach + Iron - 3, back = -TongueBack.Reach - _gaps.Slot - Iron + 3, knob = BackFlange - Flange - (Knob / 2), up = KnobHalf * 0.6;
            return
            [
                ("IRON", [AtBed(front, iron), AtBed(back, iron)], _frame.Bed),
                ("CAP IRON", [AtBed(back, cap), AtBed(front, cap)], _frame.Bed),
                ("NUT", [.. new double[] { 0, -1.5, 1.5 }.SelectMany(aside => new double[] { -up, up }.Select(height => new Point2D(knob + aside, height - _frame.StudDistance)))], SlotFrame.Stud),
            ];
        }
    }

    /// <summary>Centre of the pin: the lever has been pushed aside until the hole's wall behind it came to bear.</summary>
    public Point2D PinCentre => Point2D.Origin - (Net * (_gaps.Pivot / 2));

    public Point2D AtBed(double along, double height) => Point2D.Origin + (_frame.Bed * along) + (_frame.Up * height);

    /// <summary>In the groove at its back flange's rim, midway between rim and pad; the flange stands open to the back.</summary>
    private SurfacePoint AtRim(int side)
    {
        double height = -_frame.StudDistance + (side * RimHalf);
        double pad = ContourChords.HorizontalAt(_outline, height).Min(chord => chord.From);
        return new(new Point2D((BackFlange + pad) / 2, height), new Vector2D(-0.5, side).Unit());
    }

    /// <summary>Where the stud comes out of the nut's knob.</summary>
    private SurfacePoint AtStud(int side) => new(new Point2D(KnobFace, -_frame.StudDistance + (side * StudHalf)), new Vector2D(-1, side * 0.8).Unit());

    /// <summary>On the hole's wall, so far round from where it is farthest from the pin.</summary>
    private SurfacePoint OnWall(double turn)
    {
        Vector2D outward = Vector2D.FromAngle(Net.Angle + turn);
        return new(Point2D.Origin + (outward * HoleRadius), outward);
    }

    /// <summary>Between iron and cap iron, drawn no nearer to the slot's faces than their beginning can be told from it.</summary>
    private double Joint => Math.Min(_frame.IronTop, _frame.SlotBottom - LeastBreak);

    private double HoleRadius => _linkage.Sizes.Hole.Mid.Millimetres / 2;

    private double BackFlange => -PadBack.Reach - _gaps.Groove;

    private double KnobFace => BackFlange - Flange - Knob;

    /// <summary>From the stud's axis to the flanges' drawn rims.</summary>
    private double RimHalf => _linkage.Assembly.Lever.Sizes[LeverFields.PadLength].Millimetres * 0.3;

    /// <summary>The way nut and iron push the lever while the nut drives the iron down.</summary>
    private Vector2D Net
    {
        get
        {
            double k = _linkage.Motion.Slot;
            return (-PadFront.Normal - (TongueFront.Normal * k)).Unit();
        }
    }

    private void Lever()
    {
        Lever lever = _linkage.Assembly.Lever;
        Transform2D turn = Transform2D.Turn(_pose.Turn);
        foreach (Edge edge in _outline.Edges)
            _edges.Add(new(LineRole.Edge, edge));
        // The middle plane cuts head, web and tongue; the arms stand behind it.
        Contour hole = Contour.Circle(Point2D.Origin, HoleRadius);
        double crotch = lever.Fork.GapTop;
        foreach (Contour cut in ContourClip.ByLine(lever.SideProfile, new Point2D(0, crotch), new Vector2D(1, 0)))
            _hatching.Add(new HatchedRegion([cut.Transformed(turn), hole.Reversed()]));
        foreach (Interval chord in ContourChords.HorizontalAt(lever.SideProfile, crotch))
            _edges.Add(new(LineRole.Edge, new LineEdge(new(chord.From, crotch), new(chord.To, crotch)).Transformed(turn)));
        _edges.Add(new(LineRole.Edge, ArcEdge.FullCircle(Point2D.Origin, HoleRadius)));
        double pin = HoleRadius - (_gaps.Pivot / 2);
        _edges.Add(new(LineRole.Edge, ArcEdge.FullCircle(PinCentre, pin)));
        // Cut across, so lined, unlike a pin cut along.
        _hatching.Add(new HatchedRegion([Contour.Circle(PinCentre, pin)]) { Angle = 3 * Math.PI / 4, Spacing = 0.6 });
        double cross = lever.Sizes[LeverFields.HeadDepth].Millimetres / 2;
        // The lever's axis, from which its lengths are measured; the pin stands aside of it by half the gap.
        _edges.Add(new(LineRole.Centre, new LineEdge(new(-cross, 0), new(cross, 0))));
        _edges.Add(new(LineRole.Centre, new LineEdge(new(0, -cross), new(0, cross))));
    }

    private void Irons()
    {
        double bed = _linkage.Assembly.Plane.PivotDepth.Millimetres, top = Joint, broken = _frame.SlotBottom - _frame.IronTop, cap = _frame.SlotTop + broken;
        double front = TongueFront.Reach, back = -TongueBack.Reach - _gaps.Slot;
        // The iron's slot clears the tongue at every height in it.
        (double low, double high) = Span(bed, top);
        Strip(low - IronSlot, -1, bed, top, default, Math.PI / 4);
        Strip(high + IronSlot, 1, bed, top, default, Math.PI / 4);
        Strip(back, -1, top, cap, (_frame.SlotBottom - Joint, broken), -Math.PI / 4);
        Strip(front, 1, top, cap, (_frame.SlotBottom - Joint, broken), -Math.PI / 4);
    }

    /// <summary>How far the tongue reaches both ways between two heights.</summary>
    private (double Low, double High) Span(double from, double to)
    {
        Edge[] outline = [.. _outline.Edges];
        double high = BandExtent.Of(outline, _frame.Bed, from, to)?.Reach ?? TongueFront.Reach;
        double low = -(BandExtent.Of(outline, -_frame.Bed, -to, -from)?.Reach ?? TongueBack.Reach);
        return (low, high);
    }

    /// <summary>An iron's end at the slot, its edges broken, running out of the picture.</summary>
    /// <param name="hatch">Of the section lines to the bed.</param>
    private void Strip(double face, int way, double from, double to, (double Below, double Above) broken, double hatch)
    {
        double far = face + (way * Iron);
        List<Point2D> corners = [AtBed(far, from)];
        if (broken.Below > 0)
            corners.Add(AtBed(face + (way * broken.Below), from));
        corners.AddRange([AtBed(face, from + broken.Below), AtBed(face, to - broken.Above)]);
        if (broken.Above > 0)
            corners.Add(AtBed(face + (way * broken.Above), to));
        corners.Add(AtBed(far, to));
        List<Edge> loop = [];
        for (int i = 0; i + 1 < corners.Count; i++)
            loop.Add(new LineEdge(corners[i], corners[i + 1]));
        foreach (Edge edge in loop)
            _edges.Add(new(LineRole.Edge, edge));
        ImmutableArray<Edge> end = Freehand(corners[^1], corners[0]);
        foreach (Edge edge in end)
            _edges.Add(new(LineRole.Dimension, edge));
        loop.AddRange(end);
        _hatching.Add(new HatchedRegion([Contour.Of(loop)]) { Angle = hatch - _linkage.Assembly.Plane.BedAngle.Radians, Spacing = 0.8 });
    }

    private void Nut()
    {
        double axis = -_frame.StudDistance, half = RimHalf;
        double front = PadFront.Reach, back = BackFlange, knob = KnobFace;
        Loop([new(front, axis - half), new(front + Flange, axis - half), new(front + Flange, axis + half), new(front, axis + half)]);
        Loop([new(back - Flange, axis - half), new(back, axis - half), new(back, axis + half), new(back - Flange, axis + half), new(back - Flange, axis + KnobHalf), new(knob, axis + KnobHalf), new(knob, axis - KnobHalf), new(back - Flange, axis - KnobHalf)]);
        _edges.Add(new(LineRole.Edge, new LineEdge(new(knob, axis + StudHalf), new(StudEnd, axis + StudHalf))));
        _edges.Add(new(LineRole.Edge, new LineEdge(new(StudEnd, axis + StudHalf), new(StudEnd, axis - StudHalf))));
        _edges.Add(new(LineRole.Edge, new LineEdge(new(StudEnd, axis - StudHalf), new(knob, axis - StudHalf))));
        _edges.Add(new(LineRole.Centre, new LineEdge(new(StudEnd, axis), new(front + Flange + 4, axis))));
    }

    private void Loop(Point2D[] corners)
    {
        Edge[] edges = [.. corners.Select((c, i) => new LineEdge(c, corners[(i + 1) % corners.Length]))];
        foreach (Edge edge in edges)
            _edges.Add(new(LineRole.Edge, edge));
        _hatching.Add(new HatchedRegion([Contour.Of(edges)]) { Angle = 3 * Math.PI / 4 });
    }

    private static ImmutableArray<Edge> Freehand(Point2D from, Point2D to) => [.. Drafting.Symbols.BreakLine.Freehand(from, to, Wave)];
}
