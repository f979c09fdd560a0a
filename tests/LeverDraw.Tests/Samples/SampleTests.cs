using System.Text;
using LeverDraw.Tests.Architecture;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Samples;

/// <summary>out-samples/ is what the shipped profiles make, byte for byte; pictures by their dots.</summary>
public sealed class SampleTests
{
    public static TheoryData<string> Profiles => [.. SampleSet.Drawn];

    [Theory]
    [MemberData(nameof(Profiles))]
    public void Draw_ShippedProfile_MakesTheShippedSample(string profile) =>
        MustBeTheSamples(SampleSet.Draw(profile, "--sheet", SampleSet.SheetsOf(profile), "--dpi", SampleSet.DotsPerInch));

    [Fact]
    public void Compare_EarlyAndLate_MakesTheShippedSample() =>
        MustBeTheSamples(SampleSet.Run([.. SampleSet.Overlay.Command, "--dpi", SampleSet.DotsPerInch]));

    [Fact]
    public void Samples_AllComeFromAShippedProfile()
    {
        string[] known = [.. SampleSet.Drawn.SelectMany(p => SampleSet.SheetsOf(p).Split(',').Select(s => Path.GetFileNameWithoutExtension(p) + "." + s + ".")), SampleSet.Overlay.Name];
        Assert.DoesNotContain(SourceFiles.Under(SampleSet.Folder), s => !known.Any(k => Path.GetFileName(s).StartsWith(k, StringComparison.Ordinal)));
    }

    private static void MustBeTheSamples(IReadOnlyDictionary<string, byte[]> drawn)
    {
        foreach ((string name, byte[] made) in drawn)
        {
            string path = Path.Combine(RepositoryFile.Root, SampleSet.Folder, name);
            if (SampleSet.Accept)
                File.WriteAllBytes(path, made);
            Assert.True(File.Exists(path), name + " is not among the samples.");
            byte[] shipped = File.ReadAllBytes(path);
            if (name.EndsWith(".png", StringComparison.Ordinal))
                Picture.MustLookTheSame(name, shipped, made);
            else
                MustEqual(name, shipped, made);
        }
    }

    private static void MustEqual(string name, byte[] shipped, byte[] made)
    {
        if (shipped.AsSpan().SequenceEqual(made))
            return;
        string[] old = Encoding.Latin1.GetString(shipped).Split('\n');
        string[] now = Encoding.Latin1.GetString(made).Split('\n');
        int line = Enumerable.Range(0, Math.Max(old.Length, now.Length)).First(i => i >= old.Length || i >= now.Length || old[i] != now[i]);
        Assert.Fail(FormattableString.Invariant($"{name} differs from its sample at line {line + 1}.\nsample: {LineOf(old, line)}\nmade:   {LineOf(now, line)}\nIf that is meant, run the tests with LEVERDRAW_ACCEPT=1 and say in the commit why."));
    }

    private static string LineOf(string[] lines, int line) =>
        line >= lines.Length ? "(ended)" : lines[line].Length <= 200 ? lines[line] : lines[line][..200] + "…";
}
