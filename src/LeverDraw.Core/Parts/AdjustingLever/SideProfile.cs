using System.Collections.Immutable;
using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>Builds the side profile: what is seen along the pin, in (n, z), pivot at the origin, counter-clockwise from the lower left of the pads.</summary>
internal static class SideProfile
{
    /// <returns>Null when findings were added.</returns>
    public static ImmutableArray<NamedEdge>? Build(LeverMeasures m, LeverFindings findings)
    {
        ArmFaces arms = ArmFaces.Of(m);
        HeadOutline head = HeadOutline.Of(m);
        TongueOutline tongue = TongueOutline.Of(m), nose = tongue.With(m.TongueStock, m.TongueForm);
        Point2D pad = new(arms.PadShift, -m.ArmLength);
        Point2D rightCrownCentre = new(pad.X + (m.PadThickness / 2) - m.CrownRadius, pad.Y);
        Point2D leftCrownCentre = new(pad.X - (m.PadThickness / 2) + m.CrownRadius, pad.Y);
        Edge rightCrown = Carriers.Circle(rightCrownCentre, m.CrownRadius, true);
        Edge leftCrown = Carriers.Circle(leftCrownCentre, m.CrownRadius, true);

        (PadSide? right, PadSide? left) = PadSide.Both(m, rightCrownCentre, leftCrownCentre, arms);
        findings.OddsIf(right is null || left is null, () => $"the arm ({LeverFindings.Mm(m.ArmEndThickness)} thick where it meets the pad) leaves no step above the crown",
            "Make the arm thicker, the pad thinner, or the crown radius smaller.", LeverFields.ArmThickness, LeverFields.PadThickness, LeverFields.CrownRadius, LeverFields.Fillet);

        Vector2D down = new(0, -1);
        HeadBlend? armRight = head.BlendWith(arms.Right, m.HeadFillet, down, true);
        HeadBlend? armLeft = head.BlendWith(arms.Left, m.HeadFillet, down, false);
        if (armRight is null || armLeft is null)
            findings.NoFillet(m.HeadFillet, "the head and an arm's face", "Make the head deeper or the arms thinner.", LeverFields.ArmThickness, LeverFields.HeadDepth, LeverFields.HeadFillet);
        HeadBlend? lower = head.BlendWith(tongue.Lower, m.HeadFillet, tongue.Frame.Along, false);
        HeadBlend? upper = head.BlendWith(tongue.Upper, m.HeadFillet, tongue.Frame.Along, true);
        if (lower is null || upper is null)
            findings.NoFillet(m.HeadFillet, "the head and a flank of the tongue", "Make the head deeper, or the tongue's root thinner by thickness or flank taper.", LeverFields.TongueThickness, LeverFields.HeadDepth, LeverFields.FlankTaper, LeverFields.HeadFillet);
        if (right is not { } r || left is not { } l || armRight is not { } ar || armLeft is not { } al || lower is not { } lo || upper is not { } up)
            return null;

        OutlinePath path = new(EndStart(m, leftCrown, pad));
        FollowEnd(path, m, rightCrown, pad);
        path.Along("crown-right", rightCrown, r.CrownStart);
        path.Turn("step-fillet-right", r.FilletCentre, r.Shoulder, false);
        path.To("shoulder-right", r.FaceEnd);
        path.Along("arm-right", arms.Right, ar.Blend.From);
        path.Blend("head-fillet-arm-right", ar.Blend);
        if (!head.Follow(path, "head-right", ar, lo))
            findings.Odds($"the fillets of radius {LeverFindings.Mm(m.HeadFillet)} between head and arm and between head and tongue run into each other inside the bend",
                "Make the head fillet smaller, the head deeper, or the sweep smaller.", LeverFields.HeadFillet, LeverFields.HeadDepth, LeverFields.Sweep);
        bool runsOut = m.TongueStock > Coincidence.Distance && m.TongueForm != LeverFields.Bulb;
        if (runsOut)
            FollowRunOut(path, StockRunOut.Of(Piece(tongue.Lower, lo.Blend.To, tongue.LowerEnd(m)), true, lo.Blend, m.TongueThickness, m.TongueStock), lo.Blend);
        else
            path.Blend("head-fillet-flank-lower", lo.Blend);
        if (!nose.Follow(path, m))
            findings.NoFillet(m.NeckFillet, "the neck and the bulb", "Make the neck thinner or the fillet smaller.", LeverFields.NeckThickness, LeverFields.TongueThickness, LeverFields.Fillet);
        if (runsOut)
        {
            StockRunOut run = StockRunOut.Of(Piece(tongue.Upper, tongue.UpperStart(m), up.Blend.From), false, up.Blend, m.TongueThickness, m.TongueStock);
            path.Along("flank-upper", nose.Upper, run.OnFlank);
            path.To("run-out-upper", run.OnFillet);
        }
        else
        {
            path.Along("flank-upper", tongue.Upper, up.Blend.From);
        }

        path.Blend("head-fillet-flank-upper", up.Blend);
        if (!head.Follow(path, "head-left", up, al))
            findings.Odds($"the fillets of radius {LeverFindings.Mm(m.HeadFillet)} between head and arm and between head and tongue run into each other behind the head",
                "Make the head fillet smaller or the head deeper.", LeverFields.HeadFillet, LeverFields.HeadDepth, LeverFields.HeadHeight);
        path.Blend("head-fillet-arm-left", al.Blend);
        path.Along("arm-left", arms.Left, l.FaceEnd);
        path.To("shoulder-left", l.Shoulder);
        path.Turn("step-fillet-left", l.FilletCentre, l.CrownStart, false);
        path.Along("crown-left", leftCrown, path.Edges[0].Edge.Start);
        bool bulb = m.TongueForm == LeverFields.Bulb;
        double covered = Math.Max((lo.Blend.To - Point2D.Origin).Dot(tongue.Frame.Along), (up.Blend.From - Point2D.Origin).Dot(tongue.Frame.Along)) - tongue.Level;
        findings.OddsIf(bulb && covered > 0, () => $"the head's fillets reach {LeverFindings.Mm(covered)} past the place where the neck ({LeverFindings.Mm(m.NeckThickness)}) is measured",
            "Make the tongue longer, or the head fillet or the bulb smaller.", LeverFields.NeckThickness, LeverFields.HeadFillet, LeverFields.TongueLength);
        findings.OddsIf(!bulb && covered > 0, () => $"the head's fillets reach {LeverFindings.Mm(covered)} past the nose's centre, where the tongue's thickness is measured",
            "Make the tongue longer, or the head or the head fillet smaller.", LeverFields.TongueThickness, LeverFields.HeadFillet, LeverFields.TongueLength);
        foreach (PathFault fault in path.Faults)
            SideFaults.Report(fault, m, findings);
        return findings.HasErrors ? null : path.Done();
    }

    private static void FollowRunOut(OutlinePath path, StockRunOut run, Blend fillet)
    {
        path.Turn("head-fillet-flank-lower", fillet.Centre, run.OnFillet, false);
        path.To("run-out-lower", run.OnFlank);
    }

    private static Edge Piece(Edge carrier, Point2D from, Point2D to) =>
        carrier is ArcEdge arc ? ArcEdge.Between(arc.Centre, from, to, arc.Sweep > 0) : new LineEdge(from, to);

    // The outline begins at the lower end of the left crown.
    private static Point2D EndStart(LeverMeasures m, Edge leftCrown, Point2D pad) =>
        m.RoundPadEnd || m.PadEndCorner > 0 ? EndCorner(m, leftCrown, pad, true).From : Mirrored(SharpCorner(m, pad), pad);

    private static void FollowEnd(OutlinePath path, LeverMeasures m, Edge rightCrown, Point2D pad)
    {
        if (m.RoundPadEnd)
        {
            Blend round = EndCorner(m, rightCrown, pad, false);
            path.Turn("pad-end", round.Centre, round.To, true);
            return;
        }

        Edge end = Carriers.Line(new(pad.X, m.PadBottom), new(1, 0));
        if (m.PadEndCorner > 0)
        {
            Blend right = EndCorner(m, rightCrown, pad, false);
            Point2D leftCentre = Mirrored(right.Centre, pad);
            path.Turn("pad-corner-left", leftCentre, Carriers.Foot(end, leftCentre), true);
            path.Along("pad-end", end, right.From);
            path.Blend("pad-corner-right", right);
        }
        else
        {
            path.Along("pad-end", end, SharpCorner(m, pad));
        }
    }

    /// <summary>The round between crown and end, on the crown given. Full round: r = (Rn·tn − tn²/4 − Ln²/4) / (2Rn − Ln), centred on the pad.</summary>
    private static Blend EndCorner(LeverMeasures m, Edge crown, Point2D pad, bool left)
    {
        ArcEdge arc = (ArcEdge)crown;
        double r = m.RoundPadEnd ? PadEndRadius(m) : m.PadEndCorner;
        double reach = m.CrownRadius - r, rise = (m.PadLength / 2) - r;
        Point2D centre = m.RoundPadEnd
            ? new Point2D(pad.X, m.PadBottom + r)
            : new Point2D(arc.Centre.X + ((left ? -1 : 1) * Math.Sqrt((reach * reach) - (rise * rise))), m.PadBottom + r);
        Point2D onCrown = Carriers.Foot(crown, centre), onEnd = new(centre.X, m.PadBottom);
        return left ? new Blend(centre, r, onCrown, onEnd, false) : new Blend(centre, r, onEnd, onCrown, false);
    }

    public static double PadEndRadius(LeverMeasures m) =>
        ((m.CrownRadius * m.PadThickness) - (m.PadThickness * m.PadThickness / 4) - (m.PadLength * m.PadLength / 4)) / ((2 * m.CrownRadius) - m.PadLength);

    /// <summary>Half the pad's thickness at its two ends, where the crown has fallen away.</summary>
    public static double PadEndHalf(LeverMeasures m) =>
        (m.PadThickness / 2) - m.CrownRadius + Math.Sqrt((m.CrownRadius * m.CrownRadius) - (m.PadLength * m.PadLength / 4));

    private static Point2D SharpCorner(LeverMeasures m, Point2D pad) => new(pad.X + PadEndHalf(m), m.PadBottom);

    private static Point2D Mirrored(Point2D p, Point2D pad) => new((2 * pad.X) - p.X, p.Y);
}
