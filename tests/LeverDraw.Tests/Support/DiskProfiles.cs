using LeverDraw.Mechanism.Setups;
using LeverDraw.Pipeline;
using LeverDraw.Profiles;

namespace LeverDraw.Tests.Support;

/// <summary>The repository's own files as a source of profiles.</summary>
internal sealed class DiskProfiles : IProfileSource
{
    public static Setup Setup(string name)
    {
        DiskProfiles source = new();
        var profile = new DrawingRoad(source, ProfileKinds.All).Read("profiles/setups/" + name + ".toml", SetupKind.Kind);
        return SetupReading.Build(profile.Value!, source).Value!;
    }

    public ProfileFile Open(string path)
    {
        string full = Path.GetFullPath(Path.Combine(RepositoryFile.Root, path));
        return File.Exists(full) ? new ProfileFile.Found(File.ReadAllBytes(full), full) : new ProfileFile.Missing();
    }
}
