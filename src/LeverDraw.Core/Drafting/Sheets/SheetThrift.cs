using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;

namespace LeverDraw.Drafting.Sheets;

/// <summary>The prices of width at which a sheet's views are placed (<see cref="Sprawl"/>).</summary>
/// <param name="Main">Of the row of projected views.</param>
/// <param name="Details">Of the other views.</param>
internal readonly record struct SheetThrift(double Main, double Details)
{
    /// <summary>In the order in which they are tried. Details give way first: a callout that stands beside a section may as well stand above it, while the main views, which are read most, keep their ease.</summary>
    public static ImmutableArray<SheetThrift> Levels { get; } =
    [
        new(Sprawl.Generous, Sprawl.Generous),
        new(Sprawl.Generous, Sprawl.Thrifty),
        new(Sprawl.Thrifty, Sprawl.Thrifty),
        new(Sprawl.Stingy, Sprawl.Thrifty),
    ];
}
