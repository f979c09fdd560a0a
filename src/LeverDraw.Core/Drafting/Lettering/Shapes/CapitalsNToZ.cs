namespace LeverDraw.Drafting.Lettering.Shapes;

internal static class CapitalsNToZ
{
    public const string Paths = """
        N M 0 0 L 0 10 L 5.8 0 L 5.8 10
        O M 0 5.6 D 0 1 B 3.3 10 1 0 B 6.6 5.6 0 -1 K 6.6 4.4 B 3.3 0 -1 0 B 0 4.4 0 1 K 0 5.6
        P M 0 0 L 0 10 L 2.7 10 T 2.7 4.8 K 0 4.8
        Q M 0 5.6 D 0 1 B 3.3 10 1 0 B 6.6 5.6 0 -1 K 6.6 4.4 B 3.3 0 -1 0 B 0 4.4 0 1 K 0 5.6 M 4 2.6 L 6.8 -0.8
        R M 0 0 L 0 10 L 2.7 10 T 2.7 4.8 K 0 4.8 M 2.7 4.8 L 5.5 0
        S M 4.8 8.3 D -0.55 1 B 2.6 10 -1 0 B 0.2 7.6 0 -1 B 2.6 5.2 1 -0.25 B 5.2 2.6 0 -1 B 2.6 0 -1 0 B 0 1.8 -0.5 1
        T M 0 10 L 6 10 M 3 10 L 3 0
        U M 0 10 L 0 3.4 B 2.8 0 1 0 B 5.6 3.4 0 1 K 5.6 10
        V M 0 10 L 3.1 0 L 6.2 10
        W M 0 10 L 2.3 0 L 4.6 10 L 6.9 0 L 9.2 10
        X M 0 0 L 5.8 10 M 0 10 L 5.8 0
        Y M 0 10 L 3 4.6 L 6 10 M 3 4.6 L 3 0
        Z M 0 10 L 5.6 10 L 0 0 L 5.6 0
        """;
}
