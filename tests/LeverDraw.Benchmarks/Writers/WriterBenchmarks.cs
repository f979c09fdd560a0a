using BenchmarkDotNet.Attributes;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Writers;

namespace LeverDraw.Benchmarks.Writers;

/// <summary>Every writer in the visible list on one lever's sheet.</summary>
[MemoryDiagnoser]
public class WriterBenchmarks
{
    private readonly PlotSheet _sheet = Inputs.Load().Sheet("levers/middle", new SheetOptions());

    public static IEnumerable<string> Formats => DrawingWriters.All.Select(w => w.Format);

    [ParamsSource(nameof(Formats))]
    public string Format { get; set; } = "";

    [Benchmark]
    public long Write()
    {
        using var stream = new MemoryStream();
        DrawingWriters.All.Single(w => w.Format == Format).Write(_sheet, stream);
        return stream.Length;
    }
}
