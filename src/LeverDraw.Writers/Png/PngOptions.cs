namespace LeverDraw.Writers.Png;

/// <param name="DotsPerInch">Resolution, 30 to 1200 dots per inch; default 200.</param>
public sealed record PngOptions(int DotsPerInch = 200);
