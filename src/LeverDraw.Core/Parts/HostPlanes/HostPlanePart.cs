using System.Globalization;
using LeverDraw.Diagnostics;
using LeverDraw.Profiles;
using LeverDraw.Units;
using static LeverDraw.Parts.HostPlanes.HostPlaneFields;

namespace LeverDraw.Parts.HostPlanes;

/// <summary>From a profile's values to a host plane.</summary>
public static class HostPlanePart
{
    /// <summary>Least metal round a lug's hole, and least depth of the nut's groove, millimetres (own rules).</summary>
    private const double LeastWall = 0.5, LeastGroove = 0.2;

    public static Checked<HostPlane> Build(string name, IFieldValues values)
    {
        List<Diagnostic> found = [];
        SizeValue? flange = values.Find(Flange);
        SizeValue bottom = values.Get(GrooveBottom), hole = values.Get(LugHole), edge = values.Get(LugEdgeDistance);
        SizeValue cap = values.Get(CapIronThickness), broken = values.Get(EdgeBreak), start = values.Get(LugReliefStart), travel = values.Get(NutTravel), stud = values.Get(StudDistance);
        if (flange is not null && flange.Millimetres < bottom.Millimetres + (2 * LeastGroove))
            Odds($"the flange ({Mm(flange.Nominal)}) hardly stands out over the groove's bottom ({Mm(bottom.Nominal)})", "Make the flange larger or the bottom smaller.", Flange, GrooveBottom);
        if (edge.Millimetres < (hole.Millimetres / 2) + LeastWall)
            Odds($"a hole of {Mm(hole.Nominal)} whose axis lies {Mm(edge.Nominal)} from the edge leaves no wall of {Mm(Length.FromMillimetres(LeastWall))}", "Make the distance larger or the hole smaller.", LugEdgeDistance, LugHole);
        if (2 * broken.Millimetres >= cap.Millimetres)
            Odds($"two broken edges of {Mm(broken.Nominal)} leave no face in a cap iron of {Mm(cap.Nominal)}", "Make the broken edge smaller.", EdgeBreak, CapIronThickness);
        if (values.Get(LugRelief).Radians > 0 && start.Millimetres >= edge.Millimetres)
            Odds($"the slope would begin {Mm(start.Nominal)} below the axis, where the lugs have ended ({Mm(edge.Nominal)})", "Begin the slope nearer to the axis.", LugReliefStart, LugEdgeDistance);
        if (travel.Millimetres > stud.Millimetres)
            Odds($"a nut that goes {Mm(travel.Nominal)} would turn a lever of {Mm(stud.Nominal)} by more than 30° each way", "State what the adjustment uses.", NutTravel, StudDistance);
        foreach (SizeField field in All.OfType<SizeField>())
        {
            if (values.Find(field) is { Tolerance: ZoneTolerance zone } size && StatedLimits.Of(size) is null)
                found.Add(DiagnosticCatalogue.UnknownZone.At(values.PositionOf(field), field.Name, zone.Code, Mm(size.Nominal), "H7, H8, H9"));
        }

        return Checked<HostPlane>.From(found, () => new HostPlane(
            name,
            new PlaneLugs(values.Get(LugGap), values.Get(LugThickness), hole, values.Get(LugTaper), edge, values.Get(LugRelief), start, values.Find(Pocket)),
            new AdjustingNut(values.Get(Groove), bottom, flange, values.Get(Lead), values.Get(Hand) == Left, values.Get(ThreadPlay), travel, stud, values.Get(StudAngle)),
            new CuttingIron(values.Get(IronThickness), values.Get(IronSlot)),
            new CapIron(cap, values.Get(CapIronSlot), values.Get(CapIronSlotLength), broken),
            values.Get(BedAngle),
            values.Get(PivotDepth)));

        void Odds(string what, string hint, params ReadOnlySpan<FieldSpec> fields) =>
            found.Add(DiagnosticCatalogue.FieldsAtOdds.AtWithHint(FieldNames.Place(values, fields), fields[0].Name, hint, FieldNames.Quoted(fields), what));
    }

    private static string Mm(Length length) => string.Create(CultureInfo.InvariantCulture, $"{Math.Round(length.Millimetres, 3) + 0.0:0.###} mm");
}
