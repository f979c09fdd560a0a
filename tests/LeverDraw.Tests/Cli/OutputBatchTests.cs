using LeverDraw.Cli.Drawing;
using LeverDraw.Cli.Files;

namespace LeverDraw.Tests.Cli;

public sealed class OutputBatchTests
{
    private static readonly RenderedFile[] Four =
    [
        File("middle.finished.svg", 1), File("middle.finished.mm.dxf", 2), File("middle.finished.pdf", 3), File("middle.finished.png", 4),
    ];

    [Fact]
    public void Write_NewFolder_HoldsTheFilesAndNothingElse()
    {
        MemoryFiles files = new();
        Write(files, "drawings");
        Assert.Equal(Four.Select(f => f.Path).Order(StringComparer.Ordinal), files.Names);
        Assert.All(Four, f => Assert.Equal(f.Bytes, files[f.Path]));
    }

    [Fact]
    public void Write_OverEarlierOutput_RenewsIt()
    {
        MemoryFiles files = new MemoryFiles().With("drawings/middle.finished.svg", "old");
        Write(files, "drawings");
        Assert.Equal(Four[0].Bytes, files["drawings/middle.finished.svg"]);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(4)]
    public void Write_DiskFull_LeavesEverythingAsItWas(int at)
    {
        MemoryFiles files = new MemoryFiles { FullAtFile = at }.With("drawings/middle.finished.svg", "old");
        OutputException fault = Assert.Throws<OutputException>(() => Write(files, "drawings"));
        Assert.Contains("Nothing was written.", fault.Message, StringComparison.Ordinal);
        Assert.Equal(["drawings/middle.finished.svg"], files.Names);
        Assert.Equal("old"u8.ToArray(), files["drawings/middle.finished.svg"]);
    }

    [Fact]
    public void Write_DiskFullInNewFolder_TakesTheFolderAway()
    {
        MemoryFiles files = new() { FullAtFile = 3 };
        Assert.Throws<OutputException>(() => Write(files, "drawings"));
        Assert.Empty(files.Names);
        Assert.Empty(files.Folders);
    }

    /// <summary>A viewer holds the n-th file open: those renamed before it get their earlier contents back.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(4)]
    public void Write_RenameFails_EverythingIsPutBack(int at)
    {
        MemoryFiles files = new MemoryFiles { HeldAtFile = at }.With("drawings/middle.finished.svg", "old").With("drawings/middle.finished.pdf", "older");
        OutputException fault = Assert.Throws<OutputException>(() => Write(files, "drawings"));
        Assert.Contains("Nothing was written.", fault.Message, StringComparison.Ordinal);
        Assert.Equal(["drawings/middle.finished.pdf", "drawings/middle.finished.svg"], files.Names);
        Assert.Equal("old"u8.ToArray(), files["drawings/middle.finished.svg"]);
        Assert.Equal("older"u8.ToArray(), files["drawings/middle.finished.pdf"]);
    }

    [Fact]
    public void Write_RenameFailsInNewFolder_TakesTheFolderAway()
    {
        MemoryFiles files = new() { HeldAtFile = 3 };
        Assert.Throws<OutputException>(() => Write(files, "drawings"));
        Assert.Empty(files.Names);
        Assert.Empty(files.Folders);
    }

    /// <summary>Not even putting back works: what is new is named, and where its earlier contents are; no contents are lost.</summary>
    [Fact]
    public void Write_PuttingBackFails_NamesWhatIsNewAndKeepsTheEarlier()
    {
        MemoryFiles files = new MemoryFiles { HeldAtFile = 3, HeldFromThenOn = true }.With("drawings/middle.finished.svg", "old");
        string told = Assert.Throws<OutputException>(() => Write(files, "drawings")).Message;
        Assert.Contains("'drawings/middle.finished.svg' (its earlier contents are in 'drawings/.middle.finished.svg.1.earlier')", told, StringComparison.Ordinal);
        Assert.DoesNotContain("dxf", told, StringComparison.Ordinal);
        Assert.Equal(["drawings/.middle.finished.svg.1.earlier", "drawings/middle.finished.svg"], files.Names);
        Assert.Equal("old"u8.ToArray(), files["drawings/.middle.finished.svg.1.earlier"]);
        Assert.Equal(Four[0].Bytes, files["drawings/middle.finished.svg"]);
    }

    [Fact]
    public void Write_ReadOnlyFolder_Refused()
    {
        MemoryFiles files = new MemoryFiles { ReadOnly = true }.WithFolder("drawings");
        OutputException fault = Assert.Throws<OutputException>(() => Write(files, "drawings"));
        Assert.Contains("'drawings'", fault.Message, StringComparison.Ordinal);
        Assert.Empty(files.Names);
    }

    [Fact]
    public void Write_FolderIsAFile_Refused()
    {
        MemoryFiles files = new MemoryFiles().With("drawings", "a file");
        Assert.Contains("is a file, not a folder", Assert.Throws<OutputException>(() => Write(files, "drawings")).Message, StringComparison.Ordinal);
        Assert.Equal(["drawings"], files.Names);
    }

    [Fact]
    public void Write_OutputIsAFolder_Refused()
    {
        MemoryFiles files = new MemoryFiles().WithFolder("drawings").WithFolder("drawings/middle.finished.pdf");
        Assert.Throws<OutputException>(() => Write(files, "drawings"));
        Assert.Empty(files.Names);
    }

    [Fact]
    public void Write_UnfinishedFileOfAnotherRun_IsLeftAlone()
    {
        MemoryFiles files = new MemoryFiles().With("drawings/.middle.finished.svg.1.part", "another's");
        Write(files, "drawings");
        Assert.Equal("another's"u8.ToArray(), files["drawings/.middle.finished.svg.1.part"]);
        Assert.Equal(5, files.Names.Count());
    }

    [Fact]
    public void Write_Stopped_LeavesNothing()
    {
        MemoryFiles files = new();
        Assert.Throws<OperationCanceledException>(() => new OutputBatch(files, new CancellationToken(canceled: true)).Write("drawings", Four));
        Assert.Empty(files.Names);
        Assert.Empty(files.Folders);
    }

    private static void Write(MemoryFiles files, string folder) => new OutputBatch(files, default).Write(folder, Four);

    private static RenderedFile File(string name, byte content) => new("drawings/" + name, "middle.toml", "finished", "", [content, content]);
}
