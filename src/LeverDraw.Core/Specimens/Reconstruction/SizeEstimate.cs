using LeverDraw.Specimens.Measuring;

namespace LeverDraw.Specimens.Reconstruction;

/// <summary>By which rule an estimate was made.</summary>
public enum EstimateRule
{
    /// <summary>Median of readings at unworn places.</summary>
    Witness,

    /// <summary>Median: the size does not wear.</summary>
    Median,

    /// <summary>The least worn of at most five.</summary>
    Extreme,

    /// <summary>The second least worn of six to ten.</summary>
    SecondExtreme,

    /// <summary>The middle of what all readings together make likely: of three or more where wear is slight beside the spread as made, and of more than ten: an extreme would overshoot.</summary>
    Likeliest,
}

/// <summary>What survivors say of one size: bare millimetres or degrees, as its measurand has it.</summary>
/// <param name="Value">By the rule; never a mean of worn sizes.</param>
/// <param name="From">Lower end of the 95 % interval.</param>
/// <param name="To">Upper end; farther off where the unworn size may be larger.</param>
/// <param name="Specimens">How many specimens it rests on.</param>
/// <param name="Readings">How many readings they had.</param>
public sealed record SizeEstimate(Measurand Measurand, double Value, double From, double To, EstimateRule Rule, int Specimens, int Readings)
{
    /// <summary>Of a worn size, the value that all readings together make as likely too small as too large; where wear is slight, the extreme lies beyond it. Null for a size that is not worn.</summary>
    public double? Likeliest { get; init; }

    /// <summary>On some specimen it was changed so that tied sizes agree.</summary>
    public bool IsAdjusted { get; init; }

    /// <summary>No reading of the size itself is in it: it follows from tied sizes. Where it was read, an unworn place told it better.</summary>
    public bool IsTied { get; init; }
}
