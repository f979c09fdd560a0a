using LeverDraw.Diagnostics;
using LeverDraw.Lookups;

namespace LeverDraw.Tests.Lookups;

/// <summary>Asks a look-up as the command line does.</summary>
internal static class Ask
{
    /// <param name="given">Input name, value, input name, value …</param>
    public static Checked<LookupAnswer> Of(string lookup, params string[] given) =>
        AllLookups.InOrder.Single(l => l.Name == lookup).Find(new LookupRequest(
            given.Chunk(2).ToDictionary(pair => pair[0], pair => pair[1], StringComparer.Ordinal)));

    public static LookupRow Row(this Checked<LookupAnswer> answer, string name)
    {
        Assert.True(answer.Ok, string.Join(' ', answer.Diagnostics.Select(d => d.Message)));
        return answer.Value.Rows.Single(row => row.Name == name);
    }

    public static double[] Numbers(this Checked<LookupAnswer> answer, string name) => [.. answer.Row(name).Value.Numbers];

    public static double[] Inches(this Checked<LookupAnswer> answer, string name) => [.. answer.Row(name).Value.InchNumbers];

    public static void MustRefuse(this Checked<LookupAnswer> answer, string code, string told)
    {
        Assert.False(answer.Ok);
        Diagnostic fault = answer.Diagnostics.First(d => d.Code == code);
        Assert.Null(fault.Position);
        Assert.Contains(told, fault.Message + " " + fault.Suggestion, StringComparison.Ordinal);
    }
}
