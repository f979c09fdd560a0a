using System.Collections.Immutable;
using LeverDraw.Cli.Files;
using LeverDraw.Diagnostics;
using LeverDraw.Parts;
using LeverDraw.Profiles;
using LeverDraw.Specimens.Identification;

namespace LeverDraw.Cli.Specimens;

/// <summary>The variants that survivors are compared with: every sound profile in the folders and files named.</summary>
internal static class VariantFiles
{
    private const string Extension = ".toml";

    /// <param name="except">Readings may lie among the profiles; they are none.</param>
    /// <param name="told">Faults of files that were named one by one; others in a folder are passed over.</param>
    public static ImmutableArray<Variant> Find(IEnumerable<string> places, IFileSystem files, string except, List<Diagnostic> told)
    {
        var found = ImmutableArray.CreateBuilder<Variant>();
        HashSet<string> seen = new(StringComparer.Ordinal) { files.Canonical(except) };
        foreach (string place in places)
        {
            bool folder = files.FolderExists(place);
            foreach (string path in folder ? files.FilesUnder(place, Extension) : [place])
            {
                if (!seen.Add(files.Canonical(path)))
                    continue;
                Checked<Profile> profile = ProfileReader.Read(path, files, PartKinds.Fields);
                if (profile.Ok && Variant.Of(profile.Value) is { } variant)
                    found.Add(variant);
                else if (!folder)
                    told.AddRange(profile.Diagnostics);
            }
        }

        return found.ToImmutable();
    }
}
