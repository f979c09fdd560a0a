namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>A state the foundry works from. A sheet takes outline and flag from one state, so the two cannot disagree; no state can be made elsewhere, since nobody else can say what its outline is.</summary>
public abstract record FoundryState
{
    /// <summary>What the state says of contraction.</summary>
    public abstract ContractionFlag Flag { get; }

    public abstract FoundryPlan Plan { get; }

    /// <summary>The state's own outlines and sizes.</summary>
    internal abstract Lever Shape { get; }

    /// <summary>The finished lever at the same contraction, to lie inside <see cref="Shape"/>.</summary>
    internal abstract Lever FinishedWithin { get; }
}
