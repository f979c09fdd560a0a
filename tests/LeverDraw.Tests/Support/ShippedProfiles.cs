using LeverDraw.Diagnostics;
using LeverDraw.Parts;
using LeverDraw.Profiles;

namespace LeverDraw.Tests.Support;

/// <summary>The profiles under profiles/, read from the repository.</summary>
internal static class ShippedProfiles
{
    public static readonly string[] Names = ["early", "middle", "late", "smallest", "rare"];

    public static Checked<Profile> Read(string relative) => ProfileReader.Read(Root() + "/profiles/" + relative, new Files(), PartKinds.Fields);

    private static string Root()
    {
        DirectoryInfo? at = new(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "LeverDraw.sln")))
            at = at.Parent;
        return at?.FullName.Replace('\\', '/') ?? throw new InvalidOperationException("The tests run inside the repository.");
    }

    private sealed class Files : IProfileSource
    {
        public ProfileFile Open(string path) =>
            File.Exists(path) ? new ProfileFile.Found(File.ReadAllBytes(path), Path.GetFullPath(path)) : new ProfileFile.Missing();
    }
}
