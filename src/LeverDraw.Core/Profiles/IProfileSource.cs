namespace LeverDraw.Profiles;

/// <summary>Where profiles come from. Hosts implement it, since Core touches no files; a path is as the user or an <c>extends</c> gave it, with '/'.</summary>
public interface IProfileSource
{
    ProfileFile Open(string path);
}

/// <summary>What opening a profile gave; one of the nested records.</summary>
public abstract record ProfileFile
{
    /// <summary>No file is read beyond this many bytes; a real profile has a few thousand.</summary>
    public const int LargestBytes = 1024 * 1024;

    private ProfileFile()
    {
    }

    /// <param name="CanonicalName">The same for every path that leads to this file.</param>
    public sealed record Found(ReadOnlyMemory<byte> Bytes, string CanonicalName) : ProfileFile;

    public sealed record Missing : ProfileFile;

    public sealed record IsDirectory : ProfileFile;

    /// <param name="Bytes">The file's size, more than <see cref="LargestBytes"/>.</param>
    public sealed record TooLarge(long Bytes) : ProfileFile;

    public sealed record NotReadable : ProfileFile;
}
