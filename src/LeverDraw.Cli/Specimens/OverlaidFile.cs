using LeverDraw.Cli.Files;
using LeverDraw.Profiles;

namespace LeverDraw.Cli.Specimens;

/// <summary>The disk with one file as it is about to be written, so that it can be checked first.</summary>
internal sealed class OverlaidFile(IFileSystem files, string path, byte[] bytes) : IProfileSource
{
    public ProfileFile Open(string asked) =>
        files.Canonical(asked) == files.Canonical(path) ? new ProfileFile.Found(bytes, files.Canonical(path)) : files.Open(asked);
}
