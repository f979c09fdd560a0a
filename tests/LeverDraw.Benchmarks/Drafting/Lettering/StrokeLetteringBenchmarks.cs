using BenchmarkDotNet.Attributes;
using LeverDraw.Drafting.Lettering;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Benchmarks.Drafting.Lettering;

[MemoryDiagnoser]
public class StrokeLetteringBenchmarks
{
    private const string Line = "MACHINED: HOLE, HEAD FACES, PADS, TONGUE FLANKS AND NOSE. ⌀3.423 H7 ±0.05";

    [Benchmark]
    public double WidthOf() => StrokeLettering.WidthOf(Line, 2.5);

    [Benchmark]
    public PlotText Compose() => StrokeLettering.Compose(Line, Point2D.Origin, 2.5);
}
