using LeverDraw.Diagnostics;
using LeverDraw.Profiles;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Profiles;

/// <summary>Runs the examples of docs/profile-format.md: a profile fence, then, if it has faults, a fence with their codes and places.</summary>
public class ProfileFormatPageTests
{
    private static readonly (string Info, string Text)[] Fences = ReadFences();

    public static TheoryData<string, string> Examples
    {
        get
        {
            TheoryData<string, string> data = [];
            for (int i = 0; i < Fences.Length; i++)
                if (Fences[i].Info == "toml profile")
                    data.Add(Fences[i].Text, i + 1 < Fences.Length && Fences[i + 1].Info == "text diagnostics" ? Fences[i + 1].Text : "");
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Example_Read_GivesTheFaultsShown(string profile, string expected)
    {
        Checked<Profile> result = TestKind.Read(("example.toml", profile), ("middle.toml", Fences[0].Text));
        Assert.Equal(expected, string.Concat(TestKind.Places(result).Select(p => p + "\n")));
    }

    [Fact]
    public void Page_HasGoodAndFaultyExamples()
    {
        Assert.Contains(Fences, f => f.Info == "text diagnostics");
        Assert.All(Fences, f => Assert.True(f.Info is "toml profile" or "text diagnostics", f.Info));
    }

    private static (string, string)[] ReadFences()
    {
        string[] parts = ("\n" + RepositoryFile.Read("docs/profile-format.md")).Split("\n```");
        return [.. parts.Where((_, i) => i % 2 == 1).Select(p => (p[..p.IndexOf('\n', StringComparison.Ordinal)], p[(p.IndexOf('\n', StringComparison.Ordinal) + 1)..] + "\n"))];
    }
}
