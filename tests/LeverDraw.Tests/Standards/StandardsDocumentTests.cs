using LeverDraw.Standards;

namespace LeverDraw.Tests.Standards;

public sealed class StandardsDocumentTests
{
    /// <summary>Set LEVERDRAW_ACCEPT=1 to rewrite the page after a table changed.</summary>
    [Fact]
    public void StandardsPage_InDocs_EqualsTheTables()
    {
        string path = Path.Combine(Root(), "docs", "standards.md");
        if (string.Equals(Environment.GetEnvironmentVariable("LEVERDRAW_ACCEPT"), "1", StringComparison.Ordinal))
            File.WriteAllText(path, StandardsDocument.Write());
        Assert.Equal(StandardsDocument.Write(), File.ReadAllText(path).ReplaceLineEndings("\n"));
    }

    [Fact]
    public void StandardTables_EveryTableInTheFolder_IsListedOnce()
    {
        string folder = Path.Combine(Root(), "src", "LeverDraw.Core", "Standards");
        int declared = Directory.GetFiles(folder, "*.cs").Sum(file =>
            File.ReadAllText(file).Split("public static StandardSource Source").Length - 1);
        Assert.Equal(declared, StandardTables.All.Length);
        Assert.Equal(declared, StandardTables.All.Select(source => source.Subject).Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void StandardTables_EveryRow_SaysWhatWasCompared() =>
        Assert.All(StandardTables.All, source =>
        {
            Assert.NotEmpty(source.Document);
            Assert.NotEmpty(source.Note);
            Assert.DoesNotContain('|', source.Note + source.Subject + source.Name + source.Table);
        });

    private static string Root()
    {
        DirectoryInfo? at = new(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "LeverDraw.sln")))
            at = at.Parent;
        return at?.FullName ?? throw new InvalidOperationException("The repository root is not above the test binaries.");
    }
}
