using System.Collections.Immutable;

namespace LeverDraw.Drafting.Completeness;

/// <summary>A number that shapes the part, as resolved: defaults filled in, so that each says something of its own.</summary>
/// <param name="Name">The field's full name, or one of the part's own.</param>
/// <param name="Value">Millimetres, radians or the rate of a taper.</param>
/// <param name="Unit">A change that moves the part's metal by about a millimetre: 1 for lengths, 0.1 for angles.</param>
public readonly record struct ShapeParameter(string Name, double Value, double Unit = 1);

/// <summary>The part and its sheet at one set of parameters.</summary>
/// <param name="Form">What the shape consists of, without any number. Two samples can be compared only when it is the same.</param>
/// <param name="Shape">Everything that shapes metal, millimetres: corners, middles of arcs, diameters.</param>
public sealed record ShapeSample(string Form, ImmutableArray<double> Shape, ImmutableArray<SheetSize> Sizes);

/// <summary>A sheet as a function of the numbers that shape its part.</summary>
/// <param name="Here">The part and its sheet as they are.</param>
/// <param name="At">The part rebuilt with these values, in the order of <paramref name="Parameters"/>; null where there is no such part.</param>
public sealed record ParametricSheet(ImmutableArray<ShapeParameter> Parameters, ShapeSample Here, Func<ImmutableArray<double>, ShapeSample?> At);
