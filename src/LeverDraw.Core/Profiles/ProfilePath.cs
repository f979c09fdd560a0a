namespace LeverDraw.Profiles;

/// <summary>Paths that one profile names another by: relative to its own folder.</summary>
public static class ProfilePath
{
    public static bool IsRelative(string path) =>
        path.Length > 0 && path[0] is not ('/' or '\\' or '~') && !path.Contains(':', StringComparison.Ordinal) && !path.Any(char.IsControl);

    /// <summary>The path as a source understands it. By text alone: Core knows no file system, and '/' works on every one.</summary>
    public static string Beside(string file, string relative)
    {
        relative = relative.Replace('\\', '/');
        while (relative.StartsWith("./", StringComparison.Ordinal))
            relative = relative[2..];
        int slash = file.LastIndexOfAny(['/', '\\']);
        return slash < 0 ? relative : file[..(slash + 1)] + relative;
    }
}
