using System.Collections.Immutable;
using LeverDraw.Diagnostics;

namespace LeverDraw.Profiles;

/// <summary>One file of a chain: the document, and its faults so far.</summary>
internal sealed record ChainLink(string Path, ProfileDocument Document, FileFaults Faults);

/// <summary>A profile and, through <c>extends</c>, the ones it stands on, nearest first.</summary>
/// <param name="IsWhole">False when a file of the chain could not be read, so that a field may be missing only because of that.</param>
/// <param name="AllFaults">The faults of every file tried, in the order of the chain.</param>
internal sealed record ProfileChain(ImmutableArray<ChainLink> Links, ImmutableArray<FileFaults> AllFaults, bool IsWhole)
{
    public const int Longest = 16;

    public static ProfileChain Load(string path, IProfileSource source)
    {
        ImmutableArray<ChainLink>.Builder links = ImmutableArray.CreateBuilder<ChainLink>();
        ImmutableArray<FileFaults>.Builder all = ImmutableArray.CreateBuilder<FileFaults>();
        List<string> canonical = [];
        List<string> paths = [];
        FileFaults blamed = new(path);
        TextSpan? blamedAt = null;
        all.Add(blamed);
        while (true)
        {
            ProfileFile file = source.Open(path);
            paths.Add(path);
            if (file is not ProfileFile.Found found)
            {
                TellUnopened(file, path, blamed, blamedAt);
                return Result(isWhole: false);
            }
            if (canonical.IndexOf(found.CanonicalName) is >= 0 and var again)
            {
                blamed.Add(DiagnosticCatalogue.ExtendsCycle, blamedAt, CommonFields.Extends.Name, string.Join(" → ", paths.Skip(again)));
                return Result(isWhole: false);
            }
            if (canonical.Count == Longest)
            {
                blamed.Add(DiagnosticCatalogue.ExtendsTooLong, blamedAt, CommonFields.Extends.Name, Longest, string.Join(" → ", paths.Take(3)) + " → …");
                return Result(isWhole: false);
            }
            canonical.Add(found.CanonicalName);
            if (links.Count > 0 || all.Count > 1)
                all.Add(blamed = new FileFaults(path));
            else
                all[0] = blamed = new FileFaults(path);
            string? text = ProfileText.Decode(found.Bytes.Span, path, blamed);
            if (text is null || TomlReading.Read(blamed.Source!, blamed) is not { } document)
                return Result(isWhole: false);
            links.Add(new ChainLink(path, document, blamed));
            if (document.Find(CommonFields.Extends.Name) is not { } extends)
                return Result(isWhole: true);
            // A value of another type, or an empty one, is told when the fields are read.
            if (extends.Value is not RawText { Value: var relative } || string.IsNullOrWhiteSpace(relative) || relative.Length > CommonFields.Extends.MaxLength)
                return Result(isWhole: false);
            blamedAt = extends.Value.Span;
            if (!ProfilePath.IsRelative(relative))
            {
                blamed.Add(DiagnosticCatalogue.ExtendsNotRelative, blamedAt, CommonFields.Extends.Name, FieldReader.Shown(relative));
                return Result(isWhole: false);
            }
            path = ProfilePath.Beside(path, relative);
        }

        ProfileChain Result(bool isWhole) => new(links.ToImmutable(), all.ToImmutable(), isWhole);
    }

    private static void TellUnopened(ProfileFile file, string path, FileFaults blamed, TextSpan? at)
    {
        string? field = at is null ? null : CommonFields.Extends.Name;
        switch (file)
        {
            case ProfileFile.IsDirectory:
                blamed.Add(DiagnosticCatalogue.FileIsDirectory, at, field, path);
                break;
            case ProfileFile.TooLarge large:
                blamed.Add(DiagnosticCatalogue.FileTooLarge, at, field, path, large.Bytes, ProfileFile.LargestBytes);
                break;
            case ProfileFile.NotReadable:
                blamed.Add(DiagnosticCatalogue.FileNotReadable, at, field, path);
                break;
            default:
                blamed.Add(DiagnosticCatalogue.FileMissing, at, field, path);
                break;
        }
    }
}
