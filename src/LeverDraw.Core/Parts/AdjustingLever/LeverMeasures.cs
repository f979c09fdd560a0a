using LeverDraw.Profiles;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>The nominal sizes as bare millimetres and radians, for the constructions only.</summary>
internal sealed class LeverMeasures(IFieldValues values, LeverPlaces places, LeverStock stock)
{
    public LeverMeasures(IFieldValues values)
        : this(values, LeverPlaces.AsStated, LeverStock.None)
    {
    }

    public bool RoundHead { get; } = values.Get(LeverFields.HeadForm) == LeverFields.Round;

    /// <summary>Stock on the head's sides included.</summary>
    public double HeadWidth { get; } = Mm(values, LeverFields.HeadWidth) + (values.Get(LeverFields.BossSides) == LeverFields.None ? 2 * stock.Head.Millimetres : 0);

    /// <summary>Half the width the shoulders are laid out for: stock on the head's sides does not move them.</summary>
    public double ShoulderSide { get; } = Mm(values, LeverFields.HeadWidth) / 2;

    public double HeadHeight { get; } = Mm(values, LeverFields.HeadHeight);

    public double HeadDepth { get; } = Mm(values, LeverFields.HeadDepth);

    public double HeadCornerRadius { get; } = Mm(values, LeverFields.HeadCornerRadius);

    /// <summary>Level of the head's lower end in the side profile, below the pivot.</summary>
    public double HeadBottom => RoundHead ? HeadDepth / 2 : HeadHeight / 2;

    public double Hole { get; } = Mm(values, LeverFields.HoleDiameter);

    public string ArmForm { get; } = values.Get(LeverFields.ArmForm);

    public double ArmThickness { get; } = Mm(values, LeverFields.ArmThickness);

    /// <summary>How far below the pivot the arms' thickness is stated: of a tapered arm one head fillet below the head, where no fillet reaches and calipers can be laid on.</summary>
    public double ArmThicknessLevel => ArmForm == LeverFields.Tapered ? HeadBottom + HeadFillet : HeadBottom;

    public double ArmWidth { get; } = Mm(values, LeverFields.ArmWidth);

    public double ArmLength { get; } = Mm(values, LeverFields.ArmLength);

    public double Sagitta { get; } = Mm(values, LeverFields.ArmSagitta);

    /// <summary>Thickness with which the arm arrives at the top of the pad.</summary>
    public double ArmEndThickness => ArmForm == LeverFields.Tapered ? PadThickness - (2 * PadStock) : ArmThickness;

    public double ArmEndCorner { get; } = values.Get(LeverFields.ArmEnd) == LeverFields.Round
        ? Mm(values, LeverFields.ArmWidth) / 2
        : places.ArmEndCorner ?? values.Find(LeverFields.ArmEndCorner)?.Millimetres ?? Mm(values, LeverFields.EdgeRound);

    public double Gap { get; } = Mm(values, LeverFields.ForkGap);

    public double Outside => Gap + (2 * ArmWidth);

    public double CrotchRadius { get; } = Mm(values, LeverFields.CrotchRadius);

    /// <summary>Level of the fork gap's top, negative.</summary>
    public double GapTop { get; } = -((Mm(values, LeverFields.HeadHeight) / 2) + Mm(values, LeverFields.Web));

    public bool ConcaveShoulder { get; } = values.Get(LeverFields.ShoulderForm) == LeverFields.Concave;

    public double ShoulderRadius { get; } = Mm(values, LeverFields.ShoulderRadius);

    public double ShoulderStart { get; } = Mm(values, LeverFields.ShoulderStart);

    public double? ShoulderEnd { get; } = places.ShoulderEnd ?? values.Find(LeverFields.ShoulderEnd)?.Millimetres;

    /// <summary>Stock included, as in the crown's radius.</summary>
    public double PadThickness { get; } = Mm(values, LeverFields.PadThickness) + (2 * stock.Pads.Millimetres);

    public double PadStock { get; } = stock.Pads.Millimetres;

    public double PadLength { get; } = Mm(values, LeverFields.PadLength);

    public double CrownRadius { get; } = Mm(values, LeverFields.CrownRadius) + stock.Pads.Millimetres;

    private readonly bool _roundPadEnd = values.Get(LeverFields.PadEnd) == LeverFields.Round;

    /// <summary>With stock the crowns may be too far apart for a full round; the casting's end is then square, and the finished round lies within.</summary>
    public bool RoundPadEnd => _roundPadEnd && (PadStock == 0 || (SideProfile.PadEndRadius(this) is var r && r < 0.98 * PadLength / 2 && r < CrownRadius));

    public double PadEndCorner => _roundPadEnd ? EdgeRound : Mm(values, LeverFields.PadEndCorner);

    public double PadTop => -ArmLength + (PadLength / 2);

    public double PadBottom => -ArmLength - (PadLength / 2);

    public double Sweep { get; } = values.Get(LeverFields.Sweep).Radians;

    public double TongueLength { get; } = Mm(values, LeverFields.TongueLength);

    public double TongueWidth { get; } = Mm(values, LeverFields.TongueWidth);

    /// <summary>As finished; the stock is laid on the finished outline.</summary>
    public double TongueThickness { get; } = Mm(values, LeverFields.TongueThickness);

    public string TongueForm { get; } = values.Get(LeverFields.TongueForm);

    public double FlankTaper { get; } = values.Get(LeverFields.TongueForm) == LeverFields.Parallel ? 0 : values.Get(LeverFields.FlankTaper).Radians;

    public double CamRadius { get; } = Mm(values, LeverFields.CamRadius);

    public double TongueStock { get; } = stock.Tongue.Millimetres;

    public double NeckThickness { get; } = Mm(values, LeverFields.NeckThickness);

    public double NoseCorner { get; } = places.NoseCorner ?? values.Find(LeverFields.NoseRadius)?.Millimetres ?? Mm(values, LeverFields.EdgeRound);

    public double FootFillet { get; } = places.FootFillet ?? values.Find(LeverFields.FootFillet)?.Millimetres ?? Mm(values, LeverFields.Fillet);

    /// <summary>The field the foot fillet comes from, which a finding has to name.</summary>
    public SizeField FootFilletField { get; } = values.Find(LeverFields.FootFillet) is null ? LeverFields.Fillet : LeverFields.FootFillet;

    public double HeadFillet { get; } = Mm(values, LeverFields.HeadFillet);

    public double Fillet { get; } = Mm(values, LeverFields.Fillet);

    /// <summary>Of these three the profile states one radius for all.</summary>
    public double StepFillet => places.StepFillet ?? Fillet;

    public double ShoulderFillet => places.ShoulderFillet ?? Fillet;

    public double NeckFillet => places.NeckFillet ?? Fillet;

    public double EdgeRound { get; } = Mm(values, LeverFields.EdgeRound);

    public double BossDiameter { get; } = Mm(values, LeverFields.BossDiameter);

    public double BossHeight { get; } = Mm(values, LeverFields.BossHeight) + stock.Head.Millimetres;

    // Zero for a field that does not apply: the construction then never looks at it.
    private static double Mm(IFieldValues values, SizeField field) => values.Find(field)?.Millimetres ?? 0;
}
