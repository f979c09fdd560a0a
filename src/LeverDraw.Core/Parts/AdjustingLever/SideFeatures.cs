using System.Collections.Immutable;
using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>What drafting may dimension in the side profile, in (n, z) millimetres, pivot at the origin. A piece the lever does not have is null.</summary>
/// <param name="PadCentre">Middle of the pads, on their mid-line.</param>
/// <param name="PadTop">Level of the top of the pads.</param>
/// <param name="PadBottom">Level of the pads' ends.</param>
/// <param name="CrownRight">Point of greatest thickness on the +n crown; the other is <paramref name="CrownLeft"/>.</param>
/// <param name="ArmRight">Where the arm's +n face has the stated thickness (of a straight arm at the level of the head's lower end, on the face's carrier under the fillet).</param>
/// <param name="ArmMidline">From the pivot to the top of the pad.</param>
/// <param name="Tongue">Directions of the tongue.</param>
/// <param name="NoseCentre">Where the tongue's thickness is stated.</param>
/// <param name="NoseLower">The tongue's +t face at the nose centre: its thickness is the distance to <paramref name="NoseUpper"/>. For a cam it is the point the cam flank passes through.</param>
/// <param name="NoseTip">Farthest point along the tongue's mid-line.</param>
/// <param name="Top">Level of the highest point.</param>
/// <param name="Edges">All pieces by name, in order round the outline.</param>
public sealed record SideFeatures(
    Point2D PadCentre,
    double PadTop,
    double PadBottom,
    Point2D CrownRight,
    Point2D CrownLeft,
    Point2D ArmRight,
    Point2D ArmLeft,
    Edge ArmMidline,
    TongueFrame Tongue,
    Point2D NoseCentre,
    Point2D NoseLower,
    Point2D NoseUpper,
    Point2D NoseTip,
    double NoseRadius,
    double Top,
    ImmutableArray<NamedEdge> Edges)
{
    public ArcEdge CrownArcRight => (ArcEdge)Find("crown-right")!;

    public ArcEdge CrownArcLeft => (ArcEdge)Find("crown-left")!;

    public Edge ArmFaceRight => Find("arm-right")!;

    public Edge ArmFaceLeft => Find("arm-left")!;

    /// <summary>A line, or the cam's arc.</summary>
    public Edge FlankLower => Find("flank-lower")!;

    /// <summary>How far the pads stand beside the upright through the pivot, millimetres.</summary>
    public double PadShift => Math.Abs(PadCentre.X);

    public LineEdge FlankUpper => (LineEdge)Find("flank-upper")!;

    /// <summary>The round nose or bulb; null on a parallel tongue.</summary>
    public ArcEdge? Nose => Find("nose") as ArcEdge;

    /// <summary>The flat end of a parallel tongue, unless its corners use it up.</summary>
    public LineEdge? NoseEnd => Find("nose-end") as LineEdge;

    public ArcEdge? NoseCorner => Find("nose-corner-lower") as ArcEdge;

    public ArcEdge? NeckFillet => Find("neck-fillet-lower") as ArcEdge;

    public ArcEdge HeadFilletArmRight => (ArcEdge)Find("head-fillet-arm-right")!;

    public ArcEdge HeadFilletArmLeft => (ArcEdge)Find("head-fillet-arm-left")!;

    public ArcEdge HeadFilletFlankLower => (ArcEdge)Find("head-fillet-flank-lower")!;

    public ArcEdge HeadFilletFlankUpper => (ArcEdge)Find("head-fillet-flank-upper")!;

    public ArcEdge? StepFilletRight => Find("step-fillet-right") as ArcEdge;

    public ArcEdge? StepFilletLeft => Find("step-fillet-left") as ArcEdge;

    /// <summary>The pad's end: a line, or the arc of a full round; null when two corners meet.</summary>
    public Edge? PadEnd => Find("pad-end");

    public ArcEdge? PadCorner => Find("pad-corner-right") as ArcEdge;

    /// <summary>The first piece of this name, or null.</summary>
    public Edge? Find(string name)
    {
        foreach (NamedEdge piece in Edges)
        {
            if (piece.Name == name)
                return piece.Edge;
        }

        return null;
    }

    internal static SideFeatures Of(LeverMeasures m, ImmutableArray<NamedEdge> edges, double top)
    {
        ArmFaces arms = ArmFaces.Of(m);
        TongueOutline tongue = TongueOutline.Of(m).With(m.TongueStock, m.TongueForm);
        (Point2D noseLower, Point2D noseUpper) = NoseFaces(m, tongue);
        double half = m.TongueThickness / 2, arm = m.ArmThickness / 2, pad = m.PadThickness / 2;
        Point2D level = arms.Mid is ArcEdge ? arms.Mid.PointAt(0.5) : new Point2D(0, -m.ArmThicknessLevel);
        Vector2D across = arms.Mid is ArcEdge mid ? (level - mid.Centre).Unit() * (level.X > mid.Centre.X ? 1 : -1) : new Vector2D(1, 0);
        double tip = m.TongueLength + (m.TongueForm == LeverFields.Parallel ? half + m.TongueStock : tongue.NoseRadius);
        return new SideFeatures(
            new(arms.PadShift, -m.ArmLength),
            m.PadTop,
            m.PadBottom,
            new(arms.PadShift + pad, -m.ArmLength),
            new(arms.PadShift - pad, -m.ArmLength),
            level + (across * arm),
            level - (across * arm),
            arms.Mid,
            tongue.Frame,
            tongue.NoseCentre,
            noseLower,
            noseUpper,
            tongue.Frame.At(tip, 0),
            tongue.NoseRadius,
            top,
            edges);
    }

    private static (Point2D Lower, Point2D Upper) NoseFaces(LeverMeasures m, TongueOutline tongue)
    {
        double half = m.TongueThickness / 2;
        Point2D lower = tongue.Frame.At(m.TongueLength, half), upper = tongue.Frame.At(m.TongueLength, -half);
        if (m.TongueStock == 0)
            return (lower, upper);
        if (m.TongueForm == LeverFields.Bulb)
            return (tongue.Frame.At(m.TongueLength, half + m.TongueStock), tongue.Frame.At(m.TongueLength, -half - m.TongueStock));
        Edge across = Carriers.Line(tongue.NoseCentre, tongue.Frame.Across);
        return (Carriers.Meet(tongue.Lower, across, lower) ?? lower, Carriers.Meet(tongue.Upper, across, upper) ?? upper);
    }
}
