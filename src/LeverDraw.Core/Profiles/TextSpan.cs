namespace LeverDraw.Profiles;

/// <summary>A stretch of a file's text, in UTF-16 units.</summary>
internal readonly record struct TextSpan(int Start, int Length);
