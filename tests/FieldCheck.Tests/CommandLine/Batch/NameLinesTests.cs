using FieldCheck.CommandLine.Batch;

namespace FieldCheck.Tests.CommandLine.Batch;

public sealed class NameLinesTests
{
    [Theory]
    [InlineData("", new string[0])]
    [InlineData("\n\n", new string[0])]
    [InlineData("a.toml", new[] { "a.toml" })]
    [InlineData("a.toml\nb.toml\n", new[] { "a.toml", "b.toml" })]
    [InlineData("a.toml\r\nb.toml\r\n", new[] { "a.toml", "b.toml" })]
    [InlineData(" two words .toml \n-\n--json\n", new[] { " two words .toml ", "-", "--json" })]
    public void EveryLineThatIsNotEmpty_IsAName(string text, string[] expected) =>
        Assert.Equal(expected.Select(name => new BatchName(name)), NameLines.Of("list", new StringReader(text)));

    [Fact]
    public void LineThatIsTooLong_IsRefusedAndTheRestGoesOn()
    {
        string text = new string('x', 40_000) + "\na.toml\n";

        BatchName[] names = [.. NameLines.Of("list", new StringReader(text))];

        Assert.Equal(2, names.Length);
        Assert.Equal(new string('x', 60) + "...", names[0].Name);
        Assert.Contains("too long", names[0].Refusal);
        Assert.Equal(new BatchName("a.toml"), names[1]);
    }

    [Fact]
    public void EndlessLine_IsRefusedWithoutBeingKept()
    {
        EndlessReader reader = new();

        BatchName first = NameLines.Of("list", reader).First();

        Assert.Contains("too long", first.Refusal);
        Assert.InRange(reader.Drawn, 1, 32_768);
    }

    [Fact]
    public void ZeroByte_IsNoPartOfAName()
    {
        BatchName name = Assert.Single(NameLines.Of("list", new StringReader("a.toml\0b.toml\0")));

        Assert.Equal("a.toml...", name.Name);
        Assert.Contains("zero byte", name.Refusal);
    }

    [Fact]
    public void ListThatBreaksOff_GivesWhatWasReadAndThenTheReason()
    {
        BatchName[] names = [.. NameLines.Of("list", new BrokenReader("a.toml\nb.to"))];

        // Half a name may name another file: but it is the last that was read, and is not thrown away in silence.
        Assert.Equal(["a.toml", "b.to", "list"], names.Select(name => name.Name));
        Assert.Equal("it cannot be read: gone", names[2].Refusal);
    }

    private sealed class EndlessReader : TextReader
    {
        internal int Drawn { get; private set; }

        public override int Read()
        {
            Drawn++;
            return 'x';
        }
    }

    private sealed class BrokenReader(string text) : TextReader
    {
        private int _at;

        public override int Read() => _at < text.Length ? text[_at++] : throw new IOException("gone");
    }
}
