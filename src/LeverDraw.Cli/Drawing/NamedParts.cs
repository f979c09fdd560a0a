using LeverDraw.Diagnostics;
using LeverDraw.Parts;
using LeverDraw.Pipeline;
using LeverDraw.Profiles;

namespace LeverDraw.Cli.Drawing;

/// <summary>The parts of the profiles named on the command line.</summary>
internal static class NamedParts
{
    /// <param name="told">What is found on the way is added here, of all of them.</param>
    /// <param name="adjusted">As for <see cref="DrawingRoad.Part"/>.</param>
    /// <returns>In the order of their paths; null when one has errors.</returns>
    public static IReadOnlyList<(string Path, BuiltPart Part)>? Read(DrawingRoad road, IReadOnlyList<string> paths, List<Diagnostic> told, Func<Profile, Profile>? adjusted = null)
    {
        List<(string Path, BuiltPart Part)> parts = [];
        foreach (string path in paths)
        {
            Checked<BuiltPart> part = road.Part(path, adjusted);
            told.AddRange(part.Diagnostics);
            if (part.Ok)
                parts.Add((path, part.Value));
        }

        return parts.Count == paths.Count ? parts : null;
    }
}
