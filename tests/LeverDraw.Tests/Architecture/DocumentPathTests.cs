using System.Text.RegularExpressions;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Architecture;

/// <summary>What the documents point at is there.</summary>
public sealed partial class DocumentPathTests
{
    public static TheoryData<string> Documents =>
        [.. SourceFiles.Under("docs", ".md").Append("README.md").Append("DEVELOPERS.md")];

    [Theory]
    [MemberData(nameof(Documents))]
    public void PathsInBackticks_Exist(string document)
    {
        string[] missing = [.. InBackticks().Matches(WithoutFences(document)).Select(m => m.Groups[1].Value).Where(IsPath).Distinct()
            .Where(p => !Exists(p))];
        Assert.Empty(missing);
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void Links_LeadSomewhere(string document)
    {
        string folder = Path.GetDirectoryName(document) ?? "";
        string[] missing = [.. Link().Matches(WithoutFences(document)).Select(m => m.Groups[1].Value.Split('#')[0])
            .Where(l => l.Length > 0 && !l.Contains("://", StringComparison.Ordinal))
            .Where(l => !Exists(Path.Combine(folder, l)))];
        Assert.Empty(missing);
    }

    // A place to be filled in, as in `src/LeverDraw.Core/Parts/<Kind>/`, is checked up to there.
    private static bool Exists(string path)
    {
        string known = path.Split('<', '*')[0];
        string full = Path.Combine(RepositoryFile.Root, known == path ? path : known[..(known.LastIndexOf('/') + 1)]);
        return File.Exists(full) || Directory.Exists(full);
    }

    private static bool IsPath(string text) => Beginning().IsMatch(text);

    private static string WithoutFences(string document) => Fence().Replace(RepositoryFile.Read(document), "");

    [GeneratedRegex(@"(?ms)^```.*?^```[^\n]*$")]
    private static partial Regex Fence();

    [GeneratedRegex("`([^`\n]+)`")]
    private static partial Regex InBackticks();

    [GeneratedRegex(@"\]\(([^)\s]+)\)")]
    private static partial Regex Link();

    // Only names that begin at the root are paths; `a/b` may be a ratio or a fraction.
    [GeneratedRegex(@"^(src|tests|docs|profiles|out-samples|\.ci)/\S+$|^(README|DEVELOPERS)\.md$|^LeverDraw\.sln$|^Directory\.[\w.]+$")]
    private static partial Regex Beginning();
}
