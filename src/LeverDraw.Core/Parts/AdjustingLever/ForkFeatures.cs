using System.Collections.Immutable;
using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>What drafting may dimension in the fork profile, in (x, z) millimetres; symmetric, so the right half is named. A piece the lever does not have is null.</summary>
/// <param name="HeadCorner">Where the head's side and top would meet without round and fillet.</param>
/// <param name="ShoulderCorner">Where shoulder and arm's outer side would meet without the round.</param>
/// <param name="ShoulderStart">Where the shoulder, or its fillet, leaves the head's side.</param>
/// <param name="GapTop">Level of the fork gap's top.</param>
/// <param name="TongueTop">Level of the tongue's highest point, foreshortened by the sweep.</param>
/// <param name="TongueFoot">Where the tongue's side meets the head's fillet.</param>
/// <param name="ArmEnd">Level of the arms' ends.</param>
/// <param name="Edges">All pieces by name, in order round the outline.</param>
public sealed record ForkFeatures(
    Point2D HeadCorner,
    Point2D ShoulderCorner,
    Point2D ShoulderStart,
    double GapTop,
    double TongueTop,
    Point2D TongueFoot,
    double ArmEnd,
    ImmutableArray<NamedEdge> Edges)
{
    public ArcEdge Crotch => (ArcEdge)Find("crotch-right")!;

    /// <summary>The flat between two crotch radii; null when they make one round.</summary>
    public LineEdge? GapTopFlat => Find("gap-top") as LineEdge;

    public LineEdge GapSide => (LineEdge)Find("gap-side-right")!;

    public LineEdge ArmOuter => (LineEdge)Find("arm-outer-right")!;

    /// <summary>A line, or the arc of a concave shoulder.</summary>
    public Edge Shoulder => Find("shoulder-right")!;

    public ArcEdge? ShoulderFillet => Find("shoulder-fillet-right") as ArcEdge;

    public ArcEdge? ShoulderRound => Find("shoulder-round-right") as ArcEdge;

    public LineEdge HeadSide => (LineEdge)Find("head-side-right")!;

    public ArcEdge? HeadRound => Find("head-round-right") as ArcEdge;

    /// <summary>The flat of the head's top; null when round and fillet run into each other.</summary>
    public LineEdge? HeadTop => Find("head-top-right") as LineEdge;

    /// <summary>The fillet at the tongue's foot; null when it is zero or the tongue is as wide as the head.</summary>
    public ArcEdge? TongueFillet => Find("tongue-fillet-right") as ArcEdge;

    public LineEdge TongueSide => (LineEdge)Find("tongue-side-right")!;

    public ArcEdge? ArmCorner => Find("arm-corner-outer-right") as ArcEdge;

    /// <summary>The piece of this name, or null.</summary>
    public Edge? Find(string name)
    {
        foreach (NamedEdge piece in Edges)
        {
            if (piece.Name == name)
                return piece.Edge;
        }

        return null;
    }

    internal static ForkFeatures Of(LeverMeasures m, ImmutableArray<NamedEdge> edges, double top)
    {
        double foot = m.HeadHeight / 2;
        foreach (NamedEdge piece in edges)
        {
            if (piece.Name == "tongue-side-right")
                foot = piece.Edge.Start.Y;
        }

        Shoulder shoulder = AdjustingLever.Shoulder.Of(m);
        return new ForkFeatures(
            new(m.HeadWidth / 2, m.HeadHeight / 2),
            shoulder.ArmCorner,
            new(m.HeadWidth / 2, (shoulder.FilletCentre ?? shoulder.HeadEnd).Y),
            m.GapTop,
            top,
            new(m.TongueWidth / 2, foot),
            m.PadBottom,
            edges);
    }
}
