using System.Collections.Immutable;
using LeverDraw.Drafting.Completeness;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Geometry;
using LeverDraw.Profiles;

namespace LeverDraw.Parts.PivotPin;

/// <summary>The numbers that shape a pin, and the pin rebuilt with others, whatever its series allows.</summary>
internal static class PinParameters
{
    private const string NamedEnd = "pin.named_end";

    /// <param name="content">The sheet of a pin rebuilt from the profile given.</param>
    public static ParametricSheet Of(Pin pin, Profile profile, Func<Pin, Profile, SheetContent> content)
    {
        ImmutableArray<ShapeParameter> all = [.. Parameters(pin)];
        return new ParametricSheet(all, Shape(pin).With(SheetSizes.Of(content(pin, profile))), numbers =>
        {
            Dictionary<string, double> moved = new(StringComparer.Ordinal);
            for (int i = 0; i < all.Length; i++)
                moved[all[i].Name] = numbers[i];
            PinMoves moves = new(moved[NamedEnd], Get(PinFields.Taper), Get(PinFields.CrownRadius), Get(PinFields.GaugePlane) ?? pin.GaugePlane.Millimetres);
            return PinPart.Build(new MovedValues(profile.Values, moved), moves).Value is { } other
                ? Shape(other).With(SheetSizes.Of(content(other, profile)))
                : null;
            double? Get(FieldSpec field) => moved.TryGetValue(field.Name, out double value) ? value : null;
        });
    }

    private static IEnumerable<ShapeParameter> Parameters(Pin pin)
    {
        yield return new ShapeParameter(NamedEnd, pin.NamedSize.Millimetres);
        yield return new ShapeParameter(PinFields.Length.Name, pin.Length.Millimetres);
        if (!pin.Taper.IsParallel)
            yield return new ShapeParameter(PinFields.Taper.Name, pin.Taper.Rate, 0.1);
        if (HasGaugePlane(pin))
            yield return new ShapeParameter(PinFields.GaugePlane.Name, pin.GaugePlane.Millimetres);
        if (pin.CrownRadius is { } crown)
            yield return new ShapeParameter(PinFields.CrownRadius.Name, crown.Millimetres);
        if (pin.Chamfer is { } chamfer)
            yield return new ShapeParameter(PinFields.Chamfer.Name, chamfer.Millimetres);
    }

    private static bool HasGaugePlane(Pin pin) => !pin.Taper.IsParallel && pin.GaugedAt is null;

    private static ShapeNumbers Shape(Pin pin)
    {
        ShapeNumbers shape = new();
        foreach (Edge edge in pin.OutlineEdges)
            shape.Add("edge", edge);
        // A size holds there, so the place has to be fixed as if it were metal.
        if (HasGaugePlane(pin))
            shape.Add("gauge", pin.GaugePlane.Millimetres);
        return shape;
    }
}
