using BenchmarkDotNet.Running;
using LeverDraw.Benchmarks.Pipeline;
using LeverDraw.Benchmarks.Specimens;

// Not a timing: how well the estimates from worn survivors do, as docs/survivors.md shows it.
if (args is ["survivors", ..])
    SurvivorReport.Write(Console.Out);
// A look at the speed in a minute, as docs/adr/0008-speed-of-layout.md shows it: road, or road A4 levers/middle.
else if (args is ["road", .. var asked])
    RoadReport.Write(Console.Out, asked);
else
    BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
