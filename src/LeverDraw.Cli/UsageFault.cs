namespace LeverDraw.Cli;

/// <summary>A mistake in the command line: what is wrong, and what to write instead.</summary>
internal sealed record UsageFault(string Message, string NextStep);
