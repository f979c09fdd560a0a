using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Completeness;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Profiles;

namespace LeverDraw.Parts;

/// <summary>One kind of sheet a part kind can be drawn on.</summary>
/// <param name="Name">As in <c>--sheet</c> and in file names: <c>finished</c>.</param>
/// <param name="Content">What the sheet shows and says, before scale and place.</param>
public sealed record PartSheet<TPart>(
    string Name, PartState State, Func<TPart, Profile, SheetOptions, Checked<SheetContent>> Content)
    where TPart : class
{
    /// <summary>A sheet with <see cref="Plot"/> alone.</summary>
    public static PartSheet<TPart> Drawn(string name, PartState state, Func<TPart, Profile, SheetOptions, Checked<PlotSheet>> plot) =>
        new(name, state, (_, _, _) => throw new InvalidOperationException("This sheet is drawn at once.")) { Plot = plot };

    /// <summary>Set for a sheet that is nothing to be laid out, such as a rule true to length: it is drawn at once, and its content is never asked for.</summary>
    public Func<TPart, Profile, SheetOptions, Checked<PlotSheet>>? Plot { get; init; }

    /// <summary>Whether it is drawn when no sheet is named; null for always. Asked for by name it is drawn, or says why it cannot be.</summary>
    public Func<TPart, Profile, bool>? IsUsual { get; init; }

    /// <summary>The sheet as a function of what shapes the part; null for a sheet that does not define a shape, and the function's answer for a part that has no such sheet.</summary>
    public Func<TPart, Profile, ParametricSheet?>? Parametric { get; init; }
}

/// <summary>A sheet of one part that was built.</summary>
public sealed record BuiltSheet(string Name, PartState State, Func<SheetOptions, Checked<SheetContent>> Content)
{
    /// <inheritdoc cref="PartSheet{TPart}.Plot"/>
    public Func<SheetOptions, Checked<PlotSheet>>? Plot { get; init; }

    /// <inheritdoc cref="PartSheet{TPart}.IsUsual"/>
    public bool IsUsual { get; init; } = true;

    /// <inheritdoc cref="PartSheet{TPart}.Parametric"/>
    public Func<ParametricSheet?>? Parametric { get; init; }
}
