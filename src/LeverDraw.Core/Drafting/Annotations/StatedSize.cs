namespace LeverDraw.Drafting.Annotations;

/// <summary>A size that words state beside the one value an annotation has: a taper in a hole's callout, a radius in a note.</summary>
/// <param name="Name">As <see cref="Annotation.Name"/>.</param>
/// <param name="Value">Millimetres, radians, or the rate of a taper; exactly what the geometry has.</param>
public readonly record struct StatedSize(string Name, double Value);
