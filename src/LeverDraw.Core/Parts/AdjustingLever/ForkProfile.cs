using System.Collections.Immutable;
using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>Builds the fork profile: what is seen square to the arms, in (x, z), symmetric about x = 0, counter-clockwise from the left end of the gap's top.</summary>
internal static class ForkProfile
{
    private const string RightSuffix = "-right";

    /// <param name="top">Level of the tongue's highest point in the side profile.</param>
    /// <returns>Null when findings were added.</returns>
    public static ImmutableArray<NamedEdge>? Build(LeverMeasures m, double top, LeverFindings findings)
    {
        OutlinePath path = new(new(0, m.GapTop));
        FollowGapAndArm(path, m);
        if (!FollowShoulder(path, m, findings) || !FollowHeadAndTongue(path, m, top, findings))
            return null;
        path.Along("tongue-top", Carriers.Line(new(0, top), new(-1, 0)), new(0, top));
        foreach (PathFault fault in path.Faults)
            ForkFaults.Report(fault, m, findings);
        return findings.HasErrors ? null : Whole(path.Edges);
    }

    private static void FollowGapAndArm(OutlinePath path, LeverMeasures m)
    {
        double inner = m.Gap / 2, outer = inner + m.ArmWidth, rf = m.CrotchRadius, re = m.ArmEndCorner;
        path.Along("gap-top", Carriers.Line(path.At, new(1, 0)), new(inner - rf, m.GapTop));
        path.Turn("crotch-right", new(inner - rf, m.GapTop - rf), new(inner, m.GapTop - rf), false);
        path.Along("gap-side-right", Carriers.Line(path.At, new(0, -1)), new(inner, m.PadBottom + re));
        path.Turn("arm-corner-inner-right", new(inner + re, m.PadBottom + re), new(inner + re, m.PadBottom), true);
        path.Along("arm-end-right", Carriers.Line(path.At, new(1, 0)), new(outer - re, m.PadBottom));
        path.Turn("arm-corner-outer-right", new(outer - re, m.PadBottom + re), new(outer, m.PadBottom + re), true);
    }

    private static bool FollowShoulder(OutlinePath path, LeverMeasures m, LeverFindings findings)
    {
        double side = m.HeadWidth / 2;
        Shoulder shoulder = Shoulder.Of(m);
        Edge outer = Carriers.Line(new(m.Outside / 2, 0), new(0, 1));
        Point2D corner = shoulder.ArmCorner;
        if (m.EdgeRound == 0)
        {
            path.Along("arm-outer-right", outer, corner);
        }
        else if (Blend.Between(outer, shoulder.Carrier, m.EdgeRound, false, corner) is { } round)
        {
            path.Along("arm-outer-right", outer, round.From);
            path.Blend("shoulder-round-right", round);
        }
        else
        {
            findings.NoFillet(m.EdgeRound, "the arm's outer side and the shoulder", "Make the edge round smaller.", LeverFields.EdgeRound, LeverFields.ShoulderRadius);
            return false;
        }

        path.Along("shoulder-right", shoulder.Carrier, shoulder.HeadEnd);
        if (shoulder.FilletCentre is { } centre)
            path.Turn("shoulder-fillet-right", centre, new(side, centre.Y), false);
        return true;
    }

    /// <remarks>Where the head's step is narrower than its round and fillet together, the two arcs meet in a double curve without a flat between.</remarks>
    private static bool FollowHeadAndTongue(OutlinePath path, LeverMeasures m, double top, LeverFindings findings)
    {
        double side = m.HeadWidth / 2, half = m.TongueWidth / 2, crown = m.HeadHeight / 2, rf = m.FootFillet, re = m.EdgeRound;
        Edge headSide = Carriers.Line(new(side, 0), new(0, 1)), tongueSide = Carriers.Line(new(half, 0), new(0, 1));
        if (side - half > Coincidence.Distance)
        {
            Point2D roundCentre = new(side - re, crown - re);
            double flat = side - half - re - rf;
            double rise = flat >= 0 ? rf : Math.Sqrt(((rf + re) * (rf + re)) - (flat * flat)) - re;
            Point2D filletCentre = new(half + rf, crown + rise);
            Point2D roundEnd = flat >= 0 ? new(side - re, crown) : Point2D.Lerp(roundCentre, filletCentre, re / (re + rf));
            path.Along("head-side-right", headSide, new(side, crown - re));
            path.Turn("head-round-right", roundCentre, roundEnd, true);
            if (flat >= 0)
                path.Along("head-top-right", Carriers.Line(path.At, new(-1, 0)), new(half + rf, crown));
            path.Turn("tongue-fillet-right", filletCentre, new(half, crown + rise), false);
        }

        // Sharp: a round here, square to the arms, would run out across the nose's slanted face and show nowhere in true shape.
        path.Along("tongue-side-right", tongueSide, new(half, top));
        return true;
    }

    private static ImmutableArray<NamedEdge> Whole(IReadOnlyList<NamedEdge> right)
    {
        // The two pieces on the axis of symmetry are drawn once, across it.
        List<NamedEdge> all = [], left = [];
        foreach (NamedEdge piece in right)
        {
            if (piece.Name.EndsWith(RightSuffix, StringComparison.Ordinal))
            {
                all.Add(piece);
                left.Add(new(piece.Name[..^RightSuffix.Length] + "-left", piece.Edge.Transformed(Transform2D.MirrorX).Reversed()));
            }
            else
            {
                bool top = piece.Name == "tongue-top";
                Point2D end = top ? piece.Edge.Start : piece.Edge.End;
                Point2D mirror = new(-end.X, end.Y);
                all.Add(new(piece.Name, top ? new LineEdge(end, mirror) : new LineEdge(mirror, end)));
            }
        }

        left.Reverse();
        return [.. all, .. left];
    }
}
