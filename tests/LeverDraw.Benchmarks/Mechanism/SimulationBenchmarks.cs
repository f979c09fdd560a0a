using BenchmarkDotNet.Attributes;
using LeverDraw.Mechanism.Statistics;

namespace LeverDraw.Benchmarks.Mechanism;

/// <summary>Ten million draws of nine sizes on one core. The bar is a few seconds.</summary>
[MemoryDiagnoser]
public class SimulationBenchmarks
{
    private const long Draws = 10_000_000;

    private readonly DrawnSize[] _sizes = [.. Enumerable.Range(1, 9).Select(i => new DrawnSize(3 - (0.01 * i), 3 + (0.01 * i)))];

    [Params(SizeSpread.Normal, SizeSpread.Even)]
    public SizeSpread Spread { get; set; }

    [Benchmark]
    public double TenMillionDraws() =>
        Simulation.Run(new LinearResult([1, -1, -1, 1, 2.9, -2.9, 2.1, -2.1, 0.5]), _sizes, Spread, Draws, 1, new DrawnSize(-2, 2), 0.5).StandardDeviation;
}
