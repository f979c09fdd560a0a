using System.Text.Json;
using LeverDraw.Cli;
using LeverDraw.Diagnostics;
using LeverDraw.Parts;
using LeverDraw.Pipeline;

namespace LeverDraw.Tests.Cli;

public sealed class FieldsAndExplainTests
{
    private static readonly MemoryFiles NoFiles = new();

    public static TheoryData<string> Codes => [.. DiagnosticCatalogue.All.Select(k => k.Code)];

    public static TheoryData<string> Kinds => [.. ProfileKinds.All.Select(k => k.Name)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void Explain_EveryCode_SaysWhatToDo(string code)
    {
        CliRun run = CliRun.Of(NoFiles, "explain", code.ToLowerInvariant());
        Assert.Equal(ExitCode.Done, run.Exit);
        Assert.StartsWith(code, run.Out, StringComparison.Ordinal);
        Assert.Contains("What to do: ", run.Out, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(CliRun.Of(NoFiles, "explain", code, "--json").Out);
        Assert.Equal(code, json.RootElement.GetProperty("code").GetString());
    }

    [Theory]
    [InlineData("arms.thickness")]
    [InlineData("ARMS.Thickness")]
    [InlineData("ta")]
    public void Explain_FieldByNameOrSign_SaysRangeInBothUnits(string word)
    {
        CliRun run = CliRun.Of(NoFiles, "explain", word);
        Assert.Equal(ExitCode.Done, run.Exit);
        Assert.StartsWith("arms.thickness (ta)\n", run.Out, StringComparison.Ordinal);
        Assert.Matches(@"a size from \S+ mm to \S+ mm \(\S+ in to \S+ in\)", run.Out);
    }

    [Fact]
    public void Explain_KeyOfSeveralTables_TellsThemAll()
    {
        CliRun run = CliRun.Of(NoFiles, "explain", "thickness");
        foreach (string field in (string[])["arms.thickness", "pads.thickness", "tongue.thickness"])
            Assert.Contains(field, run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_CommonField_IsToldOnceForAllKinds()
    {
        CliRun run = CliRun.Of(NoFiles, "explain", "sheet.owner");
        Assert.Single(run.Out.Split('\n'), l => l == "sheet.owner");
        Assert.Contains("Part kinds: " + string.Join(", ", ProfileKinds.All.Select(k => k.Name)), run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Fields_EveryKind_ListsEveryField(string kind)
    {
        CliRun run = CliRun.Of(NoFiles, "fields", kind);
        string[] first = [.. run.Out.Split('\n').Select(l => l.Split(' ')[0])];
        Assert.All(ProfileKinds.All.Single(k => k.Name == kind).Fields.WithCommon, f => Assert.Contains(f.Name, first));
        using JsonDocument json = JsonDocument.Parse(CliRun.Of(NoFiles, "fields", kind, "--json").Out);
        Assert.Equal(kind, json.RootElement.GetProperty("kind").GetString());
        using JsonDocument schema = JsonDocument.Parse(CliRun.Of(NoFiles, "fields", kind, "--schema").Out);
        Assert.Equal("object", schema.RootElement.GetProperty("type").GetString());
    }

    [Fact]
    public void Fields_NoKindAsJson_IsAListOfAll()
    {
        using JsonDocument json = JsonDocument.Parse(CliRun.Of(NoFiles, "fields", "--json").Out);
        Assert.Equal(ProfileKinds.All.Length, json.RootElement.GetArrayLength());
    }
}
