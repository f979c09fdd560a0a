namespace LeverDraw.Drafting.Lettering.Shapes;

internal static class SmallNToZ
{
    public const string Paths = """
        n M 0 7 L 0 0 M 0 4.9 D 0.5 1 B 2.5 7 1 0 B 4.6 4.7 0 -1 K 4.6 0
        o M 0 4.2 D 0 1 B 2.4 7 1 0 B 4.8 4.2 0 -1 K 4.8 2.8 B 2.4 0 -1 0 B 0 2.8 0 1 K 0 4.2
        p M 0 7 L 0 -3 M 0 5.1 D 0.5 1 B 2.4 7 1 0 B 4.6 4.4 0 -1 K 4.6 2.6 B 2.4 0 -1 0 B 0 1.9 -0.5 1
        q M 4.6 7 L 4.6 -3 M 4.6 5.1 D -0.5 1 B 2.2 7 -1 0 B 0 4.4 0 -1 K 0 2.6 B 2.2 0 1 0 B 4.6 1.9 0.5 1
        r M 0 7 L 0 0 M 0 4.7 D 0.5 1 B 2.5 7 1 0 K 3 7
        s M 3.7 5.9 D -0.6 1 B 2.1 7 -1 0 B 0.2 5.35 0 -1 B 2.1 3.65 1 -0.2 B 4.1 1.9 0 -1 B 2.1 0 -1 0 B 0 1.2 -0.6 1
        t M 1.2 9.6 L 1.2 1.9 T 3.1 0 K 3.5 0 M 0 7 L 3.3 7
        u M 0 7 L 0 2.4 B 2.1 0 1 0 B 4.6 2.1 0.5 1 M 4.6 7 L 4.6 0
        v M 0 7 L 2.4 0 L 4.8 7
        w M 0 7 L 1.8 0 L 3.6 7 L 5.4 0 L 7.2 7
        x M 0 0 L 4.6 7 M 0 7 L 4.6 0
        y M 0 7 L 2.4 0 M 4.8 7 L 1.3714285714 -3
        z M 0 7 L 4.4 7 L 0 0 L 4.4 0
        """;
}
