using System.Globalization;

namespace LeverDraw.Cli.Reporting;

/// <summary>Says how far work has come, once it has taken a second, and then at most once a second.</summary>
internal sealed class Progress(TextWriter to, bool terminal, TimeProvider clock, int total)
{
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(1);
    private long last = clock.GetTimestamp();
    private int shown;

    public void Step(int done, string what)
    {
        if (clock.GetElapsedTime(last) < Pause)
            return;
        last = clock.GetTimestamp();
        string line = string.Create(CultureInfo.InvariantCulture, $"{done} of {total}: {what}");
        if (terminal)
        {
            to.Write("\r" + line.PadRight(shown));
            shown = line.Length;
        }
        else
        {
            to.WriteLine(line);
        }
    }

    /// <summary>Takes the terminal's progress line away.</summary>
    public void End()
    {
        if (shown == 0)
            return;
        to.Write("\r" + new string(' ', shown) + "\r");
        shown = 0;
    }
}
