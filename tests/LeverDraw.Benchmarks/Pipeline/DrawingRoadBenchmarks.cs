using BenchmarkDotNet.Attributes;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Standards;
using LeverDraw.Writers.Svg;

namespace LeverDraw.Benchmarks.Pipeline;

/// <summary>From a profile's text to the bytes of an SVG, warm. The bar is 5 ms at the median for the default call.</summary>
[MedianColumn]
[MemoryDiagnoser]
public class DrawingRoadBenchmarks
{
    private readonly Inputs _inputs = Inputs.Load();
    private readonly MemoryStream _svg = new();
    private SheetOptions _options = new();

    public static IEnumerable<string> Names => Inputs.Names;

    [ParamsSource(nameof(Names))]
    public string Profile { get; set; } = "";

    [Params(Papers.Default, "A4", "A3", "A2")]
    public string Paper { get; set; } = "";

    [GlobalSetup]
    public void Choose() => _options = Papers.Options(Paper);

    [Benchmark]
    public long TextToSvg()
    {
        // The stream is the host's: emptied, not made anew, as one would for many files.
        _svg.SetLength(0);
        new SvgWriter().Write(_inputs.Sheet(Profile, _options), _svg);
        return _svg.Length;
    }
}
