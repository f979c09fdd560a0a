using BenchmarkDotNet.Running;
using LeverDraw.Benchmarks.Specimens;

// Not a timing: how well the estimates from worn survivors do, as docs/survivors.md shows it.
if (args is ["survivors", ..])
    SurvivorReport.Write(Console.Out);
else
    BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
