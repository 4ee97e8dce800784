using System.Text;
using FieldCheck.CommandLine;
using FieldCheck.Sheet.Units;
using Terminal.Gui.App;

namespace FieldCheck.Views;

/// <summary>Gives the terminal back as it was, however the program ends: a signal, a dropped line or a crash.</summary>
/// <remarks>The toolkit restores it only on its own orderly exit; SIGKILL is beyond anyone's reach.</remarks>
internal sealed class TerminalGuard : IDisposable
{
    // What the toolkit does not take back: cursor keys and keypad, which the runtime switches over, and our own reports.
    private const string Leftover = "\x1b[?1l\x1b>\x1b[?1000l\x1b[?1006l";

    // Paste and mouse reporting off, keyboard protocol popped, plain attributes, main screen, cursor shown.
    private const string Restore = "\x1b[?2004l\x1b[?1002l\x1b[?1003l\x1b[?1015l\x1b[<u\x1b[0m"
        + "\x1b[?1049l\x1b[?25h" + Leftover;

    private static readonly TimeSpan OrderlyEnd = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan LastWrite = TimeSpan.FromMilliseconds(500);

    private readonly TerminalModes _modes;
    private readonly ManualResetEventSlim _hasEnded = new();
    private IApplication? _application;
    private Action _keep = Nothing;
    private Action _stop = Nothing;
    private Action _lastWords = Nothing;
    private EndingSignals? _signals;

    /// <param name="modes">The terminal's modes before the toolkit changed them.</param>
    internal TerminalGuard(TerminalModes modes)
    {
        _modes = modes;
        AppDomain.CurrentDomain.UnhandledException += OnCrash;
    }

    /// <summary>The exit status: that of the signal that ended the program, or of an orderly end.</summary>
    internal int Status => _signals?.Status ?? ExitStatus.Holds;

    /// <summary>Watches over the screen from here on.</summary>
    /// <param name="application">The toolkit's application, initialised.</param>
    /// <param name="keep">Keeps unsaved work; called on any thread.</param>
    /// <param name="stop">Leaves the screen; called on the screen's own thread.</param>
    /// <param name="lastWords">What to do on a crash after the terminal is restored.</param>
    internal void Watch(IApplication application, Action keep, Action stop, Action lastWords)
    {
        _application = application;
        _keep = keep;
        _stop = stop;
        _lastWords = lastWords;
        _signals = new EndingSignals(End);
    }

    public void Dispose()
    {
        Write(Leftover);
        _hasEnded.Set();
        AppDomain.CurrentDomain.UnhandledException -= OnCrash;
        _signals?.Dispose();
    }

    private static void Nothing()
    {
    }

#pragma warning disable RS0030 // The screen's thread hangs or is not the one that failed: no status can be returned.
    private static void EndProcess(int status) => Environment.Exit(status);
#pragma warning restore RS0030

    private static void Write(string codes)
    {
        try
        {
            using Stream output = Console.OpenStandardOutput();
            output.Write(Encoding.ASCII.GetBytes(codes));
            output.Flush();
        }
        catch (IOException)
        {
            // The line is gone: there is no terminal left to restore.
        }
    }

    private void RestoreTerminal()
    {
        Write(Restore);
        _modes.Restore();
    }

    // The screen's thread may hang in a write to a line that takes nothing any more: work is kept without it, and the
    // program ends without it.
    private void End(int status)
    {
        _keep();
        _application?.Invoke(_stop);
        if (!_hasEnded.Wait(OrderlyEnd))
        {
            Task.Run(RestoreTerminal).Wait(LastWrite);
            EndProcess(status);
        }
    }

    private void OnCrash(object? sender, UnhandledExceptionEventArgs crash)
    {
        _keep();
        RestoreTerminal();
        Console.Error.WriteLine(
            string.Join('\n', Program.Fault(crash.ExceptionObject).Split('\n').Select(TextSafety.ForTerminal)));
        _lastWords();
        EndProcess(ExitStatus.ProgramFailed);
    }
}
