namespace LeverDraw.Drafting.Lettering.Shapes;

/// <summary>Signs that stand before a size: diameter, square, conical taper (ISO 3040: isosceles triangle, apex towards the small end), arc, counterbore, countersink, depth; and arrows.</summary>
internal static class DrawingSigns
{
    public const string Paths = """
        ⌀ O 3.5 5 3.5 M 1.3 0 L 5.7 10
        □ M 0 1 L 7 1 L 7 8 L 0 8 L 0 1
        ▷ M 0 2 L 10 5 L 0 8 L 0 2
        ◁ M 10 2 L 0 5 L 10 8 L 10 2
        2312 M 0 5 D 0.55 0.6 T 8 5
        ⌴ M 0 8 L 0 2 L 10 2 L 10 8
        ⌵ M 0 8 L 5 1 L 10 8
        ↧ M 0 9.5 L 6 9.5 M 3 9.5 L 3 0 M 1.2 3.2 L 3 0 L 4.8 3.2
        → M 0 5 L 8 5 M 5 6.8 L 8 5 L 5 3.2
        ← M 8 5 L 0 5 M 3 6.8 L 0 5 L 3 3.2
        ↑ M 1.8 0 L 1.8 10 M 0 7 L 1.8 10 L 3.6 7
        ↓ M 1.8 10 L 1.8 0 M 0 3 L 1.8 0 L 3.6 3
        ↔ M 0 5 L 9 5 M 3 6.8 L 0 5 L 3 3.2 M 6 6.8 L 9 5 L 6 3.2
        2022 O 0.6 5 0.6 P 0.6 5
        """;
}
