using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Mechanism;

/// <summary>How the mechanism works at one place of the nut's travel, by the exact solution.</summary>
/// <param name="Nut">From mid-travel, along the stud; positive toward the toe, which draws the iron back.</param>
/// <param name="Turn">Of the lever from its arms standing square to the stud.</param>
/// <param name="IdleTurns">Null when the lever loses flange or slot there; negative when it binds: tilted pads may fill the groove although other gaps are open.</param>
/// <param name="PerTurn">Of the iron along the bed.</param>
public sealed record TravelPoint(Length Nut, Angle? Turn, double? IdleTurns, Length? PerTurn, Length? DepthPerTurn)
{
    public bool Binds => IdleTurns < 0;

    /// <param name="points">From one end of the nut's travel to the other.</param>
    public static ImmutableArray<TravelPoint> Over(Linkage linkage, int points)
    {
        ArgumentNullException.ThrowIfNull(linkage);
        double travel = linkage.Assembly.Plane.Nut.Travel.Millimetres;
        return [.. Enumerable.Range(0, points).Select(i => At(linkage, (travel * i / (points - 1)) - (travel / 2)))];
    }

    public static TravelPoint AtMiddle(Linkage linkage)
    {
        ArgumentNullException.ThrowIfNull(linkage);
        return At(linkage, 0);
    }

    private static TravelPoint At(Linkage linkage, double nut)
    {
        double? idle = linkage.Solver.IdleAt(linkage.NutMiddle + nut);
        if (linkage.Solver.WithNutAt(linkage.NutMiddle + nut, Drive.Advance) is not { } state)
            return new TravelPoint(Length.FromMillimetres(nut), null, null, null, null);
        // What other gaps are open does not help pads that no longer go into the groove.
        if (linkage.Solver.GrooveLeft(state.Pose) is < 0 and var jam)
            idle = Math.Min(idle ?? jam, jam);
        Length perTurn = linkage.Lead * state.Ratio;
        return new TravelPoint(Length.FromMillimetres(nut), Angle.FromRadians(state.Pose.Turn), idle / linkage.Lead.Millimetres, perTurn, perTurn * Math.Sin(linkage.Assembly.Plane.BedAngle.Radians));
    }
}
