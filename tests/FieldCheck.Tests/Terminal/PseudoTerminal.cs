using System.Diagnostics;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace FieldCheck.Tests.Terminal;

/// <summary>
/// A program on a terminal of its own: keys go in as bytes, what it writes is read as a terminal would show it.
/// </summary>
internal sealed class PseudoTerminal : IDisposable
{
    // A shell that runs the tests in the background has interrupts ignored in all that it starts: undone here.
    private const string Script =
        "exec env --default-signal=INT,QUIT,TERM,HUP setsid -c \"$@\" <\"$0\" >\"$0\" 2>&1";

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly PtyPair _pair;
    private readonly FileStream _keys;
    private readonly Process _process;
    private readonly Thread _reader;
    private readonly Lock _changing = new();
    private readonly StringBuilder _written = new();
    private readonly TerminalImage _image;
    private volatile bool _isPaused;
    private volatile bool _isHungUp;

    private PseudoTerminal(PtyPair pair, ProcessStartInfo start, int width, int height)
    {
        _pair = pair;
        LineModesAtStart = LineModes;
        _process = Process.Start(start)!;
        _keys = new FileStream(new SafeFileHandle(pair.Master.DangerousGetHandle(), ownsHandle: false), FileAccess.Write, 0);
        _image = new TerminalImage(width, height);
        _reader = new Thread(Read) { IsBackground = true, Name = "terminal" };
        _reader.Start();
    }

    /// <summary>Why there can be no such terminal here; null where there can.</summary>
    internal static string? WhyNot { get; } = PtyPair.WhyNot
        ?? (File.Exists("/usr/bin/setsid") ? null : "needs setsid, to give a program a terminal of its own");

    /// <summary>What is done each time something was written, with the screen as it is then; on a thread of its own.</summary>
    internal Action<TerminalImage>? Written { get; set; }

    internal int ProcessId => _process.Id;

    internal Process Process => _process;

    /// <summary>The screen as text, trailing blanks cut.</summary>
    internal string Screen => Look(image => image.ToString());

    /// <summary>All that was written so far.</summary>
    internal string Bytes => Look(_ => _written.ToString());

    /// <summary>The private modes in force, as 1049 for the other screen.</summary>
    internal IReadOnlySet<int> Modes => Look(image => image.Modes.ToHashSet());

    /// <summary>The modes of the line, as stty tells them to itself.</summary>
    internal string LineModes => Run("stty", ["-F", _pair.SlavePath, "-g"]);

    /// <summary>Those that the program found.</summary>
    internal string LineModesAtStart { get; }

    /// <summary>Starts a program.</summary>
    /// <param name="program">Its file.</param>
    /// <param name="words">Its command line.</param>
    /// <param name="folder">Its current folder.</param>
    /// <param name="size">Columns and lines.</param>
    /// <param name="variables">What its environment shall hold besides, or, with null, not hold.</param>
    internal static PseudoTerminal Start(
        string program,
        IEnumerable<string> words,
        string folder,
        (int Width, int Height) size,
        params ReadOnlySpan<(string Name, string? Value)> variables)
    {
        PtyPair pair = PtyPair.Open(size.Width, size.Height);
        ProcessStartInfo start = new(
            "/bin/sh", ["-c", Script, pair.SlavePath, program, .. words])
        {
            WorkingDirectory = folder,
        };
        foreach ((string name, string? value) in (ReadOnlySpan<(string, string?)>)
            [("DisableRealDriverIO", null), ("NO_COLOR", null), ("COLORTERM", null), ("TERM", "xterm-256color"),
                ("LC_ALL", null), ("LC_CTYPE", null), ("LANG", "C.UTF-8"), .. variables])
        {
            _ = start.Environment.Remove(name);
            if (value is not null)
            {
                start.Environment[name] = value;
            }
        }

        return new PseudoTerminal(pair, start, size.Width, size.Height);
    }

    /// <summary>Presses keys: text, or the bytes that a key sends.</summary>
    internal void Press(string keys)
    {
        lock (_keys)
        {
            _keys.Write(Encoding.UTF8.GetBytes(keys));
        }
    }

    internal void Resize(int width, int height)
    {
        lock (_changing)
        {
            _image.Resize(width, height);
        }

        _pair.Resize(width, height);
    }

    /// <summary>Sends a signal by its name, as "TERM".</summary>
    internal void Signal(string name) => Run("kill", [$"-{name}", $"{ProcessId}"]);

    /// <summary>Reads nothing any more, like a line that is stuck.</summary>
    internal void StopReading() => _isPaused = true;

    /// <summary>Takes the terminal away, as a line that drops does; what is written last may be lost.</summary>
    /// <param name="lastKeys">
    /// Keys pressed just before. The reader comes out of its read only when something is written: the form writes at each
    /// turn of its loop, a program that waits for a line has to be given one.
    /// </param>
    internal void HangUp(string lastKeys = "")
    {
        _isPaused = true;
        Press(lastKeys);
        Thread.Sleep(500);
        _isHungUp = true;
        _reader.Join(Patience);
        _keys.Dispose();
        _pair.Dispose();
    }

    internal void WaitFor(string text) => WaitUntil(image => image.ToString().Contains(text, StringComparison.Ordinal), text);

    internal void WaitUntil(Func<TerminalImage, bool> isSo, string what)
    {
        Stopwatch waited = Stopwatch.StartNew();
        while (!Look(isSo))
        {
            if (waited.Elapsed > Patience)
            {
                throw new TimeoutException($"Waited in vain for {what}. The screen:\n{Screen}");
            }

            Thread.Sleep(10);
        }
    }

    /// <summary>Waits for the end of the program and of all it wrote.</summary>
    /// <returns>Its exit status.</returns>
    internal int Finish()
    {
        bool hasEnded = _process.WaitForExit(Patience);
        _pair.CloseSlave();
        if (!hasEnded || !(_isPaused || _reader.Join(Patience)))
        {
            throw new TimeoutException($"It does not end. The screen:\n{Screen}");
        }

        return _process.ExitCode;
    }

    public void Dispose()
    {
        if (!_process.HasExited)
        {
            _process.Kill();
            _process.WaitForExit();
        }

        _isPaused = false;
        _pair.CloseSlave();
        _reader.Join(Patience);
        _keys.Dispose();
        _pair.Dispose();
        _process.Dispose();
    }

    private static string Run(string program, IEnumerable<string> words)
    {
        using Process run = Process.Start(new ProcessStartInfo(program, words) { RedirectStandardOutput = true })!;
        string output = run.StandardOutput.ReadToEnd();
        run.WaitForExit();
        return run.ExitCode == 0 ? output.Trim() : throw new IOException($"{program} ended with {run.ExitCode}.");
    }

    private T Look<T>(Func<TerminalImage, T> look)
    {
        lock (_changing)
        {
            return look(_image);
        }
    }

    private void Read()
    {
        using FileStream screen = new(
            new SafeFileHandle(_pair.Master.DangerousGetHandle(), ownsHandle: false), FileAccess.Read, 0);
        Decoder decoder = Encoding.UTF8.GetDecoder();
        byte[] bytes = new byte[1 << 16];
        char[] letters = new char[bytes.Length];
        try
        {
            while (screen.Read(bytes) is int count and > 0)
            {
                while (_isPaused && !_isHungUp)
                {
                    Thread.Sleep(20);
                }

                if (_isHungUp)
                {
                    return;
                }

                Take(letters.AsSpan(0, decoder.GetChars(bytes, 0, count, letters, 0)));
            }
        }
        catch (IOException)
        {
            // The system says so when the last program has let go of the terminal.
        }
    }

    private void Take(ReadOnlySpan<char> text)
    {
        lock (_changing)
        {
            _written.Append(text);
            string answers = _image.Write(text);
            if (answers.Length > 0)
            {
                Press(answers);
            }

            Written?.Invoke(_image);
        }
    }
}
