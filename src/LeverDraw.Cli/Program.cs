using System.Runtime.InteropServices;
using LeverDraw.Cli;

using var stop = new CancellationTokenSource();

void Stop(PosixSignalContext signal)
{
    // The run ends by itself, so that it can take its unfinished files away.
    signal.Cancel = true;
    stop.Cancel();
}

using PosixSignalRegistration interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop);
using PosixSignalRegistration terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop);
return CliHost.Run(args, Surroundings.OfProcess(), stop.Token);
