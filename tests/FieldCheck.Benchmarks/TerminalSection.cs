using System.Diagnostics;
using System.Globalization;
using FieldCheck.Tests.Terminal;

namespace FieldCheck.Benchmarks;

/// <summary>The program on a terminal of its own: what a person waits for, and what it costs while nobody types.</summary>
internal static class TerminalSection
{
    private const int Starts = 7;
    private const int Keys = 100;
    private const int Pauses = 7;
    private const string LastDrawn = "^Q leave";
    private const string Backspace = "\u007f";
    private static readonly (int Width, int Height) Size = (120, 40);
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(3);
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);
    private static readonly TimeSpan Idle = TimeSpan.FromSeconds(5);

    internal static void Run(Report report, string executable)
    {
        report.Section($"On a terminal of {Size.Width} x {Size.Height}: {Path.GetFileName(executable)}");
        if (PseudoTerminal.WhyNot is string lacking)
        {
            report.Row($"left out: it {lacking}");
            return;
        }

        using Session session = new() { Executable = executable };
        report.Row("", "median", "95 of 100", "slowest");
        Row(report, "start to first frame", [.. Enumerable.Range(0, Starts).Select(_ => Start(session))]);

        using PseudoTerminal terminal = session.Open([], Size);
        Press(terminal, "4", "Span 1 length: 4 m");
        Random random = new(1);
        Row(report, "key to screen, typing", [.. Enumerable.Range(0, Keys).Select(index =>
        {
            Thread.Sleep(random.Next(40, 160));
            return Change(terminal, index);
        })]);
        Row(report, "first key after 3 s", [.. Enumerable.Range(0, Pauses).Select(index =>
        {
            Thread.Sleep(Pause + TimeSpan.FromMilliseconds(random.Next(100)));
            return Change(terminal, index + Keys);
        })]);
        double idle = ProcessorShare(terminal.Process);
        report.Row("processor while idle", Percent(idle));
        report.Row("memory, peak resident", PeakMemory(terminal.ProcessId));
        terminal.Signal("TERM");
        terminal.Finish();
    }

    private static void Row(Report report, string name, double[] seconds)
    {
        double[] sorted = [.. seconds.Order()];
        report.Row(
            name,
            Report.Time(sorted[sorted.Length / 2]),
            Report.Time(sorted[Math.Min(sorted.Length * 95 / 100, sorted.Length - 1)]),
            Report.Time(sorted[^1]));
    }

    // Each key changes every figure on the screen; the line that reads it back is among the last drawn.
    private static double Change(PseudoTerminal terminal, int index) =>
        index % 2 == 0 ? Press(terminal, "1", "Span 1 length: 41 m") : Press(terminal, Backspace, "Span 1 length: 4 m");

    private static double Start(Session session)
    {
        long begin = Stopwatch.GetTimestamp();
        using PseudoTerminal terminal = session.Begin([], Size);
        double time = Seconds(terminal, begin, Seen(terminal, LastDrawn), LastDrawn);
        terminal.Signal("TERM");
        terminal.Finish();
        return time;
    }

    private static double ProcessorShare(Process process)
    {
        Thread.Sleep(Pause);
        process.Refresh();
        TimeSpan before = process.TotalProcessorTime;
        Stopwatch watch = Stopwatch.StartNew();
        Thread.Sleep(Idle);
        process.Refresh();
        return (process.TotalProcessorTime - before) / watch.Elapsed;
    }

    private static string Percent(double share) =>
        string.Create(CultureInfo.InvariantCulture, $"{100 * share:0.0} %");

    private static string PeakMemory(int process)
    {
        string line = File.ReadLines($"/proc/{process}/status").First(line => line.StartsWith("VmHWM", StringComparison.Ordinal));
        double kibibytes = double.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[^2], CultureInfo.InvariantCulture);
        return string.Create(CultureInfo.InvariantCulture, $"{kibibytes * 1024 / 1e6:0.0} MB");
    }

    private static double Press(PseudoTerminal terminal, string key, string wanted)
    {
        Task<long> seen = Seen(terminal, wanted);
        long pressed = Stopwatch.GetTimestamp();
        terminal.Press(key);
        return Seconds(terminal, pressed, seen, wanted);
    }

    private static Task<long> Seen(PseudoTerminal terminal, string wanted)
    {
        TaskCompletionSource<long> seen = new(TaskCreationOptions.RunContinuationsAsynchronously);
        terminal.Written = image =>
        {
            if (image.ToString().Contains(wanted, StringComparison.Ordinal))
            {
                seen.TrySetResult(Stopwatch.GetTimestamp());
            }
        };
        return seen.Task;
    }

    private static double Seconds(PseudoTerminal terminal, long from, Task<long> seen, string wanted) =>
        seen.Wait(Patience)
            ? Stopwatch.GetElapsedTime(from, seen.Result).TotalSeconds
            : throw new TimeoutException($"Waited in vain for {wanted}. The screen:\n{terminal.Screen}");
}
