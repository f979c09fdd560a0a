using System.Text.RegularExpressions;
using LeverDraw.Diagnostics;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Architecture;

/// <summary>House rules of DEVELOPERS.md that a machine can check.</summary>
public sealed partial class HouseRuleTests
{
    private const int LongestFile = 400;

    /// <summary>Folders of the tests that mirror no source folder.</summary>
    private static readonly string[] TestsOwn = ["Architecture", "Samples", "Support"];

    // Put together here, so that this file does not hold what it looks for.
    private static readonly string[] NeverWritten = ["/ro" + "ot/", "/wo" + "rk/", "/tm" + "p/wt", @"C:\Us" + "ers", "TO" + "DO", "FIX" + "ME", "NotImplemented" + "Exception"];

    [Fact]
    public void SourceFiles_AreShort()
    {
        string[] tooLong = [.. SourceFiles.Under("src", ".cs").Concat(SourceFiles.Under("tests", ".cs"))
            .Where(p => !p.StartsWith("src/LeverDraw.Core/Standards/", StringComparison.Ordinal) && SourceFiles.Lines(p).Length > LongestFile)];
        Assert.Empty(tooLong);
    }

    [Fact]
    public void TextFiles_HoldNoPlaceOfOneMachineAndNothingUnfinished()
    {
        string[] wrong = [.. SourceFiles.Under(".", ".cs", ".md", ".toml", ".csproj", ".props", ".json", ".py", ".cjs", ".svg", ".dxf")
            .SelectMany(p => NeverWritten.Where(w => RepositoryFile.Read(p).Contains(w, StringComparison.Ordinal)).Select(w => p + ": " + w))];
        Assert.Empty(wrong);
    }

    [Fact]
    public void TestFiles_StandInTheFolderOfWhatTheyTest()
    {
        // src/LeverDraw.Core/Parts/X.cs is Parts; src/LeverDraw.Cli/Commands/X.cs is Cli/Commands.
        string[] folders = [.. SourceFiles.Under("src", ".cs")
            .Select(p => p.StartsWith("src/LeverDraw.Core/", StringComparison.Ordinal) ? Folder(p, 2) : Folder(p, 1).Replace("LeverDraw.", "", StringComparison.Ordinal))];
        string[] strays = [.. SourceFiles.Under("tests/LeverDraw.Tests", ".cs").Select(p => Folder(p, 2)).Distinct()
            .Where(f => f.Length > 0 && !TestsOwn.Contains(f.Split('/')[0]) && !folders.Any(s => s == f || s.StartsWith(f + "/", StringComparison.Ordinal)))];
        Assert.Empty(strays);
    }

    [Fact]
    public void TestFiles_AreNamedTestsOrProperties()
    {
        string[] wrong = [.. SourceFiles.Under("tests/LeverDraw.Tests", ".cs")
            .Where(p => !p.EndsWith("Tests.cs", StringComparison.Ordinal) && !p.EndsWith("Properties.cs", StringComparison.Ordinal))
            .Where(p => !Tests().Match(Path.GetFileName(p)).Success && SourceFiles.Lines(p).Any(l => l.Trim() is "[Fact]" or "[Theory]"))];
        Assert.Empty(wrong);
    }

    [Fact]
    public void Diagnostics_AreMadeByTheCatalogueOnly()
    {
        string[] wrong = [.. SourceFiles.Under("src", ".cs").Where(p => !p.StartsWith("src/LeverDraw.Core/Diagnostics/", StringComparison.Ordinal))
            .SelectMany(p => SourceFiles.Lines(p).Where(l => RawCode().IsMatch(l)).Select(l => p + ": " + l.Trim()))];
        Assert.Empty(wrong);
    }

    [Fact]
    public void Codes_NamedAnywhere_AreInTheCatalogue()
    {
        string[] unknown = [.. SourceFiles.Under("src", ".cs").Concat(SourceFiles.Under("docs", ".md")).Append("README.md").Append("DEVELOPERS.md")
            .SelectMany(p => Code().Matches(RepositoryFile.Read(p)).Select(m => m.Value).Distinct().Where(c => DiagnosticCatalogue.Find(c) is null).Select(c => p + ": " + c))];
        Assert.Empty(unknown);
    }

    private static string Folder(string path, int skip) => string.Join('/', path.Split('/')[skip..^1]);

    // XTests.Topic.cs is a part of XTests.
    [GeneratedRegex(@"(Tests|Properties)\.\w+\.cs$")]
    private static partial Regex Tests();

    [GeneratedRegex(@"""LD\d{3}""|new Diagnostic\(")]
    private static partial Regex RawCode();

    [GeneratedRegex(@"\bLD\d{3}\b")]
    private static partial Regex Code();
}
