using System.Collections.Immutable;
using LeverDraw.Comparison;
using LeverDraw.Parts;

namespace LeverDraw.Cli.Comparing;

/// <summary>The levers that are to be compared, each with its pin if pins were given, in the order of the command line.</summary>
/// <param name="Paths">Of the levers.</param>
internal sealed record CompareInput(ImmutableArray<LeverVariant> Variants, ImmutableArray<string> Paths)
{
    /// <summary>Null when the faults say why these profiles cannot be compared.</summary>
    public static CompareInput? Of(IReadOnlyList<(string Path, BuiltPart Part)> parts, bool tableOnly, List<UsageFault> faults)
    {
        (string Path, BuiltPart Part)[] levers = [.. parts.Where(p => p.Part.Kind == PartKinds.Lever)], pins = [.. parts.Where(p => p.Part.Kind == PartKinds.Pin)];
        foreach ((string path, BuiltPart part) in parts.Except(levers).Except(pins))
            faults.Add(new UsageFault($"'{path}' is of kind {part.Kind.Name}.", "Levers are compared, with their pins if these are given."));
        if (levers.Length < 2)
            faults.Add(new UsageFault("'compare' needs two levers.", "Name two profiles of kind lever."));
        if (levers.Length > 2 && !tableOnly)
            faults.Add(new UsageFault("An overlay shows two levers.", "Name two, or add --table for one table of all."));
        ImmutableArray<LeverVariant> variants = [.. levers.Select(l => LeverVariant.Of(l.Part).WithPinOf(pins.Select(p => p.Part)))];
        foreach ((string path, BuiltPart pin) in pins)
        {
            if (!variants.Any(v => v.Pin?.Profile == pin.Profile))
                faults.Add(new UsageFault($"'{path}' is no pin of these levers.", "A lever names the drawing number of its pin in hole.pin."));
        }

        if (pins.Length > 0 && variants.FirstOrDefault(v => v.Pin is null) is { } without)
            faults.Add(new UsageFault($"The pin of '{without.Profile.Path}' is missing{Named(without)}.", "Name the pins of all levers, or of none."));
        return faults.Count == 0 ? new CompareInput(variants, [.. levers.Select(l => l.Path)]) : null;
    }

    private static string Named(LeverVariant variant) => variant.Lever.Hole.Pin.Length > 0 ? " (" + variant.Lever.Hole.Pin + ")" : "";
}
