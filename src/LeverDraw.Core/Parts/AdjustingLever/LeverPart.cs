using System.Globalization;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>From a profile's values to a lever.</summary>
public static class LeverPart
{
    /// <summary>Metal round the hole below which there is none to speak of (own rule), and the usual share of the hole's diameter (common practice, no source).</summary>
    private const double LeastWall = 0.5, UsualEdgeDistance = 0.75;

    /// <summary>Millimetres by which a clearance and the diameters it lies between may differ: all three are rounded (own rule).</summary>
    private const double MostRounding = 0.01;

    /// <summary>The lever, or everything that is wrong with its sizes together. Each single value is taken as already in its own range.</summary>
    public static Checked<Lever> Build(IFieldValues values) => Build(values, LeverPlaces.AsStated);

    internal static Checked<Lever> Build(IFieldValues values, LeverPlaces places) => Build(values, places, LeverStock.None);

    /// <summary>The lever with stock on its machined faces; all other faces stay where they are, and the blends are made anew. Its sizes are still the profile's.</summary>
    internal static Checked<Lever> Build(IFieldValues values, LeverPlaces places, LeverStock stock)
    {
        LeverMeasures m = new(values, places, stock);
        LeverFindings findings = new(values);
        LeverChecks.Before(m, values, findings);
        if (findings.HasErrors || SideProfile.Build(m, findings) is not { } sideEdges)
            return Checked<Lever>.Bad(findings.All);

        Contour side = Contour.Of(sideEdges.Select(e => e.Edge));
        double top = side.Box.MaxY;
        if (ForkProfile.Build(m, top, findings) is not { } forkEdges)
            return Checked<Lever>.Bad(findings.All);
        Contour fork = Contour.Of(forkEdges.Select(e => e.Edge));
        Crossings(side, "side profile", findings, LeverFields.Sweep, LeverFields.HeadFillet, LeverFields.TongueThickness, LeverFields.ArmThickness);
        Crossings(fork, "fork profile", findings, LeverFields.ShoulderEnd, LeverFields.CrotchRadius, LeverFields.Fillet, LeverFields.EdgeRound);

        Boss? boss = values.Get(LeverFields.BossSides) == LeverFields.None ? null : new(values.Get(LeverFields.BossDiameter).Nominal, Length.FromMillimetres(m.BossHeight));
        PivotHole hole = HoleOf(values, Length.FromMillimetres(m.HeadWidth), boss);
        HoleWall(hole, side, m, findings);
        PinInHole(values, findings);
        RaisedMark? mark = values.Get(LeverFields.MarkPlace) is { } place && place != LeverFields.None
            ? new(values.Get(LeverFields.MarkText), place, values.Get(LeverFields.MarkHeight).Nominal, values.Get(LeverFields.MarkLetterHeight).Nominal) { Level = places.MarkLevel }
            : null;
        SideFeatures sideFeatures = SideFeatures.Of(m, sideEdges, top);
        ForkFeatures forkFeatures = ForkFeatures.Of(m, forkEdges, top);
        // On a casting the mark stays where the finished lever has it; what stock takes of its face is a finding of the foundry's.
        if (mark is not null && stock.IsNone)
            MarkRoom(mark, MarkSeat.On(mark, forkFeatures, sideFeatures, hole), boss, findings);
        return Checked<Lever>.From(findings.All, () => new Lever(
            new LeverSizes(values),
            new LeverForms(
                values.Get(LeverFields.HeadForm),
                values.Get(LeverFields.ArmForm),
                values.Get(LeverFields.ArmEnd),
                values.Get(LeverFields.ShoulderForm),
                values.Get(LeverFields.PadEnd),
                values.Get(LeverFields.TongueForm)),
            side,
            fork,
            sideFeatures,
            forkFeatures,
            hole,
            boss,
            mark));
    }

    private static PivotHole HoleOf(IFieldValues values, Length headWidth, Boss? boss)
    {
        Length mid = values.Get(LeverFields.HoleDiameter).Nominal;
        Length half = (headWidth / 2) + (boss?.Height ?? Length.Zero);
        Taper taper = values.Get(LeverFields.HoleTaper);
        bool right = values.Get(LeverFields.HoleLargeEnd) == LeverFields.Right;
        Length change = half * (right ? taper.Rate : -taper.Rate);
        return new PivotHole(mid - change, mid, mid + change, half, taper, right, values.Get(LeverFields.HoleSupply)) { Pin = values.Get(LeverFields.HolePin), PinTaper = values.Get(LeverFields.HolePinTaper) };
    }

    /// <summary>The pin's diameter and the clearance wanted say the same thing twice.</summary>
    private static void PinInHole(IFieldValues values, LeverFindings findings)
    {
        if (values.Find(LeverFields.HolePinDiameter)?.Nominal is not { } pin)
            return;
        Length left = values.Get(LeverFields.HoleDiameter).Nominal - pin;
        if (values.Find(LeverFields.HoleClearance)?.Nominal is { } wanted)
        {
            findings.OddsIf(Math.Abs((left - wanted).Millimetres) > MostRounding, () => $"the hole is {LeverFindings.Mm(left.Millimetres)} larger than the pin, and the clearance wanted is {LeverFindings.Mm(wanted.Millimetres)}",
                "Correct the one that is wrong, or leave the clearance away.", LeverFields.HolePinDiameter, LeverFields.HoleClearance, LeverFields.HoleDiameter);
        }
        else
        {
            findings.OddsIf(left < Length.Zero, () => $"the pin is {LeverFindings.Mm(-left.Millimetres)} larger than the hole", "Correct the one that is wrong.", LeverFields.HolePinDiameter, LeverFields.HoleDiameter);
        }
    }

    private static void HoleWall(PivotHole hole, Contour side, LeverMeasures m, LeverFindings findings)
    {
        double largest = Length.Max(hole.AtLeft, hole.AtRight).Millimetres / 2;
        double smallest = Length.Min(hole.AtLeft, hole.AtRight).Millimetres;
        findings.OddsIf(smallest <= 0.3, () => $"the taper leaves a small end of {LeverFindings.Mm(smallest)}",
            "Take a larger hole, a narrower head or a finer taper.", LeverFields.HoleDiameter, LeverFields.HoleTaper, LeverFields.HeadWidth);
        double near = double.PositiveInfinity;
        foreach (Edge edge in side.Edges)
            near = Math.Min(near, EdgeProjection.Nearest(edge, Point2D.Origin).Distance);
        near = Math.Min(near, Math.Min(-m.GapTop, m.HeadHeight / 2));
        double wall = near - largest, wanted = UsualEdgeDistance * hole.AtMid.Millimetres;
        if (wall < LeastWall)
            findings.NoWall(wall, "round the hole", LeverFields.HoleDiameter, LeverFields.HeadDepth, LeverFields.HeadHeight);
        else if (near < wanted)
            findings.ThinWall(wall, wanted - (hole.AtMid.Millimetres / 2), "round the hole", LeverFields.HoleDiameter, LeverFields.HeadDepth);
    }

    private static void MarkRoom(RaisedMark mark, MarkSeat seat, Boss? boss, LeverFindings findings)
    {
        double width = StrokeLettering.WidthOf(mark.Text, mark.LetterHeight.Millimetres);
        findings.OddsIf(width > seat.Room, () => $"the mark is {LeverFindings.Mm(width)} long, and there is {LeverFindings.Mm(Math.Max(0, seat.Room))} of plain face for it",
            "Shorten the text or make its letters smaller.", LeverFields.MarkText, LeverFields.MarkLetterHeight, LeverFields.MarkPlace);
        findings.OddsIf(mark.LetterHeight.Millimetres > seat.RoomAcross, () => $"letters {LeverFindings.Mm(mark.LetterHeight.Millimetres)} high do not fit a face of {LeverFindings.Mm(Math.Max(0, seat.RoomAcross))}",
            "Make the letters smaller.", LeverFields.MarkLetterHeight, LeverFields.MarkPlace);
        findings.OddsIf(boss is not null && !seat.OnArm, () => "the mark on the head's face would stand on the boss",
            "Put the mark on the back of the arm, or leave the boss away.", LeverFields.MarkPlace, LeverFields.BossSides);
    }

    // The last net: the constructions above should have told in better words.
    private static void Crossings(Contour contour, string name, LeverFindings findings, params ReadOnlySpan<FieldSpec> fields)
    {
        if (ContourSelfCheck.Find(contour) is not [{ } fault, ..])
            return;
        Point2D where = fault.Where.Meetings is [{ } first, ..] ? first.Point : contour.Edges[fault.EdgeA].PointAt(0.5);
        findings.Crosses(name, string.Create(CultureInfo.InvariantCulture, $"{where.X:0.##}, {where.Y:0.##} mm from the pivot"), fields);
    }
}
