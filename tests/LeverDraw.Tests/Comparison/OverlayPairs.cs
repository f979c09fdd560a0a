using LeverDraw.Comparison;
using LeverDraw.Parts;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Comparison;

/// <summary>Pairs of levers to lay over each other.</summary>
internal static class OverlayPairs
{
    public static readonly (string A, string B)[] Shipped = [("early", "late"), ("middle", "rare"), ("early", "smallest")];

    public static LeverVariant Variant(string name) => LeverVariant.Of(PartKinds.Lever.Build(SheetMaker.Profile("levers/" + name)).Value!);

    public static LeverComparison Compare(string a, string b, Alignment alignment = Alignment.Pivot) => LeverComparison.Of(Variant(a), Variant(b), alignment);

    /// <summary>The first sound random levers by seed, so that a failure comes again.</summary>
    public static Lever[] RandomLeversOf(int count) =>
        [.. Enumerable.Range(1, int.MaxValue - 1).Select(seed => LeverPart.Build(RandomLevers.Draw(new Dice(seed))).Value).OfType<Lever>().Take(count)];
}
