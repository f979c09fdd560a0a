using System.Text;
using LeverDraw.Diagnostics;
using LeverDraw.Profiles;

namespace LeverDraw.Tests.Profiles;

/// <summary>A roughness is micrometres whatever the file's unit of length.</summary>
public class RoughnessFieldTests
{
    private static readonly RoughnessField Wall = new("hole.wall", "Ra", "Roughness of the wall.", 25, 1.6);

    private static readonly PartFields Kind = new("rough-part", [Wall]);

    [Theory]
    [InlineData("mm", "3.2", 0.0032)]
    [InlineData("in", "3.2", 0.0032)]
    [InlineData("mm", "0", 0)]
    [InlineData("mm", "25", 0.025)]
    [InlineData("in", null, 0.0016)]
    public void Read_Number_IsMicrometresInAnyUnits(string units, string? number, double millimetres) =>
        Assert.Equal(millimetres, Read(units, number).Value!.Values.Get(Wall).Millimetres, 12);

    [Theory]
    [InlineData("-0.1", "LD212")]
    [InlineData("25.1", "LD212")]
    [InlineData("inf", "LD213")]
    [InlineData("\"1.6\"", "LD207")]
    [InlineData("true", "LD207")]
    public void Read_Unsound_IsAFaultOfTheField(string value, string code)
    {
        Checked<Profile> read = Read("mm", value);
        Diagnostic fault = Assert.Single(read.Diagnostics);
        Assert.Equal((code, Wall.Name), (fault.Code, fault.Field));
    }

    [Fact]
    public void Words_Listings_GiveRangeAndDefaultInMicrometres()
    {
        FieldPage page = FieldPage.Of(Wall);
        Assert.Equal(("a roughness Ra from 0 to 25 µm", "1.6 µm"), (page.Allowed, page.Default));
        string json = FieldsJson.For(Kind);
        Assert.Contains("\"type\": \"roughness\"", json, StringComparison.Ordinal);
        Assert.Contains("\"maxMicrometres\": 25", json, StringComparison.Ordinal);
        Assert.Contains("\"maximum\": 25", JsonSchema.For(Kind), StringComparison.Ordinal);
    }

    private static Checked<Profile> Read(string units, string? number) =>
        ProfileReader.Read("a.toml", new TestKind.MemorySource(new() { ["a.toml"] = Encoding.UTF8.GetBytes("kind = \"rough-part\"\nname = \"Rough\"\nunits = \"" + units + "\"\n[material]\nname = \"Brass\"\n" + (number is null ? "" : "[hole]\nwall = " + number + "\n")) }), [Kind]);
}
