using System.Diagnostics;
using System.Text;
using LeverDraw.Diagnostics;
using LeverDraw.Profiles;
using LeverDraw.Units;

namespace LeverDraw.Tests.Profiles;

public class ProfileReaderTests
{
    [Fact]
    public void Read_GoodProfile_GivesValuesDefaultsAndPlaces()
    {
        Profile profile = TestKind.ReadGood(TestKind.Good + "[hole]\ntaper = \"1:48\"\n[sheet]\ndate = 2024-05-31\nnumber = \"TC-1\"\n");
        Assert.Equal(("test-lever", "Middle", LengthUnit.Millimetre), (profile.Kind, profile.Name, profile.Units));
        IFieldValues values = profile.Values;
        Assert.Equal(new SizeValue(Length.FromMillimetres(3.6)), values.Get(TestKind.Thickness));
        Assert.Equal(5.2, values.Get(TestKind.Width).Millimetres);
        Assert.Equal("straight", values.Get(TestKind.Form));
        Assert.Equal(40, values.Get(TestKind.Sweep).Degrees, 12);
        Assert.Equal(48, values.Get(TestKind.Taper).LengthPerUnit, 12);
        Assert.Equal("2024-05-31", values.Get(CommonFields.Date));
        Assert.True(values.Get(CommonFields.Reproduction));
        Assert.False(values.Get(TestKind.Web));
        Assert.Null(values.Find(TestKind.Hole));
        Assert.Null(values.Find(TestKind.Sagitta));
        Assert.True(values.IsStated(TestKind.Thickness));
        Assert.False(values.IsStated(TestKind.Width));
        Assert.Equal(new SourcePosition("a.toml", 8, 13, 3), values.PositionOf(TestKind.Thickness));
        Assert.Equal(new SourcePosition("a.toml", 7, 2, 4), values.PositionOf(TestKind.Width));
        Assert.Equal(SourcePosition.WholeFile("a.toml"), values.PositionOf(TestKind.Sweep));
    }

    [Fact]
    public void Get_AbsentOrForeignField_Throws()
    {
        IFieldValues values = TestKind.ReadGood(TestKind.Good).Values;
        Assert.Throws<InvalidOperationException>(() => values.Get(TestKind.Hole));
        Assert.Throws<ArgumentException>(() => values.IsStated(new FlagField("other.flag", null, "", true)));
    }

    [Theory]
    [InlineData("3.6", 3.6)]
    [InlineData("4", 4)]
    [InlineData("\"9/64 in\"", 3.571875)]
    [InlineData("'9/64\"'", 3.571875)]
    [InlineData("\"3.6 mm\"", 3.6)]
    [InlineData("{ size = \"3.6 mm\" }", 3.6)]
    public void Read_Size_InEachForm(string written, double expected) =>
        Assert.Equal(expected, TestKind.ReadGood(TestKind.Head + "[arms]\nthickness = " + written + "\n").Values.Get(TestKind.Thickness).Millimetres, 12);

    [Fact]
    public void Read_InchFile_PlainNumbersAreInches() =>
        Assert.Equal(3.5814, TestKind.ReadGood(TestKind.Good.Replace("\"mm\"", "\"in\"", StringComparison.Ordinal).Replace("3.6", "0.141", StringComparison.Ordinal))
            .Values.Get(TestKind.Thickness).Millimetres, 12);

    [Fact]
    public void Read_Tolerances_InEachForm()
    {
        Assert.Equal(new ZoneTolerance("H8"), Hole("{ size = \"3.057 mm\", fit = \"H8\" }").Tolerance);
        Assert.Equal(
            new DeviationTolerance(Length.FromMillimetres(0.1), Length.FromMillimetres(-0.05)),
            Hole("{ size = 3.05, plus = 0.1, minus = 0.05 }").Tolerance);
        SizeValue limits = Hole("{ min = 3.0, max = 3.5 }");
        Assert.Equal(3.25, limits.Millimetres);
        Assert.Equal(new DeviationTolerance(Length.FromMillimetres(0.25), Length.FromMillimetres(-0.25)), limits.Tolerance);
        SizeValue offset = Hole("{ size = 3.5, min = 3.0, max = 3.25 }");
        Assert.Equal(3.5, offset.Millimetres);
        Assert.Equal(new DeviationTolerance(Length.FromMillimetres(-0.25), Length.FromMillimetres(-0.5)), offset.Tolerance);
    }

    private static SizeValue Hole(string written) =>
        TestKind.ReadGood(TestKind.Good + "[hole]\ndiameter = " + written + "\n").Values.Get(TestKind.Hole);

    [Theory]
    [InlineData("{ size = 3, fit = \"8H\" }", "LD220")]
    [InlineData("{ size = 3, fit = \"Hh8\" }", "LD220")]
    [InlineData("{ size = 3, fit = \"H19\" }", "LD220")]
    [InlineData("{ size = 3, fit = \"H8/f7\" }", "LD220")]
    [InlineData("{ size = 3, fit = 8 }", "LD207")]
    [InlineData("{ size = 3, plus = 0.1 }", "LD221")]
    [InlineData("{ size = 3, plus = 0.1, minus = -0.1 }", "LD221")]
    [InlineData("{ size = 3, plus = 0.1, minus = 3 }", "LD221")]
    [InlineData("{ size = 3, fit = \"H8\", plus = 1, minus = 1 }", "LD221")]
    [InlineData("{ min = 3.5, max = 3.0 }", "LD221")]
    [InlineData("{ max = 3.0 }", "LD221")]
    [InlineData("{ fit = \"H8\" }", "LD221")]
    [InlineData("{ size = 3, fti = \"H8\" }", "LD221")]
    [InlineData("{ size = 3, size = 4 }", "LD221")]
    [InlineData("{ }", "LD221")]
    [InlineData("{ size = 30 }", "LD212")]
    [InlineData("{ min = 30, max = 31 }", "LD212")]
    [InlineData("{ size = { size = 3 } }", "LD207")]
    [InlineData("[3]", "LD207")]
    [InlineData("true", "LD207")]
    [InlineData("2024-05-31", "LD207")]
    [InlineData("nan", "LD213")]
    [InlineData("-inf", "LD213")]
    [InlineData("1e999", "LD213")]
    [InlineData("1e300", "LD208")]
    [InlineData("\"9/0 in\"", "LD208")]
    [InlineData("\"40 deg\"", "LD211")]
    [InlineData("0.5", "LD212")]
    [InlineData("3.6 mm", "LD109")]
    [InlineData("9/64", "LD109")]
    [InlineData("9/64\"", "LD109")]
    [InlineData("3,6", "LD110")]
    [InlineData("", "LD108")]
    public void Read_BadSize_OneFaultOnItsLine(string written, string code)
    {
        Checked<Profile> result = TestKind.Read(TestKind.Good + "[hole]\ndiameter = " + written + "\n");
        Diagnostic fault = Assert.Single(result.Diagnostics);
        Assert.Equal((code, 10), (fault.Code, fault.Position!.Value.Line));
    }

    [Theory]
    [InlineData("[tongue]\nsweep = \"40 mm\"", "LD211 10:9")]
    [InlineData("[tongue]\nsweep = \"forty\"", "LD209 10:9")]
    [InlineData("[tongue]\nsweep = 81", "LD212 10:9")]
    [InlineData("[tongue]\nsweep = inf", "LD213 10:9")]
    [InlineData("[hole]\ntaper = 48", "LD207 10:9")]
    [InlineData("[hole]\ntaper = \"1/48\"", "LD210 10:9")]
    [InlineData("[arm]\nwidth = 5", "LD202 9:2")]
    [InlineData("[tongue]\nswep = 5", "LD203 10:1")]
    [InlineData("[arms]\nwidth = 5", "LD206 9:2")]
    [InlineData("thickness = 3", "LD205 9:1")]
    [InlineData("width = 3\n'width' = 4", "LD205 10:1")]
    [InlineData("form = \"curvd\"", "LD214 9:8")]
    [InlineData("sagitta = 2", "LD215 9:11")]
    [InlineData("form = \"curved\"", "LD204 7:2")]
    [InlineData("web = 1", "LD207 9:7")]
    [InlineData("[sheet]\ntitle = \"\"\"\nLever\nmiddle\"\"\"", "LD218 10:9")]
    [InlineData("[sheet]\ntitle = \"a\\tb\"", "LD218 10:9")]
    [InlineData("[sheet]\nnumber = \"1234567890123456789012345678901\"", "LD217 10:10")]
    [InlineData("[sheet]\ndate = \"31.5.2024\"", "LD219 10:8")]
    [InlineData("[sheet]\ndate = \"2024-02-30\"", "LD219 10:8")]
    [InlineData("[sheet]\ndate = 2024-02-30", "LD108 10:8")]
    [InlineData("[arms.left]\nx = 1", "LD222 9:2")]
    [InlineData("[[hole]]\ndiameter = 1", "LD222 9:3")]
    [InlineData("left.thickness = 1", "LD222 9:1")]
    [InlineData("width 3", "LD108 9:7")]
    [InlineData("web = yes", "LD109 9:7")]
    [InlineData("form = \"curved\n[tongue]\nsweep = \"40\"\n[hole]\n", "LD108 9:15")]
    public void Read_OneFault_IsToldWithItsPlace(string added, string expected) =>
        Assert.Equal([expected], TestKind.Places(TestKind.Read(TestKind.Good + added + "\n")));

    [Fact]
    public void Read_ManyFaultsOfAllKinds_AreAllTold()
    {
        Checked<Profile> result = TestKind.Read("""
            kind = "test-lever"
            name = ""
            units = "mm"
            [arms]
            thikness = 3.6
            width = 99
            form = 3,5
            [tongue]
            sweep = "40 mm"
            [nowhere]
            x = 1
            """);
        Assert.Equal(
            ["LD204 0:0", "LD216 2:8", "LD204 4:2", "LD203 5:1", "LD212 6:9", "LD110 7:8", "LD211 9:9", "LD202 10:2"],
            TestKind.Places(result));
        Assert.Equal("Did you mean 'arms.thickness'?", result.Diagnostics[3].Suggestion);
    }

    [Fact]
    public void Read_EmptyFile_NamesTheKinds()
    {
        Checked<Profile> result = TestKind.Read("");
        Assert.Contains(result.Diagnostics, d => d.Code == "LD204" && d.Suggestion.Contains("test-lever or test-pin", StringComparison.Ordinal));
    }

    [Fact]
    public void Read_UnknownKind_SuggestsTheNearest() =>
        Assert.Equal("Did you mean \"test-lever\"?", Assert.Single(TestKind.Read(TestKind.Good.Replace("test-lever", "test-leaver", StringComparison.Ordinal)).Diagnostics).Suggestion);

    [Fact]
    public void Read_OutOfRangeInInches_ShowsEndsThatAreThemselvesAllowed()
    {
        string inches = TestKind.Good.Replace("\"mm\"", "\"in\"", StringComparison.Ordinal);
        string message = Assert.Single(TestKind.Read(inches).Diagnostics).Message;
        Assert.Equal("'arms.thickness' is 3.6 in; it must be from 0.0394 in to 0.4724 in.", message);
        TestKind.ReadGood(inches.Replace("3.6", "0.0394", StringComparison.Ordinal));
        TestKind.ReadGood(inches.Replace("3.6", "0.4724", StringComparison.Ordinal));
    }

    [Fact]
    public void Read_DottedKeysAndInlineTables_MeanTheSameAsTables()
    {
        Assert.Equal(4, TestKind.ReadGood("arms.thickness = 4\n" + TestKind.Head).Values.Get(TestKind.Thickness).Millimetres);
        Assert.Equal(4, TestKind.ReadGood("arms = { thickness = 4 }\n" + TestKind.Head).Values.Get(TestKind.Thickness).Millimetres);
    }

    [Fact]
    public void Read_MarkAndCrlf_AreNoMatter()
    {
        string text = (TestKind.Good + "wdth = 3\n").Replace("\n", "\r\n", StringComparison.Ordinal);
        Assert.Equal(["LD203 9:1"], TestKind.Places(TestKind.ReadBytes([0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(text)])));
    }

    [Fact]
    public void Read_BrokenBytes_AreToldWithTheirPlace()
    {
        Assert.Equal(["LD105 1:3"], TestKind.Places(TestKind.ReadBytes([0x61, 0x62, 0xE9, 0x63])));
        Assert.Equal(["LD105 2:2"], TestKind.Places(TestKind.ReadBytes([0x61, 0x0A, 0x62, 0xC3])));
        Assert.Equal(["LD106 1:2"], TestKind.Places(TestKind.ReadBytes([0x61, 0x00])));
        Assert.Equal(["LD105 0:0"], TestKind.Places(TestKind.ReadBytes([0xFF, 0xFE, 0x61, 0x00])));
    }

    [Theory]
    [InlineData("missing", "LD101")]
    [InlineData("folder", "LD102")]
    [InlineData("locked", "LD103")]
    [InlineData("huge", "LD104")]
    public void Read_FileProblem_IsTold(string path, string code) =>
        Assert.Equal(code, Assert.Single(ProfileReader.Read(path, new TestKind.MemorySource([]), TestKind.Kinds).Diagnostics).Code);

    public static TheoryData<string, string> Hostile => new()
    {
        { "deep lists", "a = " + new string('[', 10_000) + new string(']', 10_000) },
        { "open lists", "a = " + new string('[', 500_000) },
        { "deep tables", "a = " + string.Concat(Enumerable.Repeat("{a=", 10_000)) },
        { "deep dots", string.Join('.', Enumerable.Repeat("a", 100_000)) + " = 1" },
        { "deep header", "[" + string.Join('.', Enumerable.Repeat("a", 100_000)) + "]" },
        { "one key again and again", TestKind.Good + string.Concat(Enumerable.Repeat("width = 3\n", 90_000)) },
        { "many keys", TestKind.Good + string.Concat(Enumerable.Range(0, 70_000).Select(i => FormattableString.Invariant($"w{i} = 3\n"))) },
        { "many tables", string.Concat(Enumerable.Range(0, 90_000).Select(i => FormattableString.Invariant($"[t{i}]\n"))) },
        { "many keys on a line", "arms = {" + string.Join(',', Enumerable.Range(0, 90_000).Select(i => FormattableString.Invariant($"w{i}=3"))) + "}" },
        { "many tables on a line", string.Concat(Enumerable.Repeat("[a]", 300_000)) },
        { "no end of quotes", new string('"', 1_000_000) },
        { "no end of equals", new string('=', 1_000_000) },
        { "no end of lines", new string('\n', 1_000_000) + "[" },
        { "long number", "a = " + new string('9', 1_000_000) },
        { "long text", TestKind.Good + "[sheet]\ntitle = \"" + new string('x', 1_000_000) + "\"" },
    };

    [Theory]
    [MemberData(nameof(Hostile))]
    public void Read_HostileText_IsToldQuickly(string what, string text)
    {
        Stopwatch watch = Stopwatch.StartNew();
        Checked<Profile> result = TestKind.Read(text);
        Assert.False(result.Ok, what);
        Assert.InRange(result.Diagnostics.Length, 1, 120);
        // Half a second on an idle machine; the bar only has to catch what grows with the square.
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(30), what + " took " + watch.Elapsed.ToString());
    }

    [Fact]
    public void Read_TenMegabytesOfNoise_IsRefusedBySize() =>
        Assert.Equal(["LD104 0:0"], TestKind.Places(TestKind.ReadBytes(new byte[10 * 1024 * 1024])));
}
