namespace LeverDraw.Cli.Files;

/// <summary>The output cannot go where it was asked to; the message says why and what to do.</summary>
internal sealed class OutputException : Exception
{
    public OutputException()
    {
    }

    public OutputException(string message)
        : base(message)
    {
    }

    public OutputException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
