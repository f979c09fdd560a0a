using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;

namespace LeverDraw.Drafting.Sheets;

/// <summary>The prices of width at which a sheet's views are placed (<see cref="Sprawl"/>).</summary>
internal static class SheetThrift
{
    /// <summary>Of the sections and details. At the usual price their callouts stand far out to one side, and the next smaller enlargement is taken for it.</summary>
    public const double Details = Sprawl.Thrifty;

    /// <summary>Of the row of projected views, in the order in which they are tried: these are read most and keep their ease as long as they can.</summary>
    public static ImmutableArray<double> Main { get; } = [Sprawl.Generous, Sprawl.Thrifty, Sprawl.Stingy];
}
