using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>Metal left on the machined faces for machining, square to each face. Zero leaves a face as finished.</summary>
/// <param name="Head">On each of the head's two side faces; with bosses on each boss's face, the head's sides then being left as cast.</param>
/// <param name="Pads">On each crown.</param>
/// <param name="Tongue">On the nose, and on both flanks over the length that is filed; on a bulb tongue on the bulb.</param>
public sealed record LeverStock(Length Head, Length Pads, Length Tongue)
{
    public static LeverStock None { get; } = new(Length.Zero, Length.Zero, Length.Zero);

    public bool IsNone => this == None;
}
