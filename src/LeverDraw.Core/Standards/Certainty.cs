namespace LeverDraw.Standards;

/// <summary>How well a table's values are backed. <see cref="Solid"/>: two independent sources agree on every cell, or one and a formula that gives the cells.
/// <see cref="Mixed"/>: part solid, part one source. <see cref="Thin"/>: one source, or memory with an arithmetic check. <see cref="FromMemory"/>: no source seen.</summary>
public enum Certainty
{
    Solid,
    Mixed,
    Thin,
    FromMemory,
}
