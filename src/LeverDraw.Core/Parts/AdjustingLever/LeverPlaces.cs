namespace LeverDraw.Parts.AdjustingLever;

/// <summary>Sizes that a profile states for several places at once, or leaves to a rule, each by itself; millimetres, null where the profile's own resolution holds. For asking what a sheet fixes: metal can differ from place to place.</summary>
internal sealed record LeverPlaces
{
    public static LeverPlaces AsStated { get; } = new();

    public double? StepFillet { get; init; }

    public double? ShoulderFillet { get; init; }

    public double? NeckFillet { get; init; }

    public double? FootFillet { get; init; }

    public double? ArmEndCorner { get; init; }

    public double? ShoulderEnd { get; init; }

    public double? NoseCorner { get; init; }

    /// <summary>z of the mark's middle.</summary>
    public double? MarkLevel { get; init; }
}
