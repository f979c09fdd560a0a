using LeverDraw.Cli;
using LeverDraw.Tests.Samples;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Cli;

/// <summary>The real process on a real disk.</summary>
public sealed class ProcessTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("leverdraw-tests-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Draw_InAnotherTimeZoneAndLanguage_GivesTheBytesOfTheTest()
    {
        const string Profile = "profiles/pins/middle.toml";
        IReadOnlyDictionary<string, byte[]> expected = SampleSet.Draw(Profile);
        (int exit, string output, string error) = CliProcess.Run(
            RepositoryFile.Root, [("TZ", "Pacific/Apia"), ("LANG", "ar_SA.UTF-8"), ("LC_ALL", "ar_SA.UTF-8")], "draw", Profile, "--out", folder);
        Assert.True(exit == ExitCode.Done, error);
        Assert.Equal(expected.Keys.Order(StringComparer.Ordinal), Directory.GetFiles(folder).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));
        Assert.All(expected, file => Assert.True(file.Value.AsSpan().SequenceEqual(File.ReadAllBytes(Path.Combine(folder, file.Key))), file.Key));
        Assert.Equal(expected.Count, output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Fact]
    public void Draw_FaultyProfile_LeavesNothingBehind()
    {
        File.WriteAllText(Path.Combine(folder, "x.toml"), "kind = \"lever\"\n");
        (int exit, _, string error) = CliProcess.Run(folder, [], "draw", "x.toml", "--out", "new/drawings");
        Assert.Equal(ExitCode.InputFaults, exit);
        Assert.Contains("LD204", error, StringComparison.Ordinal);
        Assert.DoesNotContain('\e', error);
        Assert.Equal(["x.toml"], Directory.GetFileSystemEntries(folder).Select(f => Path.GetFileName(f)));
    }

    [Fact]
    public void Draw_LinkFromOutputToProfile_Refused()
    {
        if (OperatingSystem.IsWindows())
            return;
        string text = RepositoryFile.Read("profiles/pins/early.toml");
        File.WriteAllText(Path.Combine(folder, "early.toml"), text);
        Directory.CreateSymbolicLink(Path.Combine(folder, "out"), folder);
        File.CreateSymbolicLink(Path.Combine(folder, "early.pin.svg"), Path.Combine(folder, "early.toml"));
        (int exit, _, string error) = CliProcess.Run(folder, [], "draw", "early.toml", "--out", "out");
        Assert.Equal(ExitCode.WrongUsage, exit);
        Assert.Contains("would overwrite a profile", error, StringComparison.Ordinal);
        Assert.Equal(text, File.ReadAllText(Path.Combine(folder, "early.toml")));
    }

    [Fact]
    public void Draw_IntoFolderWithoutWritePermission_TellsAndExitsWith2()
    {
        string locked = Path.Combine(folder, "locked");
        Directory.CreateDirectory(locked);
        // A folder where a file's unfinished name should go stops even a user who may write everywhere.
        string profile = Path.Combine(RepositoryFile.Root, "profiles/pins/early.toml");
        if (!OperatingSystem.IsWindows() && Environment.UserName != "root")
            File.SetUnixFileMode(locked, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        else
            Directory.CreateDirectory(Path.Combine(locked, ".early.pin.svg.1.part"));
        string[] before = Directory.GetFileSystemEntries(locked);
        (int exit, string output, string error) = CliProcess.Run(folder, [], "draw", profile, "--out", "locked");
        Assert.Equal(ExitCode.WrongUsage, exit);
        Assert.Contains("'locked'", error, StringComparison.Ordinal);
        Assert.Empty(output);
        Assert.Equal(before, Directory.GetFileSystemEntries(locked));
    }
}
