using LeverDraw.Profiles;

namespace LeverDraw.Cli.Files;

/// <summary>The files a run may touch. Faults of writing are <see cref="IOException"/> or <see cref="UnauthorizedAccessException"/>, as the system gives them.</summary>
internal interface IFileSystem : IProfileSource
{
    /// <summary>The same for every path that leads to the same file, links followed; the file need not exist.</summary>
    string Canonical(string path);

    bool FileExists(string path);

    bool FolderExists(string path);

    /// <summary>The files with this ending in a folder and all below it, in order of name; none when there is no such folder.</summary>
    IReadOnlyList<string> FilesUnder(string folder, string extension);

    /// <summary>Makes the folder and those above it that are missing.</summary>
    /// <returns>The folders made, the deepest first.</returns>
    IReadOnlyList<string> MakeFolder(string path);

    void RemoveEmptyFolder(string path);

    /// <summary>Writes a file that must not exist yet, down to the disk; what fails halfway is taken away again.</summary>
    void WriteNew(string path, ReadOnlySpan<byte> bytes);

    /// <summary>Copies a file to a name that must not exist yet.</summary>
    void Copy(string from, string to);

    /// <summary>Puts a file in another's place in one step.</summary>
    void Replace(string from, string to);

    void Remove(string path);
}
