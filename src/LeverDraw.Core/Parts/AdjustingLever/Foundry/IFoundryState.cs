namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>A state the foundry works from. A sheet takes outline and flag from one state, so the two cannot disagree.</summary>
public interface IFoundryState
{
    /// <summary>The state's own outlines and sizes.</summary>
    Lever Shape { get; }

    /// <summary>The finished lever at the same contraction, to lie inside <see cref="Shape"/>.</summary>
    Lever FinishedWithin { get; }

    ContractionFlag Flag { get; }

    FoundryPlan Plan { get; }
}
