using System.Globalization;
using LeverDraw.Units;

namespace LeverDraw.Mechanism.Sheets;

/// <summary>How wide the gaps are drawn, so that they can be seen: all the same many times, but none so narrow that its two lines close up at twice full size, or so wide that it misleads.</summary>
/// <param name="Times">How many times the one that is widened most is drawn too wide; 1 where none is.</param>
internal sealed record DrawnGaps(double Times, double Groove, double Pivot, double Slot)
{
    private const double Widest = 0.9, Narrowest = 0.5;

    public static DrawnGaps Of(FourGaps gaps)
    {
        Length[] all = [gaps.Groove, gaps.Pivot, gaps.Slot];
        double largest = all.Max(g => g.Millimetres);
        double times = largest <= 0 ? 1 : Math.Clamp(Math.Round(Widest / largest), 1, 10);
        double Drawn(Length gap) => gap <= Length.Zero ? 0 : Math.Clamp(gap.Millimetres * times, Narrowest, Math.Max(Widest, gap.Millimetres));
        double most = all.Select(g => g <= Length.Zero ? 1 : Drawn(g) / g.Millimetres).Max();
        return new DrawnGaps(most, Drawn(gaps.Groove), Drawn(gaps.Pivot), Drawn(gaps.Slot));
    }

    /// <summary>For a note: the picture is not to be measured.</summary>
    public string Words() => "GAPS DRAWN "
        + (Math.Round(Times) > 1 ? "UP TO " + Times.ToString("0", CultureInfo.InvariantCulture) + " TIMES TOO WIDE" : "AT LEAST WIDE ENOUGH TO SEE")
        + ", IRONS AND NUT SHORTENED: DO NOT MEASURE THIS SHEET.";
}
