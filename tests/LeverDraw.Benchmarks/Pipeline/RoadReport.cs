using System.Diagnostics;
using System.Globalization;
using System.Runtime;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Writers.Svg;

namespace LeverDraw.Benchmarks.Pipeline;

/// <summary>A quick look at the bar of docs/adr/0008-speed-of-layout.md: per shipped profile the median time from its text to the bytes of an SVG, warm. <see cref="DrawingRoadBenchmarks"/> takes longer and says more.</summary>
internal static class RoadReport
{
    /// <summary>Warm is what the compiler is done with: it has compiled nothing for so many runs. (After 400 runs of the first profile it is not yet, on two processors that are both busy drawing.)</summary>
    private const int Quiet = 300;

    /// <summary>Longer than the compiler was ever seen to take.</summary>
    private const int MostWarming = 4000;

    private const int Runs = 61;

    /// <param name="to">Where the table goes.</param>
    /// <param name="asked">Papers, by default "default": the paper that a call without one takes; and profiles as in levers/middle, by default all.</param>
    public static void Write(TextWriter to, IReadOnlyList<string> asked)
    {
        string[] names = [.. asked.Where(word => word.Contains('/', StringComparison.Ordinal))];
        string[] papers = [.. asked.Except(names).DefaultIfEmpty(Papers.Default)];
        to.WriteLine("profile            paper    median ms  least ms  garbage KB");
        foreach (string paper in papers)
        {
            foreach (string name in names.Length > 0 ? names : [.. Inputs.Names])
            {
                (double median, double least, long garbage) = Measure(name, Papers.Options(paper));
                to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name,-18} {paper,-8} {median,9:0.00} {least,9:0.00} {garbage / 1024,11}"));
            }
        }
    }

    private static (double Median, double Least, long Garbage) Measure(string name, SheetOptions options)
    {
        Inputs inputs = Inputs.Load();
        // As a host that writes many files would: one stream, emptied each time.
        using var svg = new MemoryStream();
        var times = new List<double>(Runs);
        long compiled = -1;
        for (int run = 0, quiet = 0; quiet < Quiet && run < MostWarming; run++)
        {
            Draw();
            quiet = JitInfo.GetCompiledMethodCount() == compiled ? quiet + 1 : 0;
            compiled = JitInfo.GetCompiledMethodCount();
        }

        long before = GC.GetTotalAllocatedBytes(precise: true);
        for (int run = 0; run < Runs; run++)
        {
            long start = Stopwatch.GetTimestamp();
            Draw();
            times.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        }

        times.Sort();
        return (times[Runs / 2], times[0], (GC.GetTotalAllocatedBytes(precise: true) - before) / Runs);

        void Draw()
        {
            svg.SetLength(0);
            new SvgWriter().Write(inputs.Sheet(name, options), svg);
        }
    }
}
