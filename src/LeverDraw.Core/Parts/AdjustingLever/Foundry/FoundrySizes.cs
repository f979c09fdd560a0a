using System.Collections.Immutable;
using LeverDraw.Profiles;
using LeverDraw.Tolerancing;
using LeverDraw.Units;
using static LeverDraw.Parts.AdjustingLever.Foundry.FoundrySizeKind;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>The sizes of the foundry's tables, in the order of the profile.</summary>
public static class FoundrySizes
{
    public static ImmutableArray<FoundrySize> Of(Lever lever)
    {
        ArgumentNullException.ThrowIfNull(lever);
        ImmutableArray<FoundrySize>.Builder all = ImmutableArray.CreateBuilder<FoundrySize>();
        all.Add(Head(lever));
        if (lever.Boss is not null)
            all.Add(AsCast(lever, LeverFields.HeadWidth, Outside, MeasuredAlong.Pin));
        all.Add(AsCast(lever, LeverFields.HeadHeight, Outside, MeasuredAlong.Arms));
        all.Add(AsCast(lever, LeverFields.HeadDepth, Outside, MeasuredAlong.Square));
        all.Add(AsCast(lever, LeverFields.ArmThickness, Outside, MeasuredAlong.Square, wall: true));
        all.Add(AsCast(lever, LeverFields.ArmWidth, Outside, MeasuredAlong.Pin));
        all.Add(AsCast(lever, LeverFields.ArmLength, Distance, MeasuredAlong.Arms));
        all.Add(AsCast(lever, LeverFields.ForkGap, Inside, MeasuredAlong.Pin));
        all.Add(AsCast(lever, LeverFields.CrotchRadius, Radius, MeasuredAlong.Pin));
        all.Add(Pads(lever));
        all.Add(AsCast(lever, LeverFields.PadLength, Outside, MeasuredAlong.Arms));
        all.Add(Machined(lever, "crown radius", LeverFields.CrownRadius, Radius, MeasuredAlong.Square, MachinedFaces.Pads, 1, l => l.Side.CrownArcRight.Radius));
        all.Add(AsCast(lever, LeverFields.TongueLength, Distance, new MeasuredAlong(0, lever.Side.Tongue.Along.X, lever.Side.Tongue.Along.Y)));
        all.Add(AsCast(lever, LeverFields.TongueWidth, Outside, MeasuredAlong.Pin));
        all.Add(Tongue(lever));
        return all.ToImmutable();
    }

    public const string OverBosses = "width over the bosses";

    /// <summary>Width over the machined side faces: the head's, or the bosses'.</summary>
    public static FoundrySize Head(Lever lever) => lever.Boss is { } boss
        ? Machined(lever, OverBosses, LeverFields.HeadWidth, Outside, MeasuredAlong.Pin, MachinedFaces.Head, 2, l => 2 * l.Hole.HalfLength.Millimetres, boss.Height * 2)
        : Machined(lever, "head width", LeverFields.HeadWidth, Outside, MeasuredAlong.Pin, MachinedFaces.Head, 2, l => 2 * l.Fork.HeadSide.Start.X);

    public static FoundrySize Pads(Lever lever) =>
        Machined(lever, "pad thickness", LeverFields.PadThickness, Outside, MeasuredAlong.Square, MachinedFaces.Pads, 2, l => l.Side.CrownRight.DistanceTo(l.Side.CrownLeft));

    public static FoundrySize Tongue(Lever lever) =>
        Machined(lever, "tongue thickness", LeverFields.TongueThickness, Outside, new MeasuredAlong(0, lever.Side.Tongue.Across.X, lever.Side.Tongue.Across.Y), MachinedFaces.Tongue, 2,
            l => l.Side.NoseLower.DistanceTo(l.Side.NoseUpper));

    private static FoundrySize AsCast(Lever lever, SizeField field, FoundrySizeKind kind, MeasuredAlong along, bool wall = false) =>
        Make(lever, field.Name.Replace('.', ' ').Replace('_', ' '), field, kind, along, MachinedFaces.None, 0, wall, l => l.Sizes[field].Nominal, Length.Zero);

    private static FoundrySize Machined(Lever lever, string name, SizeField field, FoundrySizeKind kind, MeasuredAlong along, MachinedFaces group, int faces, Func<Lever, double> measure, Length beyond = default) =>
        Make(lever, name, field, kind, along, group, faces, false, l => Length.FromMillimetres(measure(l)), beyond);

    /// <param name="beyond">By how much the size is more than the field's own.</param>
    private static FoundrySize Make(Lever lever, string name, SizeField field, FoundrySizeKind kind, MeasuredAlong along, MachinedFaces group, int faces, bool wall, Func<Lever, Length> measure, Length beyond)
    {
        SizeValue stated = lever.Sizes[field];
        SizeLimits limits = StatedLimits.Of(stated) ?? new SizeLimits(stated.Nominal, stated.Nominal);
        return new FoundrySize(name, field, kind, along, group, faces, wall, measure(lever), limits.Min + beyond, limits.Max + beyond, measure);
    }
}
