using LeverDraw.Cli;
using LeverDraw.Tests.Architecture;
using LeverDraw.Tests.Cli;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Samples;

/// <summary>What the shipped profiles make, by the same command a user gives.</summary>
internal static class SampleSet
{
    public const string Folder = "out-samples";

    /// <summary>Half the usual resolution: the samples are kept in the repository, every version of them.</summary>
    public const string DotsPerInch = "100";

    /// <summary>With <c>LEVERDRAW_ACCEPT=1</c> the samples are written anew instead of compared.</summary>
    public static bool Accept => Environment.GetEnvironmentVariable("LEVERDRAW_ACCEPT") == "1";

    /// <summary>The profiles of parts, relative to the root.</summary>
    public static IReadOnlyList<string> Profiles { get; } =
        [.. SourceFiles.Under("profiles/levers", ".toml"), .. SourceFiles.Under("profiles/pins", ".toml")];

    /// <summary>The part itself of every profile; of one lever the foundry's sheets too.</summary>
    public static string SheetsOf(string profile) => profile.Split('/')[1] switch
    {
        "pins" => "pin",
        "setups" => "mechanism,travel",
        _ => profile.EndsWith("/middle.toml", StringComparison.Ordinal) ? "finished,casting,pattern" : "finished",
    };

    /// <summary>Those whose sheets are kept as samples.</summary>
    public static IReadOnlyList<string> Drawn { get; } = [.. Profiles, "profiles/setups/rattling.toml", "profiles/setups/rare.toml"];

    /// <summary>Every shipped profile, those that have no sheet of their own included.</summary>
    public static IReadOnlyList<string> All { get; } = [.. SourceFiles.Under("profiles", ".toml")];

    /// <summary>The two levers laid over each other.</summary>
    public static (string Name, string[] Command) Overlay { get; } = ("early-late.overlay.", ["compare", "profiles/levers/early.toml", "profiles/levers/late.toml"]);

    /// <summary>Draws a profile in memory.</summary>
    /// <returns>File names without folder, and contents.</returns>
    public static IReadOnlyDictionary<string, byte[]> Draw(string profile, params string[] options) => Run(["draw", profile, .. options]);

    /// <summary>Runs a command that draws.</summary>
    /// <returns>File names without folder, and contents.</returns>
    public static IReadOnlyDictionary<string, byte[]> Run(params string[] command)
    {
        MemoryFiles files = new();
        foreach (string path in All)
            files.With(path, File.ReadAllBytes(Path.Combine(RepositoryFile.Root, path)));
        CliRun run = CliRun.Of(files, [.. command, "--out", "drawn"]);
        Assert.True(run.Exit == ExitCode.Done, run.Error);
        return files.Names.Where(n => n.StartsWith("drawn/", StringComparison.Ordinal))
            .ToDictionary(n => n["drawn/".Length..], n => files[n], StringComparer.Ordinal);
    }
}
