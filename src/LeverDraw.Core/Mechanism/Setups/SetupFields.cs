using System.Collections.Immutable;
using LeverDraw.Profiles;

namespace LeverDraw.Mechanism.Setups;

/// <summary>The fields of a setup: which lever stands with which pin in which plane, what was measured on them, and what new parts cost. Paths are relative to the setup's file.</summary>
public static class SetupFields
{
    private const int LongestPath = 200;

    public static TextField Lever { get; } = new("parts.lever", null, "The lever's profile, as a path from this file's folder.", LongestPath);

    public static TextField Pin { get; } = new("parts.pin", null, "The pin's profile, as a path from this file's folder.", LongestPath);

    public static TextField Plane { get; } = new("parts.plane", null, "The plane's profile, as a path from this file's folder.", LongestPath);

    public static TextField Spares { get; } = new("parts.spares", null, "The plane profile that new nuts, irons and cap irons are taken from; without it they are as those in the plane.", LongestPath, "");

    public static SizeField Pad { get; } = Measured("pad_thickness", "Thickness of the lever's pads, the thicker one.", 0.8, 6);

    public static SizeField PadOffset { get; } = Measured("pad_offset", "How far one pad stands before the other.", 0, 0.6);

    public static SizeField Hole { get; } = Measured("hole", "Diameter of the lever's hole in the middle of the head, along the load.", 1, 6);

    public static SizeField PinDiameter { get; } = Measured("pin", "Diameter of the pin where the middle of the head runs on it.", 1, 6);

    public static SizeField Tongue { get; } = Measured("tongue", "Thickness of the tongue where it bears in the cap iron's slot.", 1, 8);

    public static SizeField Groove { get; } = Measured("groove", "Width of the nut's groove.", 1.5, 7);

    public static SizeField Thread { get; } = Measured("thread_play", "Axial play of the nut on its stud.", 0, 1);

    public static SizeField Slot { get; } = Measured("slot", "Width of the cap iron's slot along the bed.", 1.5, 9);

    public static SizeField Iron { get; } = Measured("iron", "Thickness of the cutting iron where the tongue passes it.", 0.8, 6);

    public static SizeField CapIron { get; } = Measured("cap_iron", "Thickness of the cap iron at its slot.", 0.6, 6);

    public static TextField Money { get; } = new("price.unit", null, "What prices are in.", 12, "");

    public static NumberField PinPrice { get; } = Price("pin", "a new pin, fitted: of the next size with the lever's hole reamed to suit, or the usual one with a new lever");

    public static NumberField LeverPrice { get; } = Price("lever", "a new lever, fitted");

    public static NumberField NutPrice { get; } = Price("nut", "a new nut, fitted");

    public static NumberField CapIronPrice { get; } = Price("cap_iron", "a new cap iron, fitted");

    public static NumberField IronPrice { get; } = Price("iron", "a cutting iron of the usual thickness");

    public static NumberField Target { get; } = new("target.turns", null, "Lost turns of the nut that the owner would accept.", 0.05, 10);

    public static ImmutableArray<SizeField> AllMeasured { get; } = [Pad, PadOffset, Hole, PinDiameter, Tongue, Groove, Thread, Slot, Iron, CapIron];

    public static ImmutableArray<FieldSpec> All { get; } =
        [Lever, Pin, Plane, Spares, .. AllMeasured, Money, PinPrice, LeverPrice, NutPrice, CapIronPrice, IronPrice, Target];

    private static SizeField Measured(string key, string help, double least, double most) =>
        new("measured." + key, null, help + " As drawn when not given.", least, most) { MayBeAbsent = true };

    private static NumberField Price(string key, string what) =>
        new("price." + key, null, "Price of " + what + "; left out of the choice when not given.", 0, 1_000_000);
}
