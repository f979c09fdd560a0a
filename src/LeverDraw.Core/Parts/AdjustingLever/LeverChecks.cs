using LeverDraw.Profiles;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>What must hold between sizes before any outline can be constructed: findings in the words of the fields.</summary>
internal static class LeverChecks
{
    /// <summary>Least metal round the hole, and between crotch and shoulder, millimetres (own rule).</summary>
    private const double LeastWall = 0.5;

    public static void Before(LeverMeasures m, IFieldValues values, LeverFindings findings)
    {
        Head(m, findings);
        Arms(m, values, findings);
        Pads(m, findings);
        Fork(m, findings);
        Tongue(m, values, findings);
        Boss(m, values, findings);
    }

    private static string Mm(double v) => LeverFindings.Mm(v);

    private static void Head(LeverMeasures m, LeverFindings findings)
    {
        findings.OddsIf(!m.RoundHead && 2 * m.HeadCornerRadius > Math.Min(m.HeadDepth, m.HeadHeight), () => $"two corners of {Mm(m.HeadCornerRadius)} do not fit a head of {Mm(Math.Min(m.HeadDepth, m.HeadHeight))}",
            "Make the corner radius at most half the head's depth and height.", LeverFields.HeadCornerRadius, LeverFields.HeadDepth, LeverFields.HeadHeight);
        findings.OddsIf(m.ArmThickness >= m.HeadDepth, () => $"the arms ({Mm(m.ArmThickness)}) are as thick as the head ({Mm(m.HeadDepth)}) or thicker",
            "Make the head deeper or the arms thinner.", LeverFields.ArmThickness, LeverFields.HeadDepth);
        findings.OddsIf(m.RoundHead && m.HeadDepth > m.HeadHeight + 1e-9 && m.GapTop > -m.HeadDepth / 2 + LeastWall, () => $"the fork gap, {Mm(-m.GapTop)} below the pivot, cuts into the round head, which reaches {Mm(m.HeadDepth / 2)} below it",
            "Make the head higher or the web larger.", LeverFields.HeadHeight, LeverFields.HeadDepth, LeverFields.Web);
    }

    private static void Arms(LeverMeasures m, IFieldValues values, LeverFindings findings)
    {
        findings.OddsIf(values.Find(LeverFields.ArmSagitta)?.Tolerance is not null, () => "a tolerance on the sagitta has no place on the sheet, which states how far the pads stand aside",
            "Leave the tolerance away: the zone of the pads' position limits where they stand.", LeverFields.ArmSagitta, LeverFields.PadPosition);
        double needed = m.HeadBottom + (m.PadLength / 2) + m.StepFillet;
        if (needed >= m.ArmLength)
            findings.TooShort(needed, m.ArmLength, "Make the arms longer, or the head or the pads smaller.", LeverFields.ArmLength, LeverFields.HeadDepth, LeverFields.PadLength);
        findings.OddsIf(needed < m.ArmLength && m.ArmForm == LeverFields.Tapered && m.ArmThicknessLevel >= -m.PadTop, () => $"a head fillet of {Mm(m.HeadFillet)} leaves no straight face on the tapered arms above the pads, so their thickness cannot be measured",
            "Make the head fillet smaller or the arms longer.", LeverFields.HeadFillet, LeverFields.ArmLength, LeverFields.ArmThickness);
        findings.OddsIf(m.ArmForm == LeverFields.Curved && Math.Abs(m.Sagitta) > m.ArmLength / 6, () => $"a sagitta of {Mm(m.Sagitta)} is more than a sixth of the arms' length ({Mm(m.ArmLength)})",
            "Make the sagitta smaller.", LeverFields.ArmSagitta, LeverFields.ArmLength);
    }

    private static void Pads(LeverMeasures m, LeverFindings findings)
    {
        findings.OddsIf(m.PadThickness - (2 * m.PadStock) > m.ArmEndThickness, () => $"the pads ({Mm(m.PadThickness)}) are thicker than the arms they step down from ({Mm(m.ArmThickness)})",
            "Make the arms thicker, or let them taper to the pads.", LeverFields.PadThickness, LeverFields.ArmThickness, LeverFields.ArmForm);
        bool small = 2 * m.CrownRadius <= m.PadLength;
        findings.OddsIf(small, () => $"a crown of radius {Mm(m.CrownRadius)} cannot span pads {Mm(m.PadLength)} long",
            "Make the crown radius more than half the pads' length.", LeverFields.CrownRadius, LeverFields.PadLength);
        findings.OddsIf(m.StepFillet >= m.PadLength / 2, () => $"the fillet of {Mm(m.StepFillet)} above the pad's crown takes the whole upper half of the pad ({Mm(m.PadLength / 2)})",
            "Make the fillet smaller or the pads longer.", LeverFields.Fillet, LeverFields.PadLength);
        if (small)
            return;
        if (m.RoundPadEnd)
        {
            double r = SideProfile.PadEndRadius(m);
            findings.OddsIf(r <= 0.1 || r >= m.PadLength / 2 || r >= m.CrownRadius, () => "no full round touches both crowns and the pad's end",
                "Make the crown radius larger or the pads shorter, or take square pad ends.", LeverFields.PadEnd, LeverFields.CrownRadius, LeverFields.PadThickness, LeverFields.PadLength);
            return;
        }

        double half = SideProfile.PadEndHalf(m);
        findings.OddsIf(half < 0.2, () => $"the crown's radius of {Mm(m.CrownRadius)} leaves the pad's end only {Mm(Math.Max(0, 2 * half))} thick",
            "Make the crown radius larger, the pads thicker or shorter.", LeverFields.CrownRadius, LeverFields.PadThickness, LeverFields.PadLength);
        findings.OddsIf(m.PadEndCorner >= Math.Min(m.PadLength / 2, m.CrownRadius), () => $"the pad's end corners of {Mm(m.PadEndCorner)} reach its middle",
            "Make the end corner smaller.", LeverFields.PadEndCorner, LeverFields.PadLength, LeverFields.CrownRadius);
    }

    private static void Fork(LeverMeasures m, LeverFindings findings)
    {
        findings.OddsIf(2 * m.CrotchRadius > m.Gap + 1e-9, () => $"two crotch radii of {Mm(m.CrotchRadius)} are wider than the fork gap ({Mm(m.Gap)})",
            "Make the crotch radius at most half the gap.", LeverFields.CrotchRadius, LeverFields.ForkGap);
        bool narrow = m.Outside <= m.HeadWidth;
        findings.OddsIf(narrow, () => $"the fork is {Mm(m.Outside)} wide outside, no wider than the head ({Mm(m.HeadWidth)})",
            "Make the gap or the arms wider, or the head narrower.", LeverFields.ForkGap, LeverFields.ArmWidth, LeverFields.HeadWidth);
        if (narrow)
            return;
        double overhang = (m.Outside - m.HeadWidth) / 2;
        if (m.ConcaveShoulder)
        {
            findings.OddsIf(m.ShoulderRadius <= overhang + m.EdgeRound, () => $"a concave shoulder of radius {Mm(m.ShoulderRadius)} ends level before it reaches the arm's outer side, {Mm(overhang)} out from the head",
                "Make the shoulder radius larger.", LeverFields.ShoulderRadius, LeverFields.HeadWidth, LeverFields.ForkGap, LeverFields.ArmWidth);
        }
        else
        {
            double end = m.ShoulderEnd ?? (m.CrotchRadius - m.GapTop);
            findings.OddsIf(end <= m.ShoulderStart + 0.5, () => $"the shoulder would end {Mm(end)} below the pivot, not clearly lower than it starts ({Mm(m.ShoulderStart)})",
                "End the shoulder lower or start it higher.", LeverFields.ShoulderEnd, LeverFields.ShoulderStart);
        }

        if (findings.HasErrors)
            return;
        double wall = CrotchWall(m);
        if (wall < LeastWall)
            findings.NoWall(wall, "between the shoulder and the crotch", LeverFields.CrotchRadius, LeverFields.ShoulderEnd, LeverFields.ArmWidth, LeverFields.Web);
    }

    private static void Tongue(LeverMeasures m, IFieldValues values, LeverFindings findings)
    {
        findings.OddsIf(m.TongueWidth > m.HeadWidth, () => $"the tongue ({Mm(m.TongueWidth)}) is wider than the head ({Mm(m.HeadWidth)})",
            "Make the tongue narrower or the head wider.", LeverFields.TongueWidth, LeverFields.HeadWidth);
        double step = (m.HeadWidth - m.TongueWidth) / 2;
        findings.OddsIf(m.EdgeRound == 0 && m.FootFillet > step + 1e-9 && m.TongueWidth < m.HeadWidth, () => $"the fillet of {Mm(m.FootFillet)} is wider than the step from tongue to head ({Mm(step)}) and there is no edge round to run into",
            "Give an edge round, or make the fillet smaller.", m.FootFilletField, LeverFields.EdgeRound, LeverFields.HeadWidth, LeverFields.TongueWidth);
        findings.OddsIf(m.FootFillet == 0 && m.EdgeRound > step + 1e-9 && m.TongueWidth < m.HeadWidth, () => $"the edge round of {Mm(m.EdgeRound)} is wider than the step from head to tongue ({Mm(step)}) and there is no fillet to run into",
            "Give a fillet, or make the edge round smaller.", LeverFields.EdgeRound, m.FootFilletField, LeverFields.HeadWidth, LeverFields.TongueWidth);
        findings.OddsIf(m.FootFilletField == LeverFields.FootFillet && m.FootFillet > 0 && Math.Abs(step) <= Geometry.Coincidence.Distance, () => $"the tongue is as wide as the head ({Mm(m.HeadWidth)}), so there is no corner for the foot fillet of {Mm(m.FootFillet)}",
            "Make the tongue narrower, or the foot fillet zero.", LeverFields.FootFillet, LeverFields.TongueWidth, LeverFields.HeadWidth);
        findings.OddsIf(2 * m.EdgeRound > m.TongueWidth, () => $"two edge rounds of {Mm(m.EdgeRound)} do not fit the tongue's width ({Mm(m.TongueWidth)})",
            "Make the edge round smaller or the tongue wider.", LeverFields.EdgeRound, LeverFields.TongueWidth);
        double root = (m.TongueThickness / 2) + (m.TongueLength * Math.Tan(m.FlankTaper));
        findings.OddsIf(m.TongueForm is LeverFields.GearTooth && root * Math.Cos(m.FlankTaper) >= m.HeadDepth / 2, () => $"the tongue grows to {Mm(2 * root)} at the pivot, thicker than the head ({Mm(m.HeadDepth)})",
            "Make the head deeper, or the flank taper or the tongue's thickness smaller.", LeverFields.TongueThickness, LeverFields.FlankTaper, LeverFields.HeadDepth);
        findings.OddsIf(m.TongueForm == LeverFields.Bulb && m.NeckThickness >= m.TongueThickness, () => $"the neck ({Mm(m.NeckThickness)}) is as thick as the bulb ({Mm(m.TongueThickness)}) or thicker",
            "Make the neck thinner or the bulb thicker.", LeverFields.NeckThickness, LeverFields.TongueThickness);
        findings.OddsIf(m.TongueForm == LeverFields.Bulb && m.NeckThickness < m.TongueThickness && NeckFilletReach(m) > m.TongueThickness / 2,
            () => $"the fillet of {Mm(m.NeckFillet)} behind the bulb covers the place where the neck ({Mm(m.NeckThickness)}) is measured",
            "Make the fillet smaller or the neck thicker.", LeverFields.Fillet, LeverFields.NeckThickness, LeverFields.TongueThickness);
        findings.OddsIf(m.TongueForm == LeverFields.Cam && m.CamRadius <= m.TongueThickness, () => $"a cam flank of radius {Mm(m.CamRadius)} is no flank on a tongue {Mm(m.TongueThickness)} thick",
            "Make the cam radius clearly larger than the tongue's thickness.", LeverFields.CamRadius, LeverFields.TongueThickness);
        findings.OddsIf(m.TongueForm == LeverFields.Parallel && 2 * m.NoseCorner > m.TongueThickness + 1e-9, () => $"two corners of {Mm(m.NoseCorner)} are more than the tongue's thickness ({Mm(m.TongueThickness)})",
            "Make the nose radius at most half the thickness.", values.Find(LeverFields.NoseRadius) is null ? LeverFields.EdgeRound : LeverFields.NoseRadius, LeverFields.TongueThickness);
    }

    private static void Boss(LeverMeasures m, IFieldValues values, LeverFindings findings)
    {
        if (values.Get(LeverFields.BossSides) == LeverFields.None)
            return;
        findings.OddsIf(values.Find(LeverFields.BossHeight)?.Tolerance is not null, () => "a tolerance on the bosses' height has no place on the sheet, which states the width over both",
            "Leave the tolerance away: that of the head's width holds over the bosses.", LeverFields.BossHeight, LeverFields.HeadWidth);
        double least = m.RoundHead ? m.HeadDepth : Math.Min(m.HeadDepth, m.HeadHeight), straight = 2 * ((m.HeadHeight / 2) - m.EdgeRound);
        findings.OddsIf(m.BossDiameter > least, () => $"a boss of {Mm(m.BossDiameter)} overhangs the head ({Mm(least)})",
            "Make the boss at most as large as the head.", LeverFields.BossDiameter, LeverFields.HeadDepth);
        findings.OddsIf(m.BossDiameter > straight, () => $"a boss of {Mm(m.BossDiameter)} runs over the rounded top edge of the head's side, {Mm(straight / 2)} above the pivot",
            "Make the boss or the edge round smaller, or the head higher.", LeverFields.BossDiameter, LeverFields.HeadHeight, LeverFields.EdgeRound);
        if (m.BossDiameter <= m.Hole + (2 * 0.2))
            findings.NoWall((m.BossDiameter - m.Hole) / 2, "round the hole in the boss", LeverFields.BossDiameter, LeverFields.HoleDiameter);
    }

    /// <summary>How far behind the nose centre the fillet to the bulb touches the flank, along the mid-line.</summary>
    private static double NeckFilletReach(LeverMeasures m)
    {
        (double sin, double cos) = Math.SinCos(m.FlankTaper);
        double bulb = m.TongueThickness / 2;
        // The flank's distance from the nose centre, square to the flank.
        double aside = ((m.NeckThickness / 2) - (bulb * sin / cos)) * cos;
        double centre = bulb + m.NeckFillet, along = Math.Sqrt(Math.Max(0, (centre * centre) - ((aside + m.NeckFillet) * (aside + m.NeckFillet))));
        return (along * cos) - (aside * sin);
    }

    /// <summary>Metal between the crotch arc and the shoulder, millimetres; negative when they cross.</summary>
    private static double CrotchWall(LeverMeasures m)
    {
        Geometry.Point2D crotch = new((m.Gap / 2) - m.CrotchRadius, m.GapTop - m.CrotchRadius);
        Shoulder shoulder = Shoulder.Of(m);
        if (shoulder.Carrier is Geometry.ArcEdge arc)
            return arc.Centre.DistanceTo(crotch) - arc.Radius - m.CrotchRadius;
        return shoulder.Carrier.TangentAt(0).Cross(crotch - shoulder.ArmCorner) - m.CrotchRadius;
    }
}
