namespace LeverDraw.Drafting.Lettering.Shapes;

/// <summary>Signs of geometrical tolerances, to stand in a frame two lettering heights high (forms as ISO 1101 names them; proportions our own).</summary>
internal static class ToleranceSigns
{
    public const string Paths = """
        23E4 M 0 5 L 10 5
        ⏥ M 0 2 L 8 2 L 11 8 L 3 8 L 0 2
        ○ O 4 5 4
        ⌭ O 5.1619 5 2.6 M 0 0 L 4.6 10 M 5.7238 0 L 10.3238 10
        ⌓ M 0 2.5 D 0 1 T 10 2.5 L 0 2.5
        22A5 M 0 0 L 10 0 M 5 0 L 5 10
        27C2 M 0 0 L 10 0 M 5 0 L 5 10
        ∥ M 0 0 L 3.6 10 M 3.4 0 L 7 10
        ∠ M 10 0 L 0 0 L 9 7.5
        ⌖ O 5 5 3.2 M 0 5 L 10 5 M 5 0 L 5 10
        ◎ O 5 5 2.2 O 5 5 4.8
        232F M 2 7.6 L 8 7.6 M 0 5 L 10 5 M 2 2.4 L 8 2.4
        ↗ M 0 0 L 8 8 M 4.9 7.2 L 8 8 L 7.2 4.9
        ⌰ M 0 0 L 7 7 M 4 6.2 L 7 7 L 6.2 4 M 5 0 L 12 7 M 9 6.2 L 12 7 L 11.2 4 M 0 0 L 5 0
        """;
}
