using System.Runtime.InteropServices;
using System.Text;
using Terminal.Gui.App;

namespace FieldCheck.Views;

/// <summary>Gives the terminal back as it was, however the program ends: a signal, a dropped line or a crash.</summary>
/// <remarks>The toolkit restores it only on its own orderly exit; SIGKILL is beyond anyone's reach.</remarks>
internal sealed class TerminalGuard : IDisposable
{
    // Paste and mouse reporting off, keyboard protocol popped, plain attributes, main screen, cursor shown.
    private static readonly byte[] Restore = Encoding.ASCII.GetBytes(
        "\x1b[?2004l\x1b[?1000l\x1b[?1002l\x1b[?1003l\x1b[?1006l\x1b[?1015l\x1b[<u\x1b[0m\x1b[?1049l\x1b[?25h");

    private readonly IApplication _application;
    private readonly Action<Exception?> _lastWords;
    private readonly List<PosixSignalRegistration> _registrations = [];
    private volatile int _signal;

    /// <param name="application">The toolkit's application, initialised.</param>
    /// <param name="beforeStop">What to do on a signal before the screen stops, on the screen's own thread.</param>
    /// <param name="lastWords">What to do on a crash after the terminal is restored.</param>
    internal TerminalGuard(IApplication application, Action beforeStop, Action<Exception?> lastWords)
    {
        _application = application;
        _lastWords = lastWords;
        Register(PosixSignal.SIGTERM, 15, beforeStop);
        Register(PosixSignal.SIGHUP, 1, beforeStop);
        Register(PosixSignal.SIGINT, 2, beforeStop);
        Register(PosixSignal.SIGQUIT, 3, beforeStop);
        AppDomain.CurrentDomain.UnhandledException += OnCrash;
    }

    /// <summary>Number of the signal that ended the program; 0 when none did.</summary>
    internal int Signal => _signal;

    public void Dispose()
    {
        AppDomain.CurrentDomain.UnhandledException -= OnCrash;
        foreach (PosixSignalRegistration registration in _registrations)
        {
            registration.Dispose();
        }
    }

    private static void RestoreTerminal()
    {
        try
        {
            using Stream output = Console.OpenStandardOutput();
            output.Write(Restore);
            output.Flush();
        }
        catch (IOException)
        {
            // The line is gone: there is no terminal left to restore.
        }
    }

    private void Register(PosixSignal signal, int number, Action beforeStop) =>
        _registrations.Add(PosixSignalRegistration.Create(signal, context =>
        {
            context.Cancel = true;
            _signal = number;
            _application.Invoke(() =>
            {
                beforeStop();
                _application.RequestStop();
            });
        }));

    private void OnCrash(object? sender, UnhandledExceptionEventArgs crash)
    {
        RestoreTerminal();
        _lastWords(crash.ExceptionObject as Exception);
    }
}
