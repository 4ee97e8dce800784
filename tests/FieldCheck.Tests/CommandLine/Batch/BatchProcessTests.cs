using System.Diagnostics;
using System.Text.Json.Nodes;

namespace FieldCheck.Tests.CommandLine.Batch;

/// <summary>What only the process itself can show of a batch: pipes and signals.</summary>
public sealed class BatchProcessTests : IDisposable
{
    private const string Bench = """
        format = 1
        [[span]]
        length = "4 m"
        [[support]]
        joint = 0
        kind  = "pin"
        [[support]]
        joint = 1
        kind  = "roller"
        """;

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("fieldcheck-");

    [Fact]
    public void ReaderThatGoesAway_EndsAnEndlessBatchQuietly()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        string file = Beam();

        using Process process = Executable.StartFromShell($"yes '{file}' 2>/dev/null | \"$0\" batch - | head -n 3");
        if (!process.WaitForExit(TimeSpan.FromMinutes(1)))
        {
            process.Kill(entireProcessTree: true);
        }

        (int status, string output, string error) =
            (process.ExitCode, process.StandardOutput.ReadToEnd(), process.StandardError.ReadToEnd());
        Assert.Equal((0, ""), (status, error));
        string[] lines = output.TrimEnd('\n').Split('\n');
        Assert.Equal([file, file, file], lines.Select(line => (string)JsonNode.Parse(line)!["file"]!));
    }

    [Fact]
    public void NamesThatComeOneByOne_AreAnsweredBeforeTheNextOne()
    {
        string file = Beam();
        using Process process = Executable.Start(["batch", "-"]);

        for (int i = 0; i < 3; i++)
        {
            process.StandardInput.Write(file + "\n");
            process.StandardInput.Flush();
            Assert.Equal(file, (string)JsonNode.Parse(process.StandardOutput.ReadLine()!)!["file"]!);
        }

        process.StandardInput.Close();
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
    }

    [Theory]
    [InlineData("INT", 130)]
    [InlineData("TERM", 143)]
    public void Signal_EndsItAtOnceWithWholeLines(string signal, int expected)
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        string list = Path.Combine(_folder.FullName, "list.txt");
        string answers = Path.Combine(_folder.FullName, "answers.jsonl");
        string file = Beam();
        File.WriteAllLines(list, Enumerable.Repeat(file, 500_000));
        using Process process = Executable.StartFromShell(
            $"exec env --default-signal=INT,TERM \"$0\" batch - < '{list}' > '{answers}'");
        while (!process.HasExited && !(File.Exists(answers) && new FileInfo(answers).Length > 20_000))
        {
            Thread.Sleep(5);
        }

        using Process kill = Process.Start("kill", [$"-{signal}", $"{process.Id}"]);
        kill.WaitForExit();
        process.WaitForExit();

        Assert.Equal(expected, process.ExitCode);
        string output = File.ReadAllText(answers);
        Assert.EndsWith("}\n", output, StringComparison.Ordinal);
        string[] lines = output.TrimEnd('\n').Split('\n');
        Assert.InRange(lines.Length, 1, 499_999);
        Assert.All(lines, line => Assert.StartsWith("{\"format\":1,", line, StringComparison.Ordinal));
        Assert.Equal(file, (string)JsonNode.Parse(lines[^1])!["file"]!);
    }

    [Fact]
    public void SignalWhileNobodyReads_EndsItToo()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        string list = Path.Combine(_folder.FullName, "list.txt");
        File.WriteAllLines(list, Enumerable.Repeat(Beam(), 100_000));
        using Process process = Executable.StartFromShell($"exec env --default-signal=INT \"$0\" batch - < '{list}'");

        // The pipe is full once its first line has come and nothing is taken any more.
        process.StandardOutput.ReadLine();
        Thread.Sleep(500);
        using Process kill = Process.Start("kill", ["-INT", $"{process.Id}"]);
        kill.WaitForExit();

        Assert.True(process.WaitForExit(TimeSpan.FromMinutes(1)));
        Assert.Equal(130, process.ExitCode);
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private string Beam()
    {
        string path = Path.Combine(_folder.FullName, "bench.toml");
        File.WriteAllText(path, Bench);
        return path;
    }
}
