namespace LeverDraw.Drafting.Sheets;

/// <summary>Names of fields as a sheet letters them.</summary>
internal static class LetteredName
{
    /// <summary>A field's name as words: <c>ARMS, PAD SHIFT</c>.</summary>
    public static string Of(string name) => name.Replace(".", ", ", StringComparison.Ordinal).Replace('_', ' ').ToUpperInvariant();
}
