using CsCheck;
using LeverDraw.Specimens.Readings;
using LeverDraw.Tests.Cli;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Specimens.Readings;

public sealed class ReadingsFileProperties
{
    private static readonly string[] Put = ["", ",", "\"", ";", "\n", "9", "-", "mm", "[", "=", "µ"];

    /// <summary>Whatever a file holds, there are readings or faults, each with its place inside the file.</summary>
    [Fact]
    public void Read_SpoiltFile_NeverThrows()
    {
        string good = RepositoryFile.Read("profiles/readings/survivors.csv");
        Gen.Select(Gen.Int[0, good.Length - 1], Gen.Int[0, 6], Gen.Int[0, Put.Length - 1].Select(i => Put[i]), Gen.Bool).Sample((at, drop, put, toml) =>
        {
            string spoilt = good.Remove(at, Math.Min(drop, good.Length - at)).Insert(at, put);
            string name = toml ? "r.toml" : "r.csv";
            var read = ReadingsFile.Read(name, new MemoryFiles().With(name, spoilt));
            int lines = spoilt.Split('\n').Length;
            return (read.Ok || read.Diagnostics.Length > 0) && read.Diagnostics.All(d => d.Position is { } p && p.Line >= 0 && p.Line <= lines);
        });
    }
}
