using FieldCheck.CommandLine;
using FieldCheck.CommandLine.Batch;

namespace FieldCheck.Tests.CommandLine.Batch;

public sealed class BatchProgressTests : IDisposable
{
    private readonly StringWriter _error = new();
    private readonly HandClock _clock = new();

    [Fact]
    public void CountAndRate_AreToldNowAndThen()
    {
        BatchProgress progress = new(new(TextWriter.Null, _error), _clock, isTold: true);

        for (int i = 0; i < 1000; i++)
        {
            _clock.Pass(TimeSpan.FromMilliseconds(1));
            progress.Count();
        }

        Assert.Equal(
            "\r250 checked, 1000 a second\r500 checked, 1000 a second\r750 checked, 1000 a second\r1000 checked, 1000 a second",
            _error.ToString());
    }

    [Fact]
    public void NobodyWantsToKnow_NothingIsTold()
    {
        BatchProgress progress = new(new(TextWriter.Null, _error), _clock, isTold: false);
        _clock.Pass(TimeSpan.FromHours(1));

        progress.Count();

        Assert.Equal("", _error.ToString());
    }

    [Theory]
    [InlineData(true, true, null)]
    [InlineData(false, false, null)]
    [InlineData(false, true, "dumb")]
    [InlineData(false, true, "xterm", "--plain")]
    public void Batch_TellsItOnlyWhereItCanBeTakenBack(bool isTold, bool showsProgress, string? term, params string[] more)
    {
        using Surroundings around = new() { Input = "a\nb\nc\n" };
        if (term is not null)
        {
            around.Variables["TERM"] = term;
        }

        CommandEnvironment environment = around.Environment() with
        {
            ShowsProgress = showsProgress,
            Clock = new EagerClock(),
            Error = _error,
        };

        Program.Run(["batch", "-", .. more], environment);

        string told = _error.ToString();
        Assert.Equal(isTold, told.Contains("\r1 checked, ", StringComparison.Ordinal));
        Assert.DoesNotContain('\x1b', told);
        if (isTold)
        {
            // Wiped before each remark and at the end, with blanks as wide as it was.
            Assert.Equal("abc", string.Concat(Shown(told).TrimEnd('\n').Split('\n').Select(line => line[0])));
            Assert.EndsWith(" \r", told, StringComparison.Ordinal);
        }
    }

    public void Dispose() => _error.Dispose();

    /// <summary>What a terminal shows of it in the end: a return goes to the line's start, and what follows is written over.</summary>
    private static string Shown(string told) => string.Join('\n', told.Split('\n').Select(line =>
    {
        char[] cells = [.. Enumerable.Repeat(' ', 200)];
        foreach (string part in line.Split('\r'))
        {
            part.CopyTo(cells);
        }

        return new string(cells).TrimEnd();
    }));

    private sealed class HandClock : TimeProvider
    {
        private long _ticks;

        public override long GetTimestamp() => _ticks;

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        internal void Pass(TimeSpan time) => _ticks += time.Ticks;
    }

    /// <summary>A second passes between two looks at it.</summary>
    private sealed class EagerClock : TimeProvider
    {
        private long _seconds;

        public override long GetTimestamp() => _seconds++;

        public override long TimestampFrequency => 1;
    }
}
