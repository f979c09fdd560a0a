using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Drafting.Symbols;

namespace LeverDraw.Drafting.Annotations;

/// <summary>What a dimension or note says: lines of lettering, final, and the symbols that go with them. Nothing after this rounds or rewrites a number.</summary>
/// <param name="Lines">Empty only when the label is nothing but frames, at the end of a leader.</param>
/// <param name="Decimals">Decimals of the first unit's number.</param>
/// <param name="Boxed">Drawn in a frame: a theoretically exact size.</param>
public sealed record Label(ImmutableArray<string> Lines, int Decimals = 3, bool Boxed = false)
{
    /// <summary>Where the box begins in the first line: a sign before it, such as a taper's, stands outside.</summary>
    public int BoxedFrom { get; init; }

    /// <summary>Feature-control frames hanging under the lettering.</summary>
    public ImmutableArray<ControlFrame> Frames { get; init; } = [];

    /// <summary>Datum letter of the feature that is dimensioned: it hangs on the frames, or stands in line with the dimension's arrow, and so means the axis or mid-plane.</summary>
    public string? Datum { get; init; }

    /// <summary>Texture of the faces between which the size is taken, after the first line.</summary>
    public TextureSign? Texture { get; init; }

    /// <summary>In round brackets: the size follows from others.</summary>
    public bool IsReference { get; init; }

    /// <summary>What stands beside the lettering, as text: equal for equal frames, datum and texture.</summary>
    internal string Signs => string.Join('\n', [.. Frames.Select(f => f.ToString()), "datum " + Datum, "texture " + Texture, "box from " + BoxedFrom.ToString(CultureInfo.InvariantCulture)]);

    public static Label Of(params ReadOnlySpan<string> lines) => new([.. lines]);

    /// <summary>The lettering alone, without frames and datum.</summary>
    public Label Bare() => this with { Frames = [], Datum = null };

    /// <summary>The second unit's bracket under the first unit instead of beside it: half as wide, for labels at the end of a leader.</summary>
    public Label Stacked()
    {
        // A texture sign stands on the leader's shoulder, beside both: between the two lines it would stand on nothing.
        if (Texture is not null || Lines is not [{ } only] || !only.EndsWith(']') || only.IndexOf(" [", StringComparison.Ordinal) is not (> 0 and var at))
            return this;
        return this with { Lines = [only[..at], only[(at + 1)..]] };
    }

    /// <summary>The lines; the frames' compartments when there are none.</summary>
    public override string ToString() => Lines.IsEmpty ? string.Join('\n', Frames) : string.Join('\n', Lines);
}
