namespace LeverDraw.Tests.Support;

/// <summary>Files of the repository, for tests that compare a page with what it is made from.</summary>
internal static class RepositoryFile
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = FindRoot();

    public static string Read(string relative) =>
        File.ReadAllText(Path.Combine(Root, relative)).Replace("\r\n", "\n", StringComparison.Ordinal);

    /// <summary>Compares; with LEVERDRAW_ACCEPT=1 writes the file anew instead.</summary>
    public static void MustEqual(string relative, string expected)
    {
        if (Environment.GetEnvironmentVariable("LEVERDRAW_ACCEPT") == "1")
            File.WriteAllText(Path.Combine(Root, relative), expected);
        Assert.Equal(expected, Read(relative));
    }

    private static string FindRoot()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
            if (File.Exists(Path.Combine(at.FullName, "LeverDraw.sln")))
                return at.FullName;
        throw new InvalidOperationException("The tests must run from inside the repository.");
    }
}
