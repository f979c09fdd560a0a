using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Architecture;

/// <summary>The repository's own text files, without what builds leave behind.</summary>
internal static class SourceFiles
{
    private static readonly string[] Made = ["bin", "obj", "node_modules", "TestResults", ".git", "BenchmarkDotNet.Artifacts"];

    /// <param name="folder">Relative to the root, with '/'.</param>
    /// <returns>Paths relative to the root, with '/', in order.</returns>
    public static IReadOnlyList<string> Under(string folder, params string[] extensions) =>
        [.. Walk(new DirectoryInfo(Path.Combine(RepositoryFile.Root, folder)))
            .Where(f => extensions.Length == 0 || extensions.Contains(f.Extension, StringComparer.Ordinal))
            .Select(f => Path.GetRelativePath(RepositoryFile.Root, f.FullName).Replace('\\', '/'))
            .Order(StringComparer.Ordinal)];

    public static string[] Lines(string path) => RepositoryFile.Read(path).Split('\n');

    private static IEnumerable<FileInfo> Walk(DirectoryInfo folder) =>
        folder.EnumerateFiles().Concat(folder.EnumerateDirectories().Where(d => !Made.Contains(d.Name)).SelectMany(Walk));
}
