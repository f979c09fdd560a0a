using System.Globalization;

namespace LeverDraw.Units;

/// <summary>Reads and writes tapers on diameter as text; the only place that does.</summary>
public static class TaperText
{
    private const double InchesPerFoot = 12;

    /// <summary>Reads <c>1:48</c>, <c>1:50</c>, <c>0.25 in/ft</c>, <c>1/4 in/ft</c> and <c>parallel</c>. The taper may be as steep as 1:1.</summary>
    public static TextResult<Taper> Parse(string text)
    {
        if (NumberScanner.CommonFault(text) is { } fault)
            return TextResult<Taper>.Bad(fault.Reason, fault.Index);
        string bare = text.Trim();
        if (string.Equals(bare, "parallel", StringComparison.OrdinalIgnoreCase))
            return TextResult<Taper>.Good(Taper.Parallel, true);
        int perFoot = text.LastIndexOf("in/ft", StringComparison.OrdinalIgnoreCase);
        if (perFoot >= 0 && bare.EndsWith("in/ft", StringComparison.OrdinalIgnoreCase))
            return PerFoot(text[..perFoot], perFoot);
        return Ratio(text);
    }

    /// <summary><c>1:48</c> or <c>parallel</c>; at most <paramref name="decimals"/> (0 to 9) decimals after the colon.</summary>
    public static string Format(Taper taper, int decimals = 4) =>
        taper.IsParallel
            ? "parallel"
            : "1:" + Math.Round(taper.LengthPerUnit, decimals, MidpointRounding.AwayFromZero).ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);

    private static TextResult<Taper> PerFoot(string amount, int unitAt)
    {
        TextResult<Length> inches = LengthText.Parse(amount, LengthUnit.Inch);
        if (inches.Fault is { } fault)
            return Bad(fault.Reason, fault.Index);
        if (inches.StatesUnit)
            return Bad("there are two units", unitAt);
        return inches.Value.Inches switch
        {
            <= 0 => Bad("the change per foot must be above zero; write parallel for none", 0),
            > InchesPerFoot => Bad("it is steeper than 1:1", 0),
            // From inches per foot back to 1:n; 1/4 in per foot is 1:48 exactly.
            var change => Near(InchesPerFoot / change) is var n && double.IsFinite(n) ? TextResult<Taper>.Good(Taper.OneIn(n), true) : Bad("it is too fine", 0),
        };
    }

    // 1/4 in went through millimetres; the last bits of that trip are not part of the taper.
    private static double Near(double n) => Math.Abs(n - Math.Round(n)) < 1e-9 * n ? Math.Round(n) : n;

    private static TextResult<Taper> Ratio(string text)
    {
        NumberScanner scan = new(text);
        scan.SkipSpaces();
        int firstAt = scan.At;
        if (!scan.TakeDecimal(out double first, out _))
            return Bad("a taper is written 1:n, or 'parallel'", scan.At);
        scan.SkipSpaces();
        if (!scan.Take(':'))
            return Bad("a taper is written 1:n", scan.At);
        if (first != 1)
            return Bad("the first number of a taper must be 1", firstAt);
        scan.SkipSpaces();
        int secondAt = scan.At;
        if (!scan.TakeDecimal(out double second, out _))
            return Bad("a number is expected after ':'", secondAt);
        scan.SkipSpaces();
        if (!scan.AtEnd)
            return Bad("something stands after the taper", scan.At);
        return second switch
        {
            0 => Bad("the second number is zero", secondAt),
            < 1 => Bad("it is steeper than 1:1", secondAt),
            _ => TextResult<Taper>.Good(Taper.OneIn(second), true),
        };
    }

    private static TextResult<Taper> Bad(string reason, int index) => TextResult<Taper>.Bad(reason, index);
}
