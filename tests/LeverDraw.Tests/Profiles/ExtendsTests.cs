using LeverDraw.Diagnostics;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Tests.Profiles;

public class ExtendsTests
{
    private const string Child = "name = \"Late\"\nextends = \"base.toml\"\n";

    private static Checked<Profile> Read(string child, string parent) => TestKind.Read(("a.toml", child), ("base.toml", parent));

    [Fact]
    public void Read_Child_TakesAndOverrides()
    {
        Checked<Profile> result = Read(Child + "[arms]\nthickness = 3.0\n", TestKind.Good + "width = 6\n[sheet]\nnumber = \"1\"\nowner = \"Thessaby & Crake\"\n");
        Profile profile = result.Value!;
        Assert.Equal(("Late", "test-lever"), (profile.Name, profile.Kind));
        Assert.Equal(3.0, profile.Values.Get(TestKind.Thickness).Millimetres);
        Assert.Equal(6.0, profile.Values.Get(TestKind.Width).Millimetres);
        Assert.Equal("base.toml", profile.Values.PositionOf(TestKind.Width).File);
        Assert.Equal("Thessaby & Crake", profile.Values.Get(CommonFields.Owner));
        Assert.Equal(["a.toml", "base.toml"], profile.Files.ToArray());
    }

    [Fact]
    public void Read_DrawingNumberOfParent_IsNotTaken() =>
        Assert.Equal("", Read(Child, TestKind.Good + "[sheet]\nnumber = \"1\"\n").Value!.Values.Get(CommonFields.Number));

    [Fact]
    public void Read_ChildWithoutName_IsToldEvenIfParentHasOne() =>
        Assert.Equal(["LD204 0:0"], TestKind.Places(Read("extends = \"base.toml\"\n", TestKind.Good)));

    [Fact]
    public void Read_EachFile_HasItsOwnUnits()
    {
        Profile profile = Read(Child + "units = \"in\"\n[arms]\nwidth = 0.25\n", TestKind.Good).Value!;
        Assert.Equal(6.35, profile.Values.Get(TestKind.Width).Millimetres, 12);
        Assert.Equal(3.6, profile.Values.Get(TestKind.Thickness).Millimetres);
        Assert.Equal(LengthUnit.Inch, profile.Units);
    }

    [Fact]
    public void Read_ChildWithoutUnits_TakesTheParents() =>
        Assert.Equal(6.35, Read(Child + "[arms]\nwidth = 0.25\n", TestKind.Good.Replace("\"mm\"", "\"in\"", StringComparison.Ordinal).Replace("3.6", "0.14", StringComparison.Ordinal))
            .Value!.Values.Get(TestKind.Width).Millimetres, 12);

    [Fact]
    public void Read_ChildTakesOtherForm_LeavesTheInheritedFieldBehind()
    {
        string parent = TestKind.Good + "form = \"curved\"\nsagitta = 2\n";
        Profile profile = Read(Child + "[arms]\nform = \"straight\"\n", parent).Value!;
        Assert.Null(profile.Values.Find(TestKind.Sagitta));
        Assert.Equal(["LD215 5:11"], TestKind.Places(Read(Child + "[arms]\nform = \"straight\"\nsagitta = 2\n", parent)));
    }

    [Fact]
    public void Read_FaultInParent_IsToldInTheParent()
    {
        Diagnostic fault = Assert.Single(Read(Child, TestKind.Good + "width = 99\n").Diagnostics);
        Assert.Equal(new SourcePosition("base.toml", 9, 9, 2), fault.Position);
    }

    [Fact]
    public void Read_Cycle_ShowsTheChain()
    {
        Checked<Profile> result = TestKind.Read(("a.toml", "name = \"A\"\nextends = \"b.toml\"\n"), ("b.toml", "extends = \"x/../a.toml\"\n"));
        Diagnostic fault = Assert.Single(result.Diagnostics);
        Assert.Equal("LD111", fault.Code);
        Assert.Contains("a.toml → b.toml → x/../a.toml", fault.Message, StringComparison.Ordinal);
        Assert.Equal(new SourcePosition("b.toml", 1, 11, 13), fault.Position);
    }

    [Fact]
    public void Read_LongChain_IsRefused()
    {
        (string, string)[] files = [.. Enumerable.Range(0, 40).Select(i => (FormattableString.Invariant($"{i}.toml"), FormattableString.Invariant($"name = \"N\"\nextends = \"{i + 1}.toml\"\n")))];
        Assert.Equal("LD112", Assert.Single(TestKind.Read(files).Diagnostics).Code);
    }

    [Theory]
    [InlineData("mising.toml", "LD101")]
    [InlineData("folder", "LD102")]
    [InlineData("locked", "LD103")]
    [InlineData("huge", "LD104")]
    [InlineData("/etc/base.toml", "LD114")]
    [InlineData("C:\\\\base.toml", "LD114")]
    [InlineData("", null)]
    public void Read_ExtendsNoGoodFile_IsToldAtTheValue(string path, string? code)
    {
        Checked<Profile> result = TestKind.Read(TestKind.Good.Replace("units", "extends = \"" + path + "\"\nunits", StringComparison.Ordinal));
        Assert.Equal(code is null ? [] : [code + " 3:11"], TestKind.Places(result));
    }

    [Fact]
    public void Read_OtherKind_IsToldOnce() =>
        Assert.Equal(["LD113 3:11"], TestKind.Places(Read("kind = \"test-pin\"\nname = \"P\"\nextends = \"base.toml\"\n", TestKind.Good)));

    [Fact]
    public void Read_PathOfParent_CountsFromTheChild()
    {
        Checked<Profile> result = TestKind.Read(("deep/late.toml", Child), ("deep/base.toml", TestKind.Good));
        Assert.Equal(["deep/late.toml", "deep/base.toml"], result.Value!.Files.ToArray());
    }
}
