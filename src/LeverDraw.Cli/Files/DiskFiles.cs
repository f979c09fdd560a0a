using LeverDraw.Profiles;

namespace LeverDraw.Cli.Files;

/// <summary>The real file system.</summary>
internal sealed class DiskFiles : IFileSystem
{
    public ProfileFile Open(string path)
    {
        try
        {
            if (Directory.Exists(path))
                return new ProfileFile.IsDirectory();
            using FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            // Devices have no length; so the size is only believed when the bytes were really there.
            byte[] bytes = new byte[ProfileFile.LargestBytes + 1];
            int count = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return count > ProfileFile.LargestBytes
                ? new ProfileFile.TooLarge(Math.Max(count, stream.CanSeek ? stream.Length : 0))
                : new ProfileFile.Found(bytes.AsMemory(0, count), Canonical(path));
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException or ArgumentException or NotSupportedException or PathTooLongException)
        {
            return new ProfileFile.Missing();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new ProfileFile.NotReadable();
        }
    }

    public string Canonical(string path) => RealPath.Of(path);

    public bool FileExists(string path) => File.Exists(path);

    public bool FolderExists(string path) => Directory.Exists(path);

    public IReadOnlyList<string> FilesUnder(string folder, string extension) => Directory.Exists(folder)
        ? [.. Directory.EnumerateFiles(folder, "*" + extension, SearchOption.AllDirectories).Select(f => f.Replace('\\', '/')).Order(StringComparer.Ordinal)]
        : [];

    public IReadOnlyList<string> MakeFolder(string path)
    {
        List<string> made = [];
        string full = Path.GetFullPath(path);
        for (string? at = full; at is not null && !Directory.Exists(at); at = Path.GetDirectoryName(at))
            made.Add(at);
        Directory.CreateDirectory(full);
        return made;
    }

    public void RemoveEmptyFolder(string path) => Directory.Delete(path, recursive: false);

    public void WriteNew(string path, ReadOnlySpan<byte> bytes)
    {
        FileStream stream = new(path, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        bool whole = false;
        try
        {
            stream.Write(bytes);
            stream.Flush(flushToDisk: true);
            whole = true;
        }
        finally
        {
            stream.Dispose();
            if (!whole)
                File.Delete(path);
        }
    }

    public void Copy(string from, string to) => File.Copy(from, to, overwrite: false);

    public void Replace(string from, string to) => File.Move(from, to, overwrite: true);

    public void Remove(string path) => File.Delete(path);
}
