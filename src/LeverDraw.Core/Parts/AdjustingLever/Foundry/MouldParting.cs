using System.Collections.Immutable;
using LeverDraw.Geometry;
using LeverDraw.Parts.Outlines;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>The way both halves of the mould are drawn off.</summary>
public enum DrawAxis
{
    /// <summary>Square to the arms (n).</summary>
    SquareToArms,

    /// <summary>Along the pin (x).</summary>
    AlongPin,

    /// <summary>Along the arms (z).</summary>
    AlongArms,
}

/// <summary>A place for the joint, tried on the casting's true solid.</summary>
/// <param name="Name">As <c>casting.parting</c> has it, or a few words.</param>
/// <param name="IsFlat">A plane, not a joint that follows the bent lever.</param>
/// <param name="Locked">The largest depth by which metal hooks behind mould, in either half; zero when it draws.</param>
/// <param name="LockedWhere">Where that is; empty when it draws.</param>
/// <param name="Rise">How far the joint lies out of a plane.</param>
/// <param name="DepthAhead">Deepest wall on the side toward which the axis points (+n), and <paramref name="DepthBehind"/> on the other.</param>
/// <param name="SplitFits">Fit sizes with one face in each half.</param>
public sealed record PartingCandidate(
    string Name, DrawAxis Axis, bool IsFlat, Length Locked, string LockedWhere, Length Rise, Length DepthAhead, Length DepthBehind, ImmutableArray<string> SplitFits)
{
    /// <summary>A hook this small comes free with the rapping and the sand's give (own rule).</summary>
    private const double Slight = 0.05;

    public bool Draws => Locked.Millimetres <= Slight;
}

/// <summary>Where the mould parts. Every column of metal along the draw is followed through both halves: it must be in one piece, and the joint must pass it.</summary>
public static class MouldParting
{
    public const string PinMiddle = "pin-middle", PivotLevel = "pivot-level";

    /// <summary>The profile's choice, or of all candidates the first that draws, splits the fewest fit sizes, is flat, and is nearest to a plane, in this order.</summary>
    public static PartingCandidate Of(CastingLever casting)
    {
        ArgumentNullException.ThrowIfNull(casting);
        ImmutableArray<PartingCandidate> all = Candidates(casting.Shape);
        return casting.Plan.Parting == CastingFields.Best ? Best(all) : all.First(c => c.Name == casting.Plan.Parting);
    }

    public static PartingCandidate Best(ImmutableArray<PartingCandidate> all) => all
        .OrderBy(c => c.Draws ? 0 : c.Locked.Millimetres)
        .ThenBy(c => c.SplitFits.Length)
        .ThenBy(c => c.IsFlat ? 0 : 1)
        .ThenBy(c => c.Rise)
        .First();

    public static ImmutableArray<PartingCandidate> Candidates(Lever lever)
    {
        ArgumentNullException.ThrowIfNull(lever);
        LeverColumns columns = LeverColumns.Of(lever);
        return
        [
            columns.SquareToArms(CastingFields.HeadMiddle, true, c => JointAt(CastingFields.HeadMiddle, lever, c)),
            columns.SquareToArms(CastingFields.ArmBack, true, c => JointAt(CastingFields.ArmBack, lever, c)),
            columns.SquareToArms(CastingFields.AlongMiddle, false, c => JointAt(CastingFields.AlongMiddle, lever, c)),
            columns.SquareToArms(CastingFields.AlongBack, false, c => JointAt(CastingFields.AlongBack, lever, c)),
            columns.AlongPin(PinMiddle),
            columns.AlongArms(PivotLevel),
        ];
    }

    /// <summary>The joint's n, millimetres, where metal reaches over an interval of n.</summary>
    /// <param name="name">Of a joint drawn square to the arms.</param>
    internal static double JointAt(string name, Lever lever, Interval metal) => name switch
    {
        CastingFields.ArmBack => -lever.Sizes[LeverFields.ArmThickness].Millimetres / 2,
        CastingFields.AlongMiddle => (metal.From + metal.To) / 2,
        CastingFields.AlongBack => metal.From,
        _ => 0,
    };
}
