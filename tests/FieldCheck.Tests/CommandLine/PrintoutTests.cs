using FieldCheck.CommandLine;

namespace FieldCheck.Tests.CommandLine;

public sealed class PrintoutTests : IDisposable
{
    private readonly StringWriter _output = new();
    private readonly StringWriter _error = new();

    [Fact]
    public void Result_GoesToStandardOutputWithALineEnd()
    {
        new Printout(_output, _error).Result("A  12.50 kN up");

        Assert.Equal("A  12.50 kN up\n", _output.ToString());
        Assert.Equal("", _error.ToString());
    }

    [Fact]
    public void Remark_GoesToStandardErrorOnly()
    {
        new Printout(_output, _error).Remark("no such file\n");

        Assert.Equal("", _output.ToString());
        Assert.Equal("no such file\n", _error.ToString());
    }

    [Theory]
    [InlineData("clear \u001b[2J the screen", "clear ?[2J the screen")]
    [InlineData("bell \a", "bell ?")]
    [InlineData("one-byte start of a command \u009b2J", "one-byte start of a command ?2J")]
    [InlineData("overwrite\rthis", "overwrite?this")]
    [InlineData("read \u202ebackwards", "read ?backwards")]
    [InlineData("two\nlines", "two\nlines")]
    [InlineData("d\u00e9p\u00f4t, 12'-6\"", "d\u00e9p\u00f4t, 12'-6\"")]
    public void TextOfOthers_CannotCommandTheTerminal(string text, string expected)
    {
        new Printout(_output, _error).Result(text);

        Assert.Equal(expected + "\n", _output.ToString());
    }

    [Theory]
    [InlineData(32)]
    [InlineData(unchecked((int)0x8007006D))]
    [InlineData(unchecked((int)0x800700E8))]
    public void ReaderGone_OutputEndsQuietly(int code)
    {
        FailingWriter gone = new(code);
        Printout printout = new(gone, _error);

        printout.Result("first");
        printout.Result("second");

        Assert.Equal(1, gone.Tries);
        Assert.Equal("", _error.ToString());
        Assert.Equal(ExitStatus.Holds, printout.Status);
    }

    [Fact]
    public void DiskFull_IsSaidOnceAndChangesTheStatus()
    {
        int noSpaceLeft = OperatingSystem.IsWindows() ? unchecked((int)0x80070070) : 28;
        Printout printout = new(new FailingWriter(noSpaceLeft), _error);

        printout.Result("first");
        printout.Result("second");

        Assert.Equal(
            "fieldcheck: the output cannot be written: the disk is full, and what was written before may be cut short.\n",
            _error.ToString());
        Assert.Equal(ExitStatus.NotUsable, printout.Status);
    }

    public void Dispose()
    {
        _output.Dispose();
        _error.Dispose();
    }

    private sealed class FailingWriter(int code) : StringWriter
    {
        public int Tries { get; private set; }

        public override void Write(string? value)
        {
            Tries++;
            throw new IOException("the write failed", code);
        }
    }
}
