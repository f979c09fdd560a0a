using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;

namespace LeverDraw.Drafting.Sheets;

/// <summary>The prices of width at which a sheet's views are placed (<see cref="Sprawl"/>).</summary>
/// <param name="Main">Of the row of projected views.</param>
/// <param name="Details">Of the sections and details.</param>
internal readonly record struct SheetThrift(double Main, double Details)
{
    /// <summary>In the order in which they are tried: the main views are read most and keep their ease as long as they can. Details never have the usual price: their callouts would stand far out to one side, and a smaller enlargement would be taken for it.</summary>
    public static ImmutableArray<SheetThrift> Levels { get; } =
    [
        new(Sprawl.Generous, Sprawl.Thrifty),
        new(Sprawl.Thrifty, Sprawl.Thrifty),
        new(Sprawl.Stingy, Sprawl.Thrifty),
        new(Sprawl.Stingy, Sprawl.Stingy),
    ];
}
