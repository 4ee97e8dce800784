using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace FieldCheck.CommandLine;

/// <summary>The signals that end the program in good order, where it would be ended at once.</summary>
internal sealed class EndingSignals : IDisposable
{
    private const int OfSignal = 128;

    private static readonly ImmutableArray<(PosixSignal Signal, int Number)> All =
        [(PosixSignal.SIGTERM, 15), (PosixSignal.SIGHUP, 1), (PosixSignal.SIGINT, 2), (PosixSignal.SIGQUIT, 3)];

    private readonly ImmutableArray<PosixSignalRegistration> _registrations;
    private volatile int _status = ExitStatus.Holds;

    /// <param name="came">What to do when one comes, with the exit status that it makes; called on any thread.</param>
    internal EndingSignals(Action<int> came) =>
        _registrations = [.. All.Select(pair => PosixSignalRegistration.Create(pair.Signal, context =>
        {
            context.Cancel = true;
            _status = OfSignal + pair.Number;
            came(_status);
        }))];

    /// <summary>The exit status that the last of them makes; that of an orderly end while none has come.</summary>
    internal int Status => _status;

    /// <summary>True: one has come.</summary>
    internal bool HaveCome => _status != ExitStatus.Holds;

    public void Dispose()
    {
        foreach (PosixSignalRegistration registration in _registrations)
        {
            registration.Dispose();
        }
    }
}
