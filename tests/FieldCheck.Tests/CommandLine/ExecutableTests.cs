using System.Diagnostics;
using System.Text.Json.Nodes;

namespace FieldCheck.Tests.CommandLine;

/// <summary>What only the process itself can show: pipes, signals, encodings and what it loads.</summary>
public sealed class ExecutableTests : IDisposable
{
    private const string Bench = """
        format = 1
        title  = "Bench at the d\u00e9p\u00f4t"
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

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("fieldcheck-");

    [Fact]
    public void Pipe_TakesABeamAndGivesJson()
    {
        (int status, string output, string error) = Executable.Start(["check", "-", "--json"]).Finish(Bench);

        Assert.Equal((0, ""), (status, error));
        JsonNode answer = JsonNode.Parse(output)!;
        Assert.Equal("Bench at the d\u00e9p\u00f4t", (string?)answer["title"]);
        Assert.Equal(7500, (double)answer["combinations"]![0]!["reactions"]![0]!["vertical_N"]!, 1e-6);
    }

    [Fact]
    public void NoTerminal_EndsByItselfWithTheExample()
    {
        (int status, string output, string error) = Executable.Start([]).Finish();

        Assert.Equal(0, status);
        Assert.Contains("Bearer of a loading platform", output);
        Assert.Contains("for the form", error);
    }

    [Theory]
    [InlineData(2, "--nothing")]
    [InlineData(2, "check", "nowhere.toml")]
    [InlineData(0, "--help")]
    public void ExitStatus_ReachesTheShell(int expected, params string[] words) =>
        Assert.Equal(expected, Executable.Start(words).Finish().Status);

    [Theory]
    [InlineData("check")]
    [InlineData("working")]
    public void ClosedPipe_EndsQuietly(string command)
    {
        using Process process = Executable.Start([command, "-"]);

        // It cannot write before it has its input, and by then nobody reads.
        process.StandardOutput.Dispose();
        process.StandardInput.Write(Bench);
        process.StandardInput.Close();
        string error = process.StandardError.ReadToEnd();
        process.WaitForExit();

        Assert.Equal("", error);
        Assert.Equal(0, process.ExitCode);
    }

    [Fact]
    public void FullDisk_IsSaidAndIsNoSuccess()
    {
        if (!File.Exists("/dev/full"))
        {
            return;
        }

        (int status, _, string error) = Executable.StartFromShell("exec \"$0\" --version > /dev/full").Finish();

        Assert.Equal(2, status);
        Assert.StartsWith("fieldcheck: the output cannot be written: ", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("TERM", 128 + 15)]
    [InlineData("INT", 128 + 2)]
    public void Signal_EndsItWith128AndItsNumber(string signal, int expected)
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        // It waits for its input, which never comes. A shell that runs the tests in the background has interrupts
        // ignored in all that it starts, which is undone here; one sent before that is lost.
        using Process process = Executable.StartFromShell("exec env --default-signal=INT,TERM \"$0\" check -");
        do
        {
            using Process kill = Process.Start("kill", [$"-{signal}", $"{process.Id}"]);
            kill.WaitForExit();
        }
        while (!process.WaitForExit(TimeSpan.FromSeconds(1)));

        Assert.Equal(expected, process.ExitCode);
    }

    [Theory]
    [InlineData("check", "-")]
    [InlineData("check", "-", "--json")]
    [InlineData("check", "-", "--plain")]
    [InlineData("working", "-")]
    [InlineData("completion", "bash")]
    [InlineData("presets")]
    [InlineData("--help")]
    [InlineData("--paths")]
    public void WithoutTheForm_NothingOfTheToolkitLoads(params string[] words)
    {
        string list = Path.Combine(_folder.FullName, "loaded.txt");

        (int status, _, _) = Executable
            .Start(words, ("DOTNET_STARTUP_HOOKS", typeof(StartupHook).Assembly.Location), (StartupHook.Variable, list))
            .Finish(Bench);

        string[] loaded = File.ReadAllLines(list);
        Assert.Equal(0, status);
        Assert.Contains("fieldcheck", loaded);
        Assert.DoesNotContain(loaded, name => name.StartsWith("Terminal.Gui", StringComparison.Ordinal));
    }

    public void Dispose() => _folder.Delete(recursive: true);
}
