namespace LeverDraw.Cli.Files;

/// <summary>A path with every link on the way followed, so that two names of one file compare equal.</summary>
internal static class RealPath
{
    private const int MostLinks = 40;

    public static string Of(string path)
    {
        string full = Path.GetFullPath(path);
        string root = Path.GetPathRoot(full) ?? "";
        string so = root;
        foreach (string part in full[root.Length..].Split([Path.DirectorySeparatorChar, Path.AltDirectorySeparatorChar], StringSplitOptions.RemoveEmptyEntries))
            so = Follow(Path.Combine(so, part));
        return so;
    }

    private static string Follow(string path)
    {
        for (int link = 0; link < MostLinks; link++)
        {
            FileSystemInfo? target;
            try
            {
                target = new FileInfo(path).LinkTarget is null ? null : File.ResolveLinkTarget(path, returnFinalTarget: false);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                return path;
            }

            if (target is null)
                return path;
            path = target.FullName;
        }

        return path;
    }
}
