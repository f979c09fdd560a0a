using CsCheck;
using LeverDraw.Diagnostics;
using LeverDraw.Parts;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Parts;

/// <summary>Whatever sizes a part has, its sheet fixes it exactly once.</summary>
public sealed class DimensionedExactlyProperties
{
    [Fact]
    public void Sheet_OfAnyLever_FixesItExactlyOnce() => RandomLevers.Values.Sample(v => Fixes(PartKinds.Lever, v), iter: 200, print: v => RandomLevers.Print(LeverDraw.Parts.AdjustingLever.LeverPart.Build(v).Value!) + "\n" + Told(PartKinds.Lever, v));

    [Fact]
    public void Sheet_OfAnyPin_FixesItExactlyOnce() => RandomPins.Values.Sample(v => Fixes(PartKinds.Pin, v), iter: 200, print: v => Told(PartKinds.Pin, v));

    private static bool Fixes(PartKind kind, ValueBag values) => Told(kind, values).Length == 0;

    private static string Told(PartKind kind, ValueBag values) =>
        string.Join('\n', DimensioningFindings.Of(kind.Build(SheetMaker.Around(kind.Name, values)).Value!).Select(d => d.Message));
}
