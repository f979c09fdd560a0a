using System.Reflection;
using System.Text.RegularExpressions;
using LeverDraw.Diagnostics;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Diagnostics;

public class DiagnosticCatalogueTests
{
    public static TheoryData<string> Codes => [.. DiagnosticCatalogue.All.Select(k => k.Code)];

    [Fact]
    public void All_HoldsEveryDeclaredKind_InOrderOfCode()
    {
        HashSet<DiagnosticKind> declared = [.. typeof(DiagnosticCatalogue).GetProperties(BindingFlags.Public | BindingFlags.Static)
            .Where(p => p.PropertyType == typeof(DiagnosticKind)).Select(p => (DiagnosticKind)p.GetValue(null)!)];
        Assert.True(declared.SetEquals(DiagnosticCatalogue.All));
        string[] codes = [.. DiagnosticCatalogue.All.Select(k => k.Code)];
        Assert.Equal(codes.Distinct().Order(StringComparer.Ordinal), codes);
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void Kind_OfEveryCode_IsCompleteAndItsTextsUseAllArguments(string code)
    {
        DiagnosticKind kind = DiagnosticCatalogue.Find(code.ToLowerInvariant())!;
        Assert.Matches("^LD[1-7][0-9]{2}$", kind.Code);
        Assert.All(new[] { kind.Title, kind.Text, kind.Hint, kind.Example }, t => Assert.False(string.IsNullOrWhiteSpace(t)));
        int[] used = [.. Regex.Matches(kind.Text + kind.Hint, @"(?<!\{)\{(\d)\}(?!\})").Select(m => int.Parse(m.Groups[1].Value, null)).Distinct().Order()];
        Assert.Equal(Enumerable.Range(0, kind.ExampleArguments.Length), used);
        Assert.EndsWith(".", kind.ExampleHint, StringComparison.Ordinal);
    }

    [Fact]
    public void At_WrongNumberOfArguments_Throws() =>
        Assert.Throws<ArgumentException>(() => DiagnosticCatalogue.NotFinite.At(null, null));

    [Fact]
    public void At_StructArgument_ThrowsRatherThanPrintItsDump() =>
        Assert.Throws<ArgumentException>(() => DiagnosticCatalogue.NotFinite.At(null, null, LeverDraw.Units.Length.Zero));

    [Fact]
    public void At_Double_HasPointAndAtMostSixDecimals() =>
        Assert.Equal("'0.333333' is not a finite number.", DiagnosticCatalogue.NotFinite.At(null, null, 1.0 / 3).Message);

    [Fact]
    public void Find_UnknownCode_IsNull() => Assert.Null(DiagnosticCatalogue.Find("LD999"));

    [Fact]
    public void Page_InDocs_IsTheCatalogue() => RepositoryFile.MustEqual("docs/diagnostics.md", DiagnosticPage.Markdown());
}
