using System.Diagnostics;

namespace LeverDraw.Tests.Cli;

/// <summary>The tool as its own process, as the build left it beside the tests.</summary>
internal static class CliProcess
{
    public static (int Exit, string Out, string Error) Run(string folder, IEnumerable<(string Name, string Value)> environment, params string[] args)
    {
        ProcessStartInfo start = new("dotnet")
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        start.ArgumentList.Add(typeof(LeverDraw.Cli.CliHost).Assembly.Location);
        foreach (string arg in args)
            start.ArgumentList.Add(arg);
        foreach ((string name, string value) in environment)
            start.Environment[name] = value;
        using Process process = Process.Start(start)!;
        Task<string> error = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, error.Result);
    }
}
