using System.Collections.Immutable;
using LeverDraw.Parts;
using LeverDraw.Profiles;
using LeverDraw.Specimens.Identification;
using LeverDraw.Specimens.Readings;
using LeverDraw.Tests.Cli;
using LeverDraw.Tests.Samples;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Specimens.Identification;

public sealed class IdentifyTests
{
    private static readonly ImmutableArray<Variant> Shipped = Load();

    [Fact]
    public void Run_ShippedReadings_AreMiddleLeversAndTheDonorIsTold()
    {
        LeverDraw.Specimens.Identification.Identification found = Of(RepositoryFile.Read("profiles/readings/survivors.csv"));
        Assert.All(found.Parts.Where(p => p.Part == "lever"), p => Assert.Equal((Verdict.Identified, "Adjusting lever, middle"), (p.Verdict, p.Best.Name)));
        Assert.Equal(["Pivot pin, middle", "Pivot pin, middle", "Pivot pin, early heavy"], found.Parts.Where(p => p.Part == "pin").Select(p => p.Best.Name));
        MixedParts mixed = Assert.Single(found.Mixed);
        Assert.Equal(("C", true), (mixed.Specimen, mixed.HoleFitsPin));
    }

    /// <summary>A thinner pad is no evidence against the thicker variant; a thicker one is.</summary>
    [Fact]
    public void Run_PadAlone_IsOneSided()
    {
        double early = Share("A,pads.thickness,2.75 mm", "Adjusting lever, early heavy");
        Assert.True(early > 0.02);
        Assert.True(Share("A,pads.thickness,3.30 mm", "Adjusting lever, late light") < 0.02 * Share("A,pads.thickness,3.30 mm", "Adjusting lever, early heavy"));
    }

    [Fact]
    public void Run_LittleRead_CannotTellAndSaysWhatWould()
    {
        PartFinding found = Assert.Single(Of("specimen,field,value\nA,fork.gap,14.02 mm\n").Parts);
        Assert.Equal(Verdict.CannotTell, found.Verdict);
        Assert.True(found.Further[0].Bits > 1);
        // Arms and head differ most between the eras with this gap, and hardly wear (trade notes).
        Assert.True(new[] { "arms.thickness", "head.depth" }.All(n => found.Further.Single(f => f.Measurand.Name == n).Bits > 0.8));
        Assert.All(found.Further, f => Assert.InRange(f.Bits, 0, Math.Log2(Shipped.Length)));
    }

    [Fact]
    public void Run_NothingLikeIt_IsUnknown()
    {
        PartFinding found = Assert.Single(Of("specimen,field,value\nA,arms.thickness,6.2 mm\nA,head.depth,12.5 mm\nA,head.width,13.2 mm\nA,fork.gap,20 mm\nA,tongue.width,10 mm\n").Parts);
        Assert.Equal((Verdict.Unknown, (Variant?)null), (found.Verdict, found.Candidates[0].Variant));
    }

    [Fact]
    public void Run_HoleDrilledOut_DoesNotOutvoteTheRest()
    {
        PartFinding found = Assert.Single(Of("specimen,field,value,instrument\nA,arms.thickness,2.98 mm,caliper\nA,head.depth,7.25 mm,caliper\nA,arms.width,5.02 mm,caliper\nA,hole.diameter,3.43 mm,pin-gauge\n").Parts);
        Assert.Equal("Adjusting lever, late light", found.Best.Name);
        StrangeFeature hole = Assert.Single(found.Strange);
        Assert.Equal(("hole", "Adjusting lever, early heavy"), (hole.Feature, hole.Fits?.Name));
    }

    [Fact]
    public void Run_NoVariants_IsTold() =>
        Assert.Equal(["LD719"], Identify.Run(Read("specimen,field,value\nA,arms.thickness,3 mm\n"), [], "here").Diagnostics.Select(d => d.Code));

    /// <summary>With two variants as likely as each other and sizes far apart, a reading takes the whole doubt away: one bit.</summary>
    [Fact]
    public void Best_TwoFarApart_IsOneBit()
    {
        Variant[] two = [.. Shipped.Where(v => v.Name is "Adjusting lever, early heavy" or "Adjusting lever, smallest size")];
        FurtherReading further = Assert.Single(NextReading.Best([.. two.Select(v => new Candidate(v, 0.5))], [LeverDraw.Specimens.Measuring.Measurands.Find("head.depth")!]));
        Assert.Equal(1, further.Bits, 1e-3);
    }

    private static double Share(string row, string name) =>
        Of("specimen,field,value\n" + row + "\n").Parts[0].Candidates.Single(c => c.Variant?.Name == name).Share;

    private static LeverDraw.Specimens.Identification.Identification Of(string csv) => Identify.Run(Read(csv), Shipped, "profiles").Value!;

    private static ReadingSet Read(string csv) => ReadingsFile.Read("r.csv", new MemoryFiles().With("r.csv", csv)).Value!;

    private static ImmutableArray<Variant> Load()
    {
        MemoryFiles files = new();
        foreach (string path in SampleSet.Profiles)
            files.With(path, RepositoryFile.Read(path));
        return [.. SampleSet.Profiles.Select(p => Variant.Of(ProfileReader.Read(p, files, PartKinds.Fields).Value!)!)];
    }
}
