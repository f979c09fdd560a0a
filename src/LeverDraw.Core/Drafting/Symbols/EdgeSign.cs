namespace LeverDraw.Drafting.Symbols;

/// <summary>State of edges (ISO 13715): two limits at a right-angled corner. Minus takes material off the edge, plus leaves some.</summary>
/// <param name="Upper">Final text with its sign, such as <c>−0.2</c>; the lower stands under it.</param>
/// <param name="Lower">Empty when there is one value.</param>
public sealed record EdgeSign(string Upper, string Lower = "");
