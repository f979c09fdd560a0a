using LeverDraw.Drafting.Sheets;

namespace LeverDraw.Benchmarks.Pipeline;

/// <summary>Papers by the names that benchmarks have for them.</summary>
internal static class Papers
{
    /// <summary>The paper that a call without one takes.</summary>
    public const string Default = "default";

    public static SheetOptions Options(string paper) => paper == Default ? new SheetOptions() : new SheetOptions(LeverDraw.Standards.Sheets.Named(paper).Value);
}
