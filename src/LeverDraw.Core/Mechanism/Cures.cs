using System.Collections.Immutable;
using LeverDraw.Mechanism.Setups;
using LeverDraw.Units;

namespace LeverDraw.Mechanism;

/// <summary>A set of parts replaced at once.</summary>
/// <param name="Turns">Lost turns afterwards, sizes typical, by the exact solution where there is one; null when the parts would not go together or not work.</param>
public sealed record Cure(ImmutableArray<MechanismPart> Parts, double Price, double? Turns, Linkage? Linkage);

/// <summary>Which parts to replace: a gap belongs to two of them and gains overlap, so every set is worked out by itself.</summary>
public static class Cures
{
    /// <summary>Every set of the parts that have a price, none of them first; cheapest first, of equal price the one with fewer lost turns.</summary>
    public static ImmutableArray<Cure> All(Setup setup)
    {
        ArgumentNullException.ThrowIfNull(setup);
        MechanismPart[] priced = [.. MechanismParts.All.Where(setup.Prices.ContainsKey)];
        var all = new List<Cure>();
        for (int set = 0; set < 1 << priced.Length; set++)
        {
            int chosen = set;
            ImmutableArray<MechanismPart> parts = [.. priced.Where((_, i) => (chosen & (1 << i)) != 0)];
            Linkage? linkage = Linkage.Of(Replace(setup, parts));
            all.Add(new Cure(parts, parts.Sum(p => setup.Prices[p]), linkage is { GoesTogether: true } ? LostTurns.Of("", linkage).Meant : null, linkage));
        }

        return [.. all.OrderBy(c => c.Price).ThenBy(c => c.Turns ?? double.PositiveInfinity).ThenBy(c => c.Parts.Length)];
    }

    /// <summary>The cheapest set that loses no more than the target; null when none does.</summary>
    public static Cure? Cheapest(IEnumerable<Cure> cures, double target) =>
        cures.FirstOrDefault(c => c.Turns is { } turns && turns <= target + 1e-9);

    /// <summary>The setup's assembly with these parts new.</summary>
    /// <remarks>A new pin without a new lever is one of the next size, the worn hole reamed to suit: the play on it is again that of the drawn lever on the drawn pin.</remarks>
    public static Assembly Replace(Setup setup, ImmutableArray<MechanismPart> parts)
    {
        ArgumentNullException.ThrowIfNull(setup);
        Assembly assembly = setup.Found;
        if (parts.Contains(MechanismPart.Lever))
            assembly = assembly with { Pad = null, PadOffset = null, Hole = null, TongueWear = null };
        if (parts.Contains(MechanismPart.Pin))
            assembly = assembly with { Hole = null, PinDiameter = null };
        if (parts.Contains(MechanismPart.Nut))
            assembly = assembly with { Plane = assembly.Plane with { Nut = assembly.Plane.Nut with { Groove = setup.Spares.Nut.Groove, Play = setup.Spares.Nut.Play } } };
        if (parts.Contains(MechanismPart.CapIron))
            assembly = assembly with { Plane = assembly.Plane with { CapIron = setup.Spares.CapIron } };
        if (parts.Contains(MechanismPart.Iron))
            assembly = assembly with { Plane = assembly.Plane with { Iron = setup.Spares.Iron } };
        return assembly;
    }
}
