using System.Collections.Concurrent;
using System.Runtime.InteropServices;

namespace FieldCheck.Plain;

/// <summary>Lines as they are typed, and the signals that end them.</summary>
/// <remarks>
/// Lines are read on a thread of their own: a read cannot be broken off, and a signal must end the program all the same.
/// </remarks>
internal sealed class PlainInput : IDisposable
{
    private static readonly TimeSpan Grace = TimeSpan.FromMilliseconds(100);

    private readonly BlockingCollection<PlainEvent> _events = [];
    private readonly List<PosixSignalRegistration> _registrations = [];
    private readonly TextReader _reader;
    private volatile int _signal;

    /// <param name="reader">The lines.</param>
    internal PlainInput(TextReader reader)
    {
        _reader = reader;
        Register(PosixSignal.SIGTERM, 15);
        Register(PosixSignal.SIGHUP, 1);
        Register(PosixSignal.SIGINT, 2);
        Register(PosixSignal.SIGQUIT, 3);
        new Thread(ReadAll) { IsBackground = true, Name = "lines" }.Start();
    }

    /// <summary>Number of the signal that ended the input; 0 when none did.</summary>
    internal int Signal => _signal;

    /// <summary>Waits for what comes next.</summary>
    internal PlainEvent Next()
    {
        PlainEvent next = _events.Take();
        return _signal > 0 ? new PlainEvent.Happened(new Screen.ScreenEvent.Stopped()) : next;
    }

    public void Dispose()
    {
        foreach (PosixSignalRegistration registration in _registrations)
        {
            registration.Dispose();
        }
    }

    private void ReadAll()
    {
        try
        {
            while (_reader.ReadLine() is string line)
            {
                _events.Add(new PlainEvent.Line(line));
            }
        }
        catch (IOException)
        {
            // The line is gone: no more will come.
        }

        // A line that drops ends the input a moment before its signal comes, and the signal is what is to be told.
        Thread.Sleep(Grace);
        _events.Add(new PlainEvent.InputEnded());
    }

    private void Register(PosixSignal signal, int number) =>
        _registrations.Add(PosixSignalRegistration.Create(signal, context =>
        {
            context.Cancel = true;
            _signal = number;
            _events.Add(new PlainEvent.InputEnded());
        }));
}
