using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts;
using LeverDraw.Pipeline;
using LeverDraw.Profiles;
using LeverDraw.Tests.Cli;
using LeverDraw.Tests.Samples;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Pipeline;

public sealed class DrawingRoadTests
{
    public static TheoryData<string> Profiles => [.. SampleSet.Profiles];

    [Theory]
    [MemberData(nameof(Profiles))]
    public void Part_ShippedProfile_HasTheSheetsOfItsKindAndNoFinding(string path)
    {
        Checked<BuiltPart> part = Road().Part(path);
        Assert.Empty(part.Diagnostics);
        Assert.Equal(part.Value!.Kind.SheetNames, part.Value.Sheets.Select(s => s.Name));
        Assert.Equal(path.Contains("/pins/", StringComparison.Ordinal) ? "pin" : "lever", part.Value.Kind.Name);
    }

    [Fact]
    public void Sheet_OfALever_SaysItsState()
    {
        BuiltSheet finished = Road().Part("profiles/levers/late.toml").Value!.Find("Finished")!;
        Checked<PlotSheet> plot = DrawingRoad.Sheet(finished, new SheetOptions(Units: ShownUnits.InchesAndMillimetres));
        Assert.Equal(PartState.Finished, plot.Value!.State);
        Assert.Equal(SheetUnit.Inch, plot.Value.Unit);
    }

    [Fact]
    public void Part_WarningOfAnEarlyStage_IsKeptToTheEnd()
    {
        Diagnostic told = DiagnosticCatalogue.All.First(k => k.Severity == Severity.Warning) is { } kind
            ? kind.At(null, null, [.. kind.ExampleArguments]) : throw new InvalidOperationException();
        PartKind warned = PartKind.Of(
            PartKinds.Pin.Fields, _ => Checked<string>.Good("part", [told]), new PartSheet<string>("pin", PartState.Pin, (_, _, _) => throw new InvalidOperationException()));
        Assert.Equal(told, Assert.Single(new DrawingRoad(Shipped(), [warned]).Part("profiles/pins/early.toml").Diagnostics));
    }

    [Fact]
    public void Build_ProfileOfAnotherKind_Throws()
    {
        Profile pin = Road().Part("profiles/pins/early.toml").Value!.Profile;
        Assert.Throws<ArgumentException>(() => PartKinds.Lever.Build(pin));
    }

    [Fact]
    public void Kinds_AndTheirSheets_HaveNamesOfTheirOwn()
    {
        Assert.Distinct(ProfileKinds.All.Select(k => k.Name));
        Assert.All(ProfileKinds.All, k => Assert.Distinct(k.SheetNames));
        Assert.All(ProfileKinds.All.Where(k => k != PartKinds.Plane), k => Assert.NotEmpty(k.SheetNames));
    }

    private static DrawingRoad Road() => new(Shipped(), ProfileKinds.All);

    private static MemoryFiles Shipped()
    {
        MemoryFiles files = new();
        foreach (string path in SampleSet.Profiles)
            files.With(path, RepositoryFile.Read(path));
        return files;
    }
}
