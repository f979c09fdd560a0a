using System.Collections.Immutable;

namespace LeverDraw.Drafting.Annotations;

/// <summary>What a dimension or note says: one or more lines of lettering, final. Nothing after this rounds or rewrites a number.</summary>
/// <param name="Decimals">Decimals of the first unit's number.</param>
/// <param name="Boxed">Drawn in a frame: a theoretically exact size.</param>
public sealed record Label(ImmutableArray<string> Lines, int Decimals = 3, bool Boxed = false)
{
    /// <summary>In round brackets: the size follows from others.</summary>
    public bool IsReference { get; init; }

    public static Label Of(params ReadOnlySpan<string> lines) => new([.. lines]);

    /// <summary>The second unit's bracket under the first unit instead of beside it: half as wide, for labels at the end of a leader.</summary>
    public Label Stacked()
    {
        if (Lines is not [{ } only] || !only.EndsWith(']') || only.IndexOf(" [", StringComparison.Ordinal) is not (> 0 and var at))
            return this;
        return this with { Lines = [only[..at], only[(at + 1)..]] };
    }

    public override string ToString() => string.Join('\n', Lines);
}
