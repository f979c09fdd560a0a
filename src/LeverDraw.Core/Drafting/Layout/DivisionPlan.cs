namespace LeverDraw.Drafting.Layout;

/// <summary>How a sheet is cut into its pieces, whatever their sizes.</summary>
internal abstract class DivisionPlan
{
    /// <summary>The least room it takes when the pieces have these sizes.</summary>
    public abstract (double Width, double Height) Size(ReadOnlySpan<(double Width, double Height)> pieces);
}

/// <summary>One piece, by its place in the reading order.</summary>
internal sealed class PiecePlan(int piece) : DivisionPlan
{
    public override (double Width, double Height) Size(ReadOnlySpan<(double Width, double Height)> pieces) => pieces[piece];
}

/// <summary>One part above the other, or before it.</summary>
internal sealed class CutPlan(bool down, DivisionPlan first, DivisionPlan rest) : DivisionPlan
{
    public override (double Width, double Height) Size(ReadOnlySpan<(double Width, double Height)> pieces)
    {
        (double Width, double Height) a = first.Size(pieces), b = rest.Size(pieces);
        return down
            ? (Math.Max(a.Width, b.Width), a.Height + Cell.Gap + b.Height)
            : (a.Width + Cell.Gap + b.Width, Math.Max(a.Height, b.Height));
    }
}
