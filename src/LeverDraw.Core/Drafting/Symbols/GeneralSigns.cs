namespace LeverDraw.Drafting.Symbols;

/// <summary>Signs that hold for the whole part where nothing else is said.</summary>
/// <param name="Rest">Texture of all surfaces without a sign of their own.</param>
/// <param name="Edges">State of edges without an indication of their own; null when a note tells it.</param>
public sealed record GeneralSigns(TextureSign Rest, EdgeSign? Edges = null)
{
    /// <summary>A bare sign in brackets says that other surfaces carry signs of their own.</summary>
    public bool HasOthers { get; init; } = true;
}
