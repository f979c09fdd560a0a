using System.Text;
using CsCheck;
using LeverDraw.Diagnostics;
using LeverDraw.Parts;
using LeverDraw.Pipeline;
using LeverDraw.Tests.Cli;
using LeverDraw.Tests.Samples;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Pipeline;

/// <summary>The real kinds from spoilt profiles: whatever stands in them, there is a part or a list of faults.</summary>
public sealed class DrawingRoadProperties
{
    private static readonly (string Path, string Text)[] Profiles = [.. SampleSet.Profiles.Select(p => (p, RepositoryFile.Read(p)))];

    private static readonly string[] Scraps =
        ["", "0", "-1", "1e9", "0.001", "999", "nan", "inf", "\"", "[", "]", "{ }", "{ size = 3, fit = \"H7\" }", "{ min = 1, max = 2 }", "=", "\n", "#", "true", "\"curved\"", "\"round\"", "\"bulb\"", "\"1:1\"", "\"parallel\"", "[arms]\n", "kind = \"pin\"\n", "units = \"in\"\n"];

    [Fact]
    public void Part_SpoiltProfile_IsBuiltOrTold() =>
        Gen.Select(Gen.Int[0, Profiles.Length - 1], Gen.Select(Gen.Double[0, 1], Gen.Int[0, 10], Gen.Int[0, Scraps.Length - 1], Gen.Bool).Array[1, 5]).Sample((which, edits) =>
        {
            MemoryFiles files = new();
            foreach ((string path, string text) in Profiles)
                files.With(path, text);
            string spoilt = Profiles[which].Text;
            foreach ((double where, int cut, int put, bool value) in edits)
            {
                int at = (int)(where * spoilt.Length);
                // Half the time a whole value is changed, so that more than the reader is tried.
                int start = value ? spoilt.IndexOf('=', at) + 1 : at;
                int end = value ? spoilt.IndexOf('\n', start) : Math.Min(spoilt.Length, at + cut);
                if (end > start)
                    spoilt = spoilt[..start] + (value ? " " : "") + Scraps[put] + spoilt[end..];
            }

            files.With(Profiles[which].Path, Encoding.UTF8.GetBytes(spoilt));
            Checked<BuiltPart> part = new DrawingRoad(files, PartKinds.All).Part(Profiles[which].Path);
            Assert.True(part.Ok || part.Diagnostics.Any(d => d.Severity == Severity.Error));
        }, iter: 1_500);
}
