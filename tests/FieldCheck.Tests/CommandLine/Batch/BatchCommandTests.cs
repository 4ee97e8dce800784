using System.Text.Json.Nodes;
using FieldCheck.CommandLine;
using FieldCheck.CommandLine.Batch;
using FieldCheck.Sheet.Catalogue;

namespace FieldCheck.Tests.CommandLine.Batch;

public sealed class BatchCommandTests : IDisposable
{
    private const string Bench = """
        format = 1
        title  = "Bench"
        [[span]]
        length = "4 m"
        [[support]]
        joint = 0
        kind  = "pin"
        [[support]]
        joint = 1
        kind  = "roller"
        [[load]]
        kind  = "point"
        at    = "1 m"
        force = "10 kN"
        """;

    private const string Swing = """
        format = 1
        [[span]]
        length = "4 m"
        [[support]]
        joint = 0
        kind  = "pin"
        """;

    private readonly Surroundings _around = new();

    [Theory]
    [InlineData("1")]
    [InlineData("2")]
    [InlineData("7")]
    public void Lines_AreThoseOfCheck(string jobs)
    {
        Fill();
        string[] files = ["swing.toml", "bench.toml", "nowhere.toml", "broken.toml", "bench.toml", "wide.toml"];
        string[] options = ["--at", "mid 1", "--units", "us"];
        using Surroundings other = new();
        int expected = Program.Run(["check", .. files, "--json", .. options], _around.Environment() with { Output = other.Output });

        int status = _around.Run(["batch", .. files, "--jobs", jobs, .. options]);

        Assert.Equal((3, expected), (status, expected));
        Assert.Equal(other.Written, _around.Written);
        Assert.Equal(6, Lines().Length);
    }

    [Fact]
    public void ProblemsOfFiles_GoToStandardErrorInTheSameOrder()
    {
        Fill();

        Assert.Equal(2, _around.Run("batch", "nowhere.toml", "bench.toml", "broken.toml"));

        string[] told = _around.Complaints.TrimEnd('\n').Split('\n');
        Assert.Equal("nowhere.toml: there is no such file.", told[0]);
        Assert.StartsWith("broken.toml:", told[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Folder_IsItsBeamFilesByNameAndNotDeeper()
    {
        foreach (string name in new[] { "yard/b.toml", "yard/a.toml", "yard/Z.toml", "yard/notes.txt", "yard/.c.toml", "yard/deep/d.toml" })
        {
            _around.Write(name, Bench);
        }

        Assert.Equal(0, _around.Run("batch", "yard"));

        Assert.Equal(
            ["Z.toml", "a.toml", "b.toml"],
            Lines().Select(line => Path.GetRelativePath("yard", (string)line["file"]!)));
    }

    [Fact]
    public void FolderWithoutBeams_IsALineWithAnError()
    {
        _around.Folder.CreateSubdirectory("yard");

        Assert.Equal(2, _around.Run("batch", "yard"));

        JsonNode line = Assert.Single(Lines());
        Assert.Equal("yard", (string?)line["file"]);
        Assert.Equal("there is no *.toml in this folder.", (string?)line["error"]!["messages"]![0]!["text"]);
    }

    [Fact]
    public void Dash_ReadsNamesOfFilesAndFolders()
    {
        using Surroundings listed = new() { Input = "\ufeffbench.toml\r\nyard\n-\n" };
        listed.Write("bench.toml", Bench);
        listed.Write("yard/one.toml", Bench);

        Assert.Equal(2, listed.Run("batch", "bench.toml", "-"));

        string[] files = [.. listed.Written.TrimEnd('\n').Split('\n').Select(line => (string)JsonNode.Parse(line)!["file"]!)];
        Assert.Equal(["bench.toml", "bench.toml", Path.Combine("yard", "one.toml"), "-"], files);
    }

    [Fact]
    public void NoNamesAtAll_IsNothingToDo()
    {
        Assert.Equal(0, _around.Run("batch", "-"));
        Assert.Equal(("", ""), (_around.Written, _around.Complaints));
    }

    [Fact]
    public void TenThousandNames_AreAnsweredInOrder()
    {
        // Every hundredth is a beam, the rest is not there.
        using Surroundings listed = new()
        {
            Input = string.Join('\n', Enumerable.Range(0, 10_000).Select(i => i % 100 == 0 ? $"./{new string('/', i / 100)}bench.toml" : $"none-{i}")),
        };
        listed.Write("bench.toml", Bench);

        Assert.Equal(2, listed.Run("batch", "-"));

        string[] lines = listed.Written.TrimEnd('\n').Split('\n');
        Assert.Equal(10_000, lines.Length);
        Assert.Equal(
            listed.Input.Split('\n'),
            lines.Select(line => line["{\"format\":1,\"file\":\"".Length..line.IndexOf("\",", "{\"format\":1,\"file\":\"".Length, StringComparison.Ordinal)]));
        Assert.Equal(100, lines.Count(line => line.Contains("\"vertical_N\":7500", StringComparison.Ordinal)));
    }

    [Fact]
    public void ProgramThatFailsAtOneFile_SaysSoInItsLine()
    {
        // A folder to start from that is no full path: nothing can be found from there, and nobody expects it.
        CommandEnvironment broken = _around.Environment() with { CurrentFolder = "nowhere" };

        BatchLine line = new BatchWorker(new(SectionCatalogue.BuiltIn(), null, Option.At), broken).Check(new("a.toml"));

        Assert.Equal(4, line.Status);
        Assert.Equal("program", (string?)JsonNode.Parse(line.Json)!["error"]!["kind"]);
        Assert.StartsWith("a.toml:\nfieldcheck: the program failed.", line.Fault, StringComparison.Ordinal);
    }

    [Fact]
    public void OutputThatCannotBeWritten_EndsAnEndlessBatch()
    {
        CommandEnvironment full = _around.Environment() with
        {
            Output = new FullDisk(),
            OpenInput = () => new EndlessNames(),
        };

        Assert.Equal(2, Program.Run(["batch", "-"], full));
        Assert.Contains("the output cannot be written", _around.Complaints);
    }

    public void Dispose() => _around.Dispose();

    private void Fill()
    {
        _around.Write("bench.toml", Bench);
        _around.Write("swing.toml", Swing);
        _around.Write("broken.toml", Bench.Replace("10 kN", "10 furlongs", StringComparison.Ordinal));
        _around.Write("wide.toml", Bench.Replace("Bench", "B\u00fchne \u202e", StringComparison.Ordinal));
    }

    private JsonNode[] Lines() => [.. _around.Written.TrimEnd('\n').Split('\n').Select(line => JsonNode.Parse(line)!)];

    private sealed class FullDisk : StringWriter
    {
        public override void Write(string? value) => throw new IOException("No space left on device", 28);
    }

    private sealed class EndlessNames : MemoryStream
    {
        public override int Read(byte[] buffer, int offset, int count)
        {
            buffer.AsSpan(offset, count).Fill((byte)'\n');
            buffer[offset] = (byte)'x';
            return count;
        }

        public override int Read(Span<byte> buffer)
        {
            buffer.Fill((byte)'\n');
            buffer[0] = (byte)'x';
            return buffer.Length;
        }
    }
}
