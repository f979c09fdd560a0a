using System.Collections.Immutable;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts;
using LeverDraw.Pipeline;
using LeverDraw.Profiles;

namespace LeverDraw.Benchmarks;

/// <summary>The shipped profiles, held in memory: nothing is read from disk while time is taken.</summary>
internal sealed class Inputs : IProfileSource
{
    private readonly Dictionary<string, byte[]> _files = [];

    public static ImmutableArray<string> Names { get; } =
        [.. new[] { "levers", "pins" }.SelectMany(kind => new[] { "early", "middle", "late", "smallest", "rare" }.Select(era => kind + "/" + era))];

    public static Inputs Load()
    {
        var inputs = new Inputs();
        string root = Root();
        foreach (string path in Directory.EnumerateFiles(Path.Combine(root, "profiles"), "*.toml", SearchOption.AllDirectories))
            inputs._files.Add(Path.GetRelativePath(Path.Combine(root, "profiles"), path).Replace('\\', '/'), File.ReadAllBytes(path));
        return inputs;
    }

    public ProfileFile Open(string path) =>
        _files.TryGetValue(path, out byte[]? bytes) ? new ProfileFile.Found(bytes, path) : new ProfileFile.Missing();

    public BuiltPart Part(string name) => new DrawingRoad(this, PartKinds.All).Part(name + ".toml").Value!;

    public PlotSheet Sheet(string name, SheetOptions options) => DrawingRoad.Sheet(Part(name).Sheets[0], options).Value!;

    private static string Root()
    {
        DirectoryInfo? at = new(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "LeverDraw.sln")))
            at = at.Parent;
        return at?.FullName ?? throw new InvalidOperationException("The benchmarks run inside the repository.");
    }
}
