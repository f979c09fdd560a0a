using LeverDraw.Units;

namespace LeverDraw.Mechanism.Sheets;

/// <summary>How wide the gaps are drawn, so that they can be seen: all the same many times, but none so narrow that it closes or so wide that it misleads.</summary>
internal sealed record DrawnGaps(double Times, double Groove, double Pivot, double Slot)
{
    private const double Widest = 0.9, Narrowest = 0.3;

    public static DrawnGaps Of(FourGaps gaps)
    {
        double largest = Math.Max(gaps.Groove.Millimetres, Math.Max(gaps.Pivot.Millimetres, gaps.Slot.Millimetres));
        double times = largest <= 0 ? 1 : Math.Clamp(Math.Round(Widest / largest), 1, 10);
        double Drawn(Length gap) => gap <= Length.Zero ? 0 : Math.Clamp(gap.Millimetres * times, Narrowest, Math.Max(Widest, gap.Millimetres));
        return new DrawnGaps(times, Drawn(gaps.Groove), Drawn(gaps.Pivot), Drawn(gaps.Slot));
    }
}
