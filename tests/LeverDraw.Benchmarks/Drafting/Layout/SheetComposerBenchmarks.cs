using BenchmarkDotNet.Attributes;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;

namespace LeverDraw.Benchmarks.Drafting.Layout;

/// <summary>Placing and arranging alone: solver, division of the sheet, lettering of what is kept.</summary>
[MedianColumn]
[MemoryDiagnoser]
public class SheetComposerBenchmarks
{
    private SheetContent _content = null!;

    public static IEnumerable<string> Names => Inputs.Names;

    [ParamsSource(nameof(Names))]
    public string Profile { get; set; } = "";

    [GlobalSetup]
    public void Read() => _content = Inputs.Load().Part(Profile).Sheets[0].Content(new SheetOptions()).Value!;

    [Benchmark]
    public PlotSheet Compose() => SheetComposer.Compose(_content, new SheetOptions()).Value!;
}
