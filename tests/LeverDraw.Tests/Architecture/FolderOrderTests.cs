using System.Text.RegularExpressions;

namespace LeverDraw.Tests.Architecture;

/// <summary>Code may use only the folders to its left in the order of docs/adr/0001-architecture.md.</summary>
public sealed partial class FolderOrderTests
{
    private static readonly string[] Order =
    [
        "Diagnostics", "Units", "Geometry", "Standards", "Tolerancing", "Lookups", "Profiles", "Drafting", "Parts",
        "Mechanism", "Specimens", "Comparison", "Ordering", "Pipeline",
    ];

    /// <summary>Jobs that stand side by side on parts and do not know each other.</summary>
    private static readonly string[] SideBySide = ["Mechanism", "Specimens", "Comparison", "Ordering"];

    private static readonly string[] SeenByWriters = ["Units", "Geometry", "Drafting.Plotting", "Writers"];

    [Fact]
    public void Core_EveryFolder_IsInTheOrder()
    {
        string[] folders = [.. SourceFiles.Under("src/LeverDraw.Core", ".cs").Select(p => p.Split('/')[2]).Distinct()];
        Assert.Empty(folders.Except(Order));
    }

    [Fact]
    public void Core_UsingLines_PointLeft()
    {
        List<string> wrong = [];
        foreach (string path in SourceFiles.Under("src/LeverDraw.Core", ".cs"))
        {
            string own = path.Split('/')[2];
            foreach (string used in Used(path).Select(u => u.Split('.')[0]).Distinct())
            {
                bool left = Array.IndexOf(Order, used) <= Array.IndexOf(Order, own) && Order.Contains(used);
                if (!left || (used != own && SideBySide.Contains(used) && SideBySide.Contains(own)))
                    wrong.Add($"{path} uses {used}");
            }
        }

        Assert.Empty(wrong);
    }

    [Fact]
    public void Writers_UsingLines_SeePlottingAndItsGroundOnly()
    {
        string[] wrong = [.. SourceFiles.Under("src/LeverDraw.Writers", ".cs")
            .SelectMany(path => Used(path).Where(u => !SeenByWriters.Any(s => u == s || u.StartsWith(s + ".", StringComparison.Ordinal))).Select(u => $"{path} uses {u}"))];
        Assert.Empty(wrong);
    }

    [Fact]
    public void Namespaces_AreTheFolderPath()
    {
        string[] wrong = [.. SourceFiles.Under("src", ".cs").Where(p => !p.EndsWith("/Program.cs", StringComparison.Ordinal)).Where(path =>
        {
            string[] parts = path.Split('/');
            string project = parts[1] == "LeverDraw.Core" ? "LeverDraw" : parts[1];
            string expected = string.Join('.', [project, .. parts[2..^1]]);
            return !SourceFiles.Lines(path).Contains($"namespace {expected};");
        })];
        Assert.Empty(wrong);
    }

    private static IEnumerable<string> Used(string path) => SourceFiles.Lines(path)
        .Where(l => !l.StartsWith("namespace ", StringComparison.Ordinal))
        .SelectMany(l => Name().Matches(l)).Select(m => m.Groups[1].Value);

    // A using line, or a full name in the code.
    [GeneratedRegex(@"(?<![\w""./])LeverDraw\.([A-Z]\w*(?:\.[A-Z]\w*)*)")]
    private static partial Regex Name();
}
