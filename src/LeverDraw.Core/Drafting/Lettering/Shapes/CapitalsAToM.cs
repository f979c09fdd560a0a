namespace LeverDraw.Drafting.Lettering.Shapes;

internal static class CapitalsAToM
{
    public const string Paths = """
        A M 0 0 L 3.2 10 L 6.4 0 M 0.96 3 L 5.44 3
        B M 0 0 L 0 10 L 2.7 10 T 2.7 5.4 K 0 5.4 M 2.5 5.4 D 1 0 T 2.5 0 K 0 0
        C M 5.5 8 D -0.5 1 B 3 10 -1 0 B 0 6.2 0 -1 K 0 3.8 B 3 0 1 0 B 5.5 2 0.5 1
        D M 0 0 L 0 10 L 2.4 10 B 5.8 6.4 0 -1 K 5.8 3.6 B 2.4 0 -1 0 K 0 0
        E M 4.8 10 L 0 10 L 0 0 L 4.8 0 M 0 5.3 L 4 5.3
        F M 4.8 10 L 0 10 L 0 0 M 0 5.3 L 4 5.3
        G M 5.5 8 D -0.5 1 B 3 10 -1 0 B 0 6.2 0 -1 K 0 3.8 B 3 0 1 0 B 5.8 3 0 1 K 5.8 4.6 L 3.4 4.6
        H M 0 10 L 0 0 M 5.6 10 L 5.6 0 M 0 5.3 L 5.6 5.3
        I M 0 10 L 0 0
        J M 3.8 10 L 3.8 2.4 B 1.8 0 -1 0 B 0 1.4 -0.5 1
        K M 0 10 L 0 0 M 5.4 10 L 0 3.6 M 1.8 5.7333333333 L 5.6 0
        L M 0 10 L 0 0 L 4.6 0
        M M 0 0 L 0 10 L 3.4 3 L 6.8 10 L 6.8 0
        """;
}
