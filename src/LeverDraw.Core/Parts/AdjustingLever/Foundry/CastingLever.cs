using LeverDraw.Diagnostics;
using LeverDraw.Profiles;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>A lever as it comes out of the mould: stock on the machined faces, the hole closed unless it is cored. There is no contraction in it, and no way to put one in.</summary>
public sealed record CastingLever : FoundryState
{
    private CastingLever(Lever finished, Lever shape, FoundryPlan plan) => (Finished, Shape, Plan) = (finished, shape, plan);

    public Lever Finished { get; }

    /// <summary>The casting's own outlines and sizes; draw its views as of any lever.</summary>
    internal override Lever Shape { get; }

    public override FoundryPlan Plan { get; }

    internal override Lever FinishedWithin => Finished;

    public override ContractionFlag Flag => ContractionFlag.Of(this);

    /// <param name="values">The finished lever's.</param>
    /// <returns>The casting, or the fields that leave no room for its stock.</returns>
    public static Checked<CastingLever> Of(Lever finished, IFieldValues values, FoundryPlan plan)
    {
        ArgumentNullException.ThrowIfNull(finished);
        ArgumentNullException.ThrowIfNull(plan);
        LeverPlaces places = finished.Mark is { } mark
            ? LeverPlaces.AsStated with { MarkLevel = MarkSeat.On(mark, finished.Fork, finished.Side, finished.Hole).Middle.Y }
            : LeverPlaces.AsStated;
        Checked<CastingLever> casting = Of(finished, values, plan, places);
        if (!casting.Ok || values.Find(CastingFields.HeadAllowance) is not null || plan.Stock.Head == Length.Zero)
            return casting;
        // Minus draft would eat into the head's stock: it comes on top. The walls' depth lies square to that stock, so once is enough.
        Length taken = PatternDraft.Of(plan, MouldParting.Of(casting.Value), casting.Value.Shape).TakenFromMachined;
        return taken == Length.Zero ? casting : Of(finished, values, plan with { Stock = plan.Stock with { Head = plan.Stock.Head + MachiningStock.RoundedUp(taken) } }, places);
    }

    internal static Checked<CastingLever> Of(Lever finished, IFieldValues values, FoundryPlan plan, LeverPlaces places)
    {
        Checked<Lever> built = LeverPart.Build(values, places, plan.Stock);
        // Stock on a bulb shortens the neck: the fillet gives way before the casting does.
        for (double fillet = 0.5; !built.Ok && fillet > 0.1 && finished.Forms.Tongue == LeverFields.Bulb; fillet /= 2)
            built = LeverPart.Build(values, places with { NeckFillet = fillet * finished.Sizes[LeverFields.Fillet].Millimetres }, plan.Stock);
        return built.Ok
            ? Checked<CastingLever>.Good(new CastingLever(finished, built.Value with { Sizes = Sizes(built.Value, plan, values.Get(LeverFields.FlankTaper)), Hole = Hole(built.Value.Hole, plan) }, plan))
            : Checked<CastingLever>.Bad(built.Diagnostics.Where(d => d.Severity == Severity.Error).Select(d => NoRoom(d, plan.Stock)));
    }

    private static Diagnostic NoRoom(Diagnostic fault, LeverStock stock) => DiagnosticCatalogue.NoCasting.AtWithHint(
        fault.Position, fault.Field, "Take less stock (a finer 'casting.tolerance_grade', or 'casting.allowance_grade' = \"filing\"). Or: " + fault.Suggestion,
        LeverFindings.Mm(stock.Head.Millimetres), LeverFindings.Mm(stock.Pads.Millimetres), LeverFindings.Mm(stock.Tongue.Millimetres), fault.Message);

    private static PivotHole Hole(PivotHole hole, FoundryPlan plan) => plan.CoredHole is { } cored
        ? hole with { AtLeft = cored, AtMid = cored, AtRight = cored, Taper = Taper.Parallel, Supply = LeverFields.Bored }
        : hole with { Supply = LeverFields.Solid };

    private static LeverSizes Sizes(Lever shape, FoundryPlan plan, Angle flankTaper)
    {
        Dictionary<SizeField, Length> changed = [];
        foreach (FoundrySize size in FoundrySizes.Of(shape))
        {
            if (size.Group != MachinedFaces.None && size.Name != FoundrySizes.OverBosses)
                changed[size.Field] = size.MeasureOn(shape);
        }

        if (shape.Boss is { } boss)
            changed[LeverFields.BossHeight] = boss.Height;
        if (shape.Side.FlankLower is Geometry.ArcEdge cam)
            changed[LeverFields.CamRadius] = Length.FromMillimetres(cam.Radius);
        if (shape.Sizes.Find(LeverFields.NoseRadius) is { } nose)
            changed[LeverFields.NoseRadius] = nose.Nominal + plan.Stock.Tongue;
        // The neck is left as cast, but stated half a bulb behind the centre: on the larger bulb farther down its flanks.
        if (shape.Sizes.Find(LeverFields.NeckThickness) is { } neck)
            changed[LeverFields.NeckThickness] = neck.Nominal + (plan.Stock.Tongue * (2 * Math.Tan(flankTaper.Radians)));
        if (plan.CoredHole is { } cored)
            changed[LeverFields.HoleDiameter] = cored;
        return shape.Sizes.With(changed);
    }
}
