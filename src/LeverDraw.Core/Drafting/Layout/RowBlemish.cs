using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>What two linear dimensions side by side cost each other, while a drawn view settles and where width has its usual price: a number that reads as the other's, the shorter one outside the longer. The same both ways round.</summary>
internal static class RowBlemish
{
    /// <summary>Dimension lines farther apart than this are not read together, millimetres: some two or three tiers.</summary>
    private const double Apart = 20;

    /// <summary>Rounding of what is measured between the same points, millimetres.</summary>
    private const double Slack = 0.1;

    public static double Between(in DimensionSpan a, in DimensionSpan b)
    {
        if (a.IsNone || b.IsNone || Math.Abs(a.Along.Cross(b.Along)) > 1e-6)
            return 0;
        double cost = Claim(a, b) + Claim(b, a);
        return cost + (Math.Abs(a.Level - b.Level) < 1.5 * Apart && (IsOutsideLonger(a, b) || IsOutsideLonger(b, a)) ? PlacingCosts.OutsideLonger : 0);
    }

    /// <summary>What it costs that a number beside its own extension lines stands between those of another, or beyond them with its line drawn past the other's.</summary>
    private static double Claim(in DimensionSpan owner, in DimensionSpan number)
    {
        // The owner's extension lines pass the number where it stands farther out, however far.
        bool passes = owner.Out == number.Out && owner.Out * (owner.Level - number.Level) > 0;
        if (!number.IsNumberedBeside || !(passes || Math.Abs(owner.Level - number.Level) < Apart))
            return 0;
        if (number.Number > owner.From && number.Number < owner.To)
            return PlacingCosts.Claimed(number.OnLeader);
        bool past = number.Number > number.To ? owner.From > number.To - Slack && owner.To < number.Number : owner.To < number.From + Slack && owner.From > number.Number;
        return past && !number.OnLeader ? PlacingCosts.Passed : 0;
    }

    /// <summary>The shorter of two is to stand nearer to the view, or their lines cross: common practice, no source.</summary>
    private static bool IsOutsideLonger(in DimensionSpan a, in DimensionSpan b)
    {
        return a.Out == b.Out && a.Out * (a.Level - b.Level) > 1
            && a.From > b.From - Slack && a.To < b.To + Slack && b.To - b.From - (a.To - a.From) > 3 * Slack;
    }
}
