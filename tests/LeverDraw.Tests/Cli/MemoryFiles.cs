using System.Text;
using LeverDraw.Cli.Files;
using LeverDraw.Profiles;

namespace LeverDraw.Tests.Cli;

/// <summary>Files in memory, which can refuse what a real disk refuses.</summary>
internal sealed class MemoryFiles : IFileSystem
{
    private readonly Dictionary<string, byte[]> files = new(StringComparer.Ordinal);
    private readonly HashSet<string> folders = new(StringComparer.Ordinal) { "" };

    /// <summary>Writing the n-th file fails, as on a full disk; 0 for never.</summary>
    public int FullAtFile { get; set; }

    public bool ReadOnly { get; set; }

    public int Written { get; private set; }

    public IEnumerable<string> Names => files.Keys.Order(StringComparer.Ordinal);

    public IEnumerable<string> Folders => folders.Where(f => f.Length > 0).Order(StringComparer.Ordinal);

    public byte[] this[string path] => files[Plain(path)];

    public MemoryFiles With(string path, string text) => With(path, Encoding.UTF8.GetBytes(text));

    public MemoryFiles With(string path, byte[] bytes)
    {
        files[Plain(path)] = bytes;
        for (string? at = Path.GetDirectoryName(path); !string.IsNullOrEmpty(at); at = Path.GetDirectoryName(at))
            folders.Add(at);
        return this;
    }

    public MemoryFiles WithFolder(string path)
    {
        folders.Add(path);
        return this;
    }

    public ProfileFile Open(string path)
    {
        if (FolderExists(path))
            return new ProfileFile.IsDirectory();
        if (!files.TryGetValue(Plain(path), out byte[]? bytes))
            return new ProfileFile.Missing();
        return bytes.Length > ProfileFile.LargestBytes ? new ProfileFile.TooLarge(bytes.Length) : new ProfileFile.Found(bytes, Canonical(path));
    }

    public string Canonical(string path) => Path.GetFullPath("/" + path);

    public bool FileExists(string path) => files.ContainsKey(Plain(path));

    public bool FolderExists(string path) => folders.Contains(Plain(path).TrimEnd('/'));

    public IReadOnlyList<string> FilesUnder(string folder, string extension) =>
        [.. files.Keys.Where(f => f.StartsWith(Plain(folder) + "/", StringComparison.Ordinal) && f.EndsWith(extension, StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    public IReadOnlyList<string> MakeFolder(string path)
    {
        Refuse();
        if (FolderExists(path))
            return [];
        folders.Add(Plain(path));
        return [path];
    }

    public void RemoveEmptyFolder(string path)
    {
        Assert.DoesNotContain(files.Keys, f => f.StartsWith(Plain(path) + "/", StringComparison.Ordinal));
        folders.Remove(Plain(path));
    }

    public void WriteNew(string path, ReadOnlySpan<byte> bytes)
    {
        Refuse();
        if (++Written == FullAtFile)
            throw new IOException("There is no space left.");
        Assert.False(FileExists(path));
        files[Plain(path)] = bytes.ToArray();
    }

    /// <summary>Putting the n-th file in its place fails, as when a reader holds it open; 0 for never.</summary>
    public int HeldAtFile { get; set; }

    /// <summary>After that failure nothing more can be put in place either.</summary>
    public bool HeldFromThenOn { get; set; }

    private int placed;

    public void Copy(string from, string to)
    {
        Refuse();
        Assert.False(FileExists(to));
        files[Plain(to)] = files[Plain(from)];
    }

    public void Replace(string from, string to)
    {
        placed++;
        if (placed == HeldAtFile || (HeldFromThenOn && HeldAtFile > 0 && placed > HeldAtFile))
            throw new IOException("The file is in use.");
        files[Plain(to)] = files[Plain(from)];
        files.Remove(Plain(from));
    }

    public void Remove(string path) => files.Remove(Plain(path));

    private void Refuse()
    {
        if (ReadOnly)
            throw new UnauthorizedAccessException("Access is denied.");
    }

    // "." and "./x" as the current folder, which here is the root.
    private static string Plain(string path) => Path.GetFullPath("/" + path)[1..];
}
