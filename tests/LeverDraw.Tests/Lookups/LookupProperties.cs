using CsCheck;
using LeverDraw.Diagnostics;
using LeverDraw.Lookups;
using LeverDraw.Standards;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Lookups;

public sealed class LookupProperties
{
    private static readonly string[] _words =
        ["3.06", "14", "500", "0.5", "9/64 in", "1 3/16 in", "3 mm", "1e9", "-1", "", "nan", "99999999999999999999", "0.0000000001", "99000", "H8", "h7", "js6", "H8/f7", "M6", "m", "v", "3/0", "14", "#47", "F", "A", "1/64",
            "12", "DCTG", "G", "K", "iron", "brass", "cast iron", "sand", "length", "angle", "\u202e", "{0}", "𝟛"];

    /// <summary>Whatever is given, there is an answer with rows and sources, or faults that have a code.</summary>
    [Fact]
    public void Find_AnyWords_AnswersOrRefuses() =>
        Gen.Select(Gen.Int[0, AllLookups.InOrder.Length - 1], Gen.Int[0, _words.Length - 1].Array[3], Gen.Int[0, 7]).Sample((which, words, left) =>
        {
            Lookup lookup = AllLookups.InOrder[which];
            Dictionary<string, string> given = new(StringComparer.Ordinal);
            for (int i = 0; i < lookup.Inputs.Length; i++)
            {
                if (lookup.Inputs[i] is { IsOption: false, Needed: true } || (left & (1 << i)) != 0)
                    given[lookup.Inputs[i].Name] = _words[words[i]];
            }

            Checked<LookupAnswer> answer = lookup.Find(new LookupRequest(given));
            if (!answer.Ok)
            {
                Assert.All(answer.Diagnostics, d => Assert.NotNull(DiagnosticCatalogue.Find(d.Code)));
                return;
            }

            Assert.NotEmpty(answer.Value.Rows);
            Assert.NotEmpty(answer.Value.Sources);
            Assert.All(answer.Value.Rows, row =>
            {
                Assert.NotEmpty(row.Name);
                Assert.NotEmpty(row.Value.Text);
                Assert.All(row.Value.Numbers.Concat(row.Value.InchNumbers), n => Assert.True(double.IsFinite(n)));
            });
        }, iter: 20_000);

    [Fact]
    public void Entries_Names_AreDistinctAndTheExamplesTheirOwn()
    {
        Assert.Equal(AllLookups.InOrder.Length, AllLookups.InOrder.Select(l => l.Name).Distinct(StringComparer.Ordinal).Count());
        Assert.All(AllLookups.InOrder, l => Assert.StartsWith(l.Name + " ", l.Example + " ", StringComparison.Ordinal));
    }

    /// <summary>A table that answers a user's question is reachable: foundry, pins, drills, tolerances. Drawing tables are for drawing.</summary>
    [Fact]
    public void Folder_EveryLookup_IsListed()
    {
        string folder = Path.Combine(RepositoryFile.Root, "src", "LeverDraw.Core", "Lookups");
        int declared = Directory.GetFiles(folder, "*.cs").Sum(f => File.ReadAllText(f).Split("public static Lookup Entry").Length - 1);
        Assert.Equal(declared, AllLookups.InOrder.Length);
    }
}
