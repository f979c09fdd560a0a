using System.Text.Json;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Tests.Profiles;

public class FieldListingsTests
{
    [Fact]
    public void Text_Table_HasARowForEachFieldInAlignedColumns()
    {
        string[] lines = FieldTable.Text(TestKind.Fields, LengthUnit.Millimetre).TrimEnd('\n').Split('\n');
        Assert.Equal(1 + TestKind.Fields.WithCommon.Length, lines.Length);
        string row = lines.Single(l => l.StartsWith("arms.thickness ", StringComparison.Ordinal));
        Assert.Contains("a size from 1 mm to 12 mm", row, StringComparison.Ordinal);
        Assert.Contains("required", row, StringComparison.Ordinal);
        int help = lines[0].IndexOf("what it is", StringComparison.Ordinal);
        Assert.Equal("Thickness of an arm.", row[help..]);
        Assert.Contains("only when arms.form is curved", lines.Single(l => l.StartsWith("arms.sagitta", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Fact]
    public void Text_InInches_RoundsTheRangeInwards() =>
        Assert.Contains("a size from 0.0394 in to 0.4724 in", FieldTable.Text(TestKind.Fields, LengthUnit.Inch), StringComparison.Ordinal);

    [Fact]
    public void Markdown_Table_IsExact() =>
        Assert.Equal(
            """
            | field | sign | value | default | what it is |
            |---|---|---|---|---|
            | `arms.width` | aw | a size from 1 mm to 25.4 mm | 5.2 mm | Width of an arm. |
            | `hole.taper` |  | a taper like 1:48, or parallel | parallel | Taper of the hole. |

            """,
            FieldTable.Markdown([TestKind.Width, TestKind.Taper], LengthUnit.Millimetre));

    [Fact]
    public void Json_Fields_CarryRangesAndConditions()
    {
        using JsonDocument json = JsonDocument.Parse(FieldsJson.For(TestKind.Fields));
        Dictionary<string, JsonElement> fields = json.RootElement.GetProperty("fields").EnumerateArray().ToDictionary(f => f.GetProperty("name").GetString()!);
        Assert.Equal(12, fields["arms.thickness"].GetProperty("maxMillimetres").GetDouble());
        Assert.True(fields["arms.thickness"].GetProperty("required").GetBoolean());
        Assert.Equal("arms.form", fields["arms.sagitta"].GetProperty("onlyWhen").GetProperty("field").GetString());
        Assert.Equal("date", fields["sheet.date"].GetProperty("type").GetString());
        Assert.Equal(TestKind.Fields.WithCommon.Length, fields.Count);
    }

    [Fact]
    public void Schema_HasEveryFieldAndIsTheSameEachTime()
    {
        string text = JsonSchema.For(TestKind.Fields);
        Assert.Equal(text, JsonSchema.For(TestKind.Fields));
        Assert.DoesNotContain('\r', text);
        using JsonDocument json = JsonDocument.Parse(text);
        JsonElement properties = json.RootElement.GetProperty("properties");
        foreach (FieldSpec field in TestKind.Fields.WithCommon)
        {
            JsonElement at = properties;
            string[] path = field.Name.Split('.');
            if (path.Length == 2)
                at = at.GetProperty(path[0]).GetProperty("properties");
            Assert.StartsWith(field.Help, at.GetProperty(path[^1]).GetProperty("description").GetString(), StringComparison.Ordinal);
        }
        Assert.Equal("test-lever", properties.GetProperty("kind").GetProperty("const").GetString());
    }

    // arms.width is 1 to 25.4 mm: in inches 0.039370 (rounded outwards from 0.0393701) to 1.
    [Theory]
    [InlineData(0, "mm", 1, 25.4)]
    [InlineData(1, "in", 0.03937, 1)]
    public void Schema_SizeRange_IsInTheFilesUnit(int branch, string unit, double least, double most)
    {
        using JsonDocument json = JsonDocument.Parse(JsonSchema.For(TestKind.Fields));
        JsonElement one = json.RootElement.GetProperty("allOf")[branch];
        Assert.Equal(unit, one.GetProperty("if").GetProperty("properties").GetProperty("units").GetProperty("const").GetString());
        JsonElement width = one.GetProperty("then").GetProperty("properties").GetProperty("arms").GetProperty("properties").GetProperty("width");
        foreach (JsonElement at in (JsonElement[])[width, width.GetProperty("properties").GetProperty("size")])
        {
            Assert.Equal(least, at.GetProperty("minimum").GetDouble());
            Assert.Equal(most, at.GetProperty("maximum").GetDouble());
        }
    }

    [Fact]
    public void Schema_Angle_HasItsRangeInDegrees()
    {
        using JsonDocument json = JsonDocument.Parse(JsonSchema.For(TestKind.Fields));
        JsonElement sweep = json.RootElement.GetProperty("properties").GetProperty("tongue").GetProperty("properties").GetProperty("sweep");
        Assert.Equal(0, sweep.GetProperty("minimum").GetDouble());
        Assert.Equal(80, sweep.GetProperty("maximum").GetDouble());
    }

    // The ends of every range are read as good numbers, so the schema must take them in either unit.
    [Theory]
    [InlineData("mm", "1")]
    [InlineData("mm", "12")]
    [InlineData("in", "0.039370078741")]
    [InlineData("in", "0.4724409448")]
    public void Schema_RangeEnds_TakeWhatTheReaderTakes(string unit, string thickness)
    {
        TestKind.ReadGood(TestKind.Good.Replace("\"mm\"", "\"" + unit + "\"", StringComparison.Ordinal).Replace("thickness = 3.6", "thickness = " + thickness, StringComparison.Ordinal));
        using JsonDocument json = JsonDocument.Parse(JsonSchema.For(TestKind.Fields));
        JsonElement range = json.RootElement.GetProperty("allOf")[unit == "mm" ? 0 : 1].GetProperty("then").GetProperty("properties").GetProperty("arms").GetProperty("properties").GetProperty("thickness");
        Assert.InRange(double.Parse(thickness, System.Globalization.CultureInfo.InvariantCulture), range.GetProperty("minimum").GetDouble(), range.GetProperty("maximum").GetDouble());
    }

    // The schema's idea of a length must take whatever the reader takes.
    [Theory]
    [InlineData("3.6")]
    [InlineData("3.6 mm")]
    [InlineData("1 3/16 in")]
    [InlineData("9/16\"")]
    [InlineData("9/16”")]
    [InlineData("9/16''")]
    [InlineData("1½ in.")]
    [InlineData("5.")]
    public void Schema_LengthPattern_TakesWhatTheReaderTakes(string written)
    {
        using JsonDocument json = JsonDocument.Parse(JsonSchema.For(TestKind.Fields));
        string pattern = json.RootElement.GetProperty("$defs").GetProperty("length").GetProperty("anyOf")[1].GetProperty("pattern").GetString()!;
        Assert.Matches(pattern, written);
        Assert.True(LengthText.Parse(written, LengthUnit.Inch).Ok);
    }

    [Fact]
    public void CommonFields_AreListedOnceAndNamedInOrder()
    {
        string[] names = [.. CommonFields.All.Select(f => f.Name)];
        Assert.Equal(names.Distinct(), names);
        Assert.All(CommonFields.NeverInherited, f => Assert.Contains(f, CommonFields.All));
    }
}
