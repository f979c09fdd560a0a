using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Standards;

/// <summary>The drill for an inch taper pin of one number and length. <paramref name="Drill"/> is a name of <see cref="TwistDrills"/>.</summary>
public sealed record TaperPinDrill(string PinNumber, Length PinLength, string Drill);

/// <summary>Drills for inch taper pins 6/0 to 5 in lengths 3/4 to 2 1/2 in; a drill may be up to 0.0011 in over the pin's small end.</summary>
public static class TaperPinDrills
{
    public static StandardSource Source { get; } = new(
        "Drills for inch taper pins by length", "US Army TM 9-254", "", "table 3-1", Certainty.Solid,
        "one source; every drill lies within 0.0035 in of the small end computed from 1:48");

    public static ImmutableArray<TaperPinDrill> All { get; } =
    [
        new("6/0", Length.FromInches(0.75), "1/16"),
        new("5/0", Length.FromInches(0.75), "#47"),
        new("4/0", Length.FromInches(0.75), "#42"),
        new("3/0", Length.FromInches(0.75), "7/64"),
        new("2/0", Length.FromInches(0.75), "1/8"),
        new("0", Length.FromInches(0.75), "9/64"),
        new("1", Length.FromInches(0.75), "5/32"),
        new("2", Length.FromInches(0.75), "#16"),
        new("3", Length.FromInches(0.75), "13/64"),
        new("4", Length.FromInches(0.75), "15/64"),
        new("5", Length.FromInches(0.75), "I"),
        new("5/0", Length.FromInches(1), "#49"),
        new("4/0", Length.FromInches(1), "#44"),
        new("3/0", Length.FromInches(1), "#37"),
        new("2/0", Length.FromInches(1), "#31"),
        new("0", Length.FromInches(1), "#29"),
        new("1", Length.FromInches(1), "#25"),
        new("2", Length.FromInches(1), "11/64"),
        new("3", Length.FromInches(1), "#9"),
        new("4", Length.FromInches(1), "#1"),
        new("5", Length.FromInches(1), "H"),
        new("2/0", Length.FromInches(1.25), "#32"),
        new("0", Length.FromInches(1.25), "#30"),
        new("1", Length.FromInches(1.25), "#26"),
        new("2", Length.FromInches(1.25), "#19"),
        new("3", Length.FromInches(1.25), "#10"),
        new("4", Length.FromInches(1.25), "#2"),
        new("5", Length.FromInches(1.25), "G"),
        new("0", Length.FromInches(1.5), "1/8"),
        new("1", Length.FromInches(1.5), "9/64"),
        new("2", Length.FromInches(1.5), "#20"),
        new("3", Length.FromInches(1.5), "3/16"),
        new("4", Length.FromInches(1.5), "7/32"),
        new("5", Length.FromInches(1.5), "F"),
        new("0", Length.FromInches(1.75), "#31"),
        new("1", Length.FromInches(1.75), "#29"),
        new("2", Length.FromInches(1.75), "5/32"),
        new("3", Length.FromInches(1.75), "#14"),
        new("4", Length.FromInches(1.75), "#3"),
        new("5", Length.FromInches(1.75), "E"),
        new("0", Length.FromInches(2), "#33"),
        new("1", Length.FromInches(2), "#30"),
        new("2", Length.FromInches(2), "#25"),
        new("3", Length.FromInches(2), "#16"),
        new("4", Length.FromInches(2), "#4"),
        new("5", Length.FromInches(2), "D"),
        new("0", Length.FromInches(2.25), "7/64"),
        new("1", Length.FromInches(2.25), "1/8"),
        new("2", Length.FromInches(2.25), "#26"),
        new("3", Length.FromInches(2.25), "11/64"),
        new("4", Length.FromInches(2.25), "13/64"),
        new("5", Length.FromInches(2.25), "C"),
        new("0", Length.FromInches(2.5), "#37"),
        new("1", Length.FromInches(2.5), "#31"),
        new("2", Length.FromInches(2.5), "#28"),
        new("3", Length.FromInches(2.5), "#19"),
        new("4", Length.FromInches(2.5), "#8"),
        new("5", Length.FromInches(2.5), "B"),
    ];

    /// <summary>The listed drill, or a refusal when this number and length are not listed.</summary>
    public static Answer<TaperPinDrill> For(string pinNumber, Length pinLength)
    {
        double mm = SizeSteps.ToBorder(pinLength);
        return Answer<TaperPinDrill>.First(
            All,
            row => string.Equals(row.PinNumber, pinNumber, StringComparison.Ordinal) && SizeSteps.ToBorder(row.PinLength) == mm,
            () => "the drill table lists pins 6/0 to 5 in lengths 3/4, 1, 1 1/4, 1 1/2, 1 3/4, 2, 2 1/4 and 2 1/2 in, not every number in every length");
    }
}
