using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Mechanism.Fitting;

/// <summary>How one contact turns out.</summary>
public enum FitState
{
    Good,

    /// <summary>It goes, with more play than it should have.</summary>
    Loose,

    /// <summary>It goes with typical sizes; at the limits it may have to be filed or reamed to suit.</summary>
    Tight,

    /// <summary>It does not go as it is.</summary>
    Fails,
}

/// <summary>One place where the lever meets the plane.</summary>
/// <param name="Typical">Clearance with sizes at the middle of their limits; negative: too large by so much.</param>
/// <param name="Reason">Why it is not simply good; empty when it is.</param>
/// <param name="Rework">What would make it go, with its limits; empty when nothing need be done, null when nothing would do.</param>
public sealed record FitContact(string Name, Length Typical, SizeLimits Worst, FitState State, string Reason, string? Rework)
{
    /// <param name="loose">More than this is loose; null: more does no harm.</param>
    internal static FitContact Clearance(LengthWords words, string name, SizeLimits clearance, Length? loose, string tooLarge, Func<Length, string?> rework)
    {
        if (clearance.Mid < Length.Zero)
            return new(name, clearance.Mid, clearance, FitState.Fails, tooLarge + " by " + words.InSentence(-clearance.Mid), rework(-clearance.Min));
        if (clearance.Min.Millimetres < -1e-9)
            return new(name, clearance.Mid, clearance, FitState.Tight, name + ": may bind, from " + words.InSentence(clearance.Min) + " to " + words.InSentence(clearance.Max), rework(-clearance.Min));
        return loose is { } most && clearance.Mid > most
            ? new(name, clearance.Mid, clearance, FitState.Loose, name + ": " + words.InSentence(clearance.Mid) + " of play", string.Empty)
            : new(name, clearance.Mid, clearance, FitState.Good, string.Empty, string.Empty);
    }
}
