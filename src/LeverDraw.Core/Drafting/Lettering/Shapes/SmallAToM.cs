using System.Collections.Immutable;

namespace LeverDraw.Drafting.Lettering.Shapes;

internal static class SmallAToM
{
    public static ImmutableArray<(char Character, string Path)> Paths { get; } =
    [
        ('a', "M 4.6 7 L 4.6 0 M 4.6 4.4 D 0 1 B 2.3 7 -1 0 B 0 4.4 0 -1 K 0 2.6 B 2.3 0 1 0 B 4.6 2.6 0 1"),
        ('b', "M 0 10 L 0 0 M 0 4.4 D 0 1 B 2.3 7 1 0 B 4.6 4.4 0 -1 K 4.6 2.6 B 2.3 0 -1 0 B 0 2.6 0 1"),
        ('c', "M 4.2 5.8 D -0.6 1 B 2.3 7 -1 0 B 0 4.4 0 -1 K 0 2.6 B 2.3 0 1 0 B 4.2 1.2 0.6 1"),
        ('d', "M 4.6 10 L 4.6 0 M 4.6 4.4 D 0 1 B 2.3 7 -1 0 B 0 4.4 0 -1 K 0 2.6 B 2.3 0 1 0 B 4.6 2.6 0 1"),
        ('e', "M 0 3.7 L 4.6 3.7 L 4.6 4.4 B 2.3 7 -1 0 B 0 4.4 0 -1 K 0 2.6 B 2.3 0 1 0 B 4.2 1.2 0.6 1"),
        ('f', "M 3.6 10 D -1 0 K 3.2 10 B 1.3 8 0 -1 K 1.3 0 M 0 7 L 3.2 7"),
        ('g', "M 4.6 7 L 4.6 -0.6 B 2.3 -3 -1 0 B 0.4 -2 -0.6 1 M 4.6 4.4 D 0 1 B 2.3 7 -1 0 B 0 4.4 0 -1 K 0 2.6 B 2.3 0 1 0 B 4.6 2.6 0 1"),
        ('h', "M 0 10 L 0 0 M 0 4.4 D 0 1 B 2.3 7 1 0 B 4.6 4.6 0 -1 K 4.6 0"),
        ('i', "M 0 7 L 0 0 P 0 9.6"),
        ('j', "M 1.6 7 L 1.6 -1.2 T -0.2 -3 P 1.6 9.6"),
        ('k', "M 0 10 L 0 0 M 4 7 L 0 2.6 M 1.4 4.14 L 4.2 0"),
        ('l', "M 0 10 L 0 1.6 T 1.6 0 K 1.9 0"),
        ('m', "M 0 7 L 0 0 M 0 4.8 D 0 1 B 1.8 7 1 0 B 3.6 5 0 -1 K 3.6 0 M 3.6 4.8 D 0 1 B 5.4 7 1 0 B 7.2 5 0 -1 K 7.2 0"),
    ];
}
