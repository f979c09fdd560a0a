using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>A drill and how deep it goes.</summary>
public sealed record StepDrill(Length Drill, Length Depth);

/// <summary>Drills that take out most of a taper hole before it is reamed.</summary>
/// <param name="First">Goes through.</param>
/// <param name="Second">From the large end; null for small pins.</param>
public sealed record TaperPinSteps(string PinNumber, Length First, StepDrill? Second);

/// <summary>Step drilling for inch taper pins 7/0 to 3.</summary>
public static class TaperPinStepDrills
{
    public static StandardSource Source { get; } = new(
        "Step drills for inch taper pins", "A model engineers' club page", "", "", Certainty.Thin, "one source; sizes are 64ths of an inch printed to four decimals");

    /// <summary>Number; first drill; second drill and its depth, inches; 0 for none.</summary>
    public static ImmutableArray<TaperPinSteps> All { get; } =
    [
        Steps("7/0", 3.0 / 64, 0, 0),
        Steps("6/0", 3.0 / 64, 0, 0),
        Steps("5/0", 4.0 / 64, 0, 0),
        Steps("4/0", 5.0 / 64, 0, 0),
        Steps("3/0", 6.0 / 64, 0, 0),
        Steps("2/0", 6.0 / 64, 7.0 / 64, 1.25),
        Steps("0", 6.0 / 64, 8.0 / 64, 1.5),
        Steps("1", 7.0 / 64, 9.0 / 64, 1.5),
        Steps("2", 7.0 / 64, 9.0 / 64, 1.75),
        Steps("3", 9.0 / 64, 11.0 / 64, 1.75),
    ];

    public static Answer<TaperPinSteps> For(string pinNumber) =>
        Answer<TaperPinSteps>.First(
            All,
            row => string.Equals(row.PinNumber, pinNumber, StringComparison.Ordinal),
            () => "step drills are given for pins 7/0 to 3, not for \"" + pinNumber + "\"");

    private static TaperPinSteps Steps(string number, double first, double second, double depth) =>
        new(number, Length.FromInches(first), second == 0 ? null : new StepDrill(Length.FromInches(second), Length.FromInches(depth)));
}
