using System.Text;
using LeverDraw.Cli.Files;

namespace LeverDraw.Cli;

/// <summary>All a run touches outside itself, so that tests can hand in their own.</summary>
internal sealed record Surroundings(TextWriter Out, TextWriter Error, IFileSystem Files)
{
    /// <summary>True when results go to a terminal that may show colour.</summary>
    public bool ColourOut { get; init; }

    /// <summary>True when messages go to a terminal that may show colour.</summary>
    public bool ColourError { get; init; }

    /// <summary>True when messages go to a terminal, so that a progress line can be overwritten.</summary>
    public bool ErrorIsTerminal { get; init; }

    /// <summary>For progress only: what is written never depends on it.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;

    public static Surroundings OfProcess()
    {
        var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        if (OperatingSystem.IsWindows())
            Console.OutputEncoding = utf8;
        // Any value but the empty one turns colour off, as is usual.
        bool colour = string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"))
            && Environment.GetEnvironmentVariable("TERM") is not "dumb";
        return new Surroundings(
            new StreamWriter(Console.OpenStandardOutput(), utf8) { AutoFlush = true, NewLine = "\n" },
            new StreamWriter(Console.OpenStandardError(), utf8) { AutoFlush = true, NewLine = "\n" },
            new DiskFiles())
        {
            ColourOut = colour && !Console.IsOutputRedirected,
            ColourError = colour && !Console.IsErrorRedirected,
            ErrorIsTerminal = !Console.IsErrorRedirected,
        };
    }
}
