using System.Collections.Concurrent;
using FieldCheck.CommandLine;

namespace FieldCheck.Plain;

/// <summary>Lines as they are typed, and the signals that end them.</summary>
/// <remarks>
/// Lines are read on a thread of their own: a read cannot be broken off, and a signal must end the program all the same.
/// </remarks>
internal sealed class PlainInput : IDisposable
{
    private static readonly TimeSpan Grace = TimeSpan.FromMilliseconds(100);

    private readonly BlockingCollection<PlainEvent> _events = [];
    private readonly EndingSignals _signals;
    private readonly TextReader _reader;

    /// <param name="reader">The lines.</param>
    internal PlainInput(TextReader reader)
    {
        _reader = reader;
        _signals = new EndingSignals(_ => _events.Add(new PlainEvent.InputEnded()));
        new Thread(ReadAll) { IsBackground = true, Name = "lines" }.Start();
    }

    /// <summary>The exit status: that of the signal that ended the input, or of an orderly end.</summary>
    internal int Status => _signals.Status;

    /// <summary>Waits for what comes next.</summary>
    internal PlainEvent Next()
    {
        PlainEvent next = _events.Take();
        return _signals.HaveCome ? new PlainEvent.Happened(new Screen.ScreenEvent.Stopped()) : next;
    }

    public void Dispose() => _signals.Dispose();

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
}
