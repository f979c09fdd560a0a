namespace LeverDraw.Drafting.Lettering.Shapes;

/// <summary>0 to 9, all in a cell five units wide so that columns of figures stand under each other.</summary>
internal static class Digits
{
    /// <summary>Width between centre lines, grid units.</summary>
    public const double CellWidth = 5;

    public const string Paths = """
        0 M 0 6.4 D 0 1 B 2.5 10 1 0 B 5 6.4 0 -1 K 5 3.6 B 2.5 0 -1 0 B 0 3.6 0 1 K 0 6.4
        1 M 0.9 7.5 L 3.4 10 L 3.4 0
        2 M 0.1 7.7 D 0.1 1 B 2.5 10 1 0 B 4.9 7.5 0 -1 A -4.6 0 0 L 5 0
        3 M 0.4 8.6 D 0.6 1 B 2.4 10 1 0 B 4.6 7.8 0 -1 B 2.4 5.5 -1 0 K 1.8 5.5 M 2.4 5.5 D 1 0 B 5 2.8 0 -1 B 2.4 0 -1 0 B 0 1.7 -0.5 1
        4 M 3 10 L 0 2.6 L 5 2.6 M 3.7 5.4 L 3.7 0
        5 M 4.5 10 L 0.7 10 L 0.3 5.4 D 1 0.8 B 2.5 6.2 1 0 B 5 3.2 0 -1 B 2.4 0 -1 0 B 0 1.5 -0.6 1
        6 M 3.9 10 D -1 -0.55 B 0 3.4 0 -1 B 2.5 0 1 0 B 5 3.1 0 1 B 2.5 6.1 -1 0 B 0 3.1 0 -1
        7 M 0 10 L 5 10 L 1.6 0
        8 M 2.5 5.5 D -1 0 B 0.3 7.75 0 1 B 2.5 10 1 0 B 4.7 7.75 0 -1 B 2.5 5.5 -1 0 B 0 2.75 0 -1 B 2.5 0 1 0 B 5 2.75 0 1 B 2.5 5.5 -1 0
        9 M 1.1 0 D 1 0.55 B 5 6.6 0 1 B 2.5 10 -1 0 B 0 6.9 0 -1 B 2.5 3.9 1 0 B 5 6.9 0 1
        """;
}
