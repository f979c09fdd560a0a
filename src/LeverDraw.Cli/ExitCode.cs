namespace LeverDraw.Cli;

/// <summary>What the process returns; the README lists the same.</summary>
internal static class ExitCode
{
    public const int Done = 0;

    /// <summary>A profile has errors; all of them were told and nothing was written.</summary>
    public const int InputFaults = 1;

    /// <summary>The command line is wrong, or the output cannot go where it was asked to.</summary>
    public const int WrongUsage = 2;

    /// <summary>A mistake in the program.</summary>
    public const int InternalFault = 3;

    /// <summary>Stopped from outside; shells use 128 + signal 2.</summary>
    public const int Stopped = 130;
}
