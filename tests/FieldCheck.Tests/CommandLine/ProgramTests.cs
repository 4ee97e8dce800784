using FieldCheck.CommandLine;

namespace FieldCheck.Tests.CommandLine;

public sealed class ProgramTests : IDisposable
{
    private readonly Surroundings _around = new();

    [Fact]
    public void WrongUsage_IsSaidOnStandardErrorAlone()
    {
        int status = _around.Run("chekc", "a.toml");

        Assert.Equal(2, status);
        Assert.Equal("", _around.Written);
        Assert.Equal(
            "fieldcheck: There is no command chekc. Did you mean check?\nTry: fieldcheck --help\n", _around.Complaints);
    }

    [Fact]
    public void Help_LeadsWithExamplesAndNamesEveryCommandAndOption()
    {
        int status = _around.Run("--help");

        Assert.Equal(0, status);
        Assert.Equal("", _around.Complaints);
        Assert.True(Where("Examples") < Where("Commands"));
        Assert.All(CommandWords.All, command => Assert.Contains("  " + command, _around.Written));
        Assert.All(
            Option.All.Where(option => option.Commands.IsEmpty),
            option => Assert.Contains("  " + option.Name, _around.Written));

        int Where(string heading) => _around.Written.IndexOf(heading, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("check", 4)]
    [InlineData("batch", 3)]
    [InlineData("working", 5)]
    public void HelpOfACommand_NamesEveryOptionOfIt(string command, int options)
    {
        _around.Run(command, "--help");

        string[] own = [.. Option.All.Where(option => option.Commands.Contains(command)).Select(option => option.Name)];
        Assert.Equal(options, own.Length);
        Assert.All(own, option => Assert.Contains("  " + option, _around.Written));
    }

    [Theory]
    [InlineData("--help")]
    [InlineData("check", "--help")]
    [InlineData("batch", "--help")]
    [InlineData("completion", "--help")]
    [InlineData("working", "--help")]
    [InlineData("presets", "--help")]
    public void Help_FitsEightyColumnsOfPlainText(params string[] words)
    {
        _around.Run(words);

        Assert.All(_around.Written.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
        Assert.All(_around.Written, letter => Assert.True(char.IsAscii(letter)));
    }

    [Fact]
    public void Version_IsNameAndNumber()
    {
        int status = _around.Run("--version");

        Assert.Equal(0, status);
        Assert.Matches(@"\Afieldcheck \d+\.\d+\.\d+\n\z", _around.Written);
    }

    [Fact]
    public void Paths_NamesTheFoldersInUse()
    {
        string data = Path.Combine(_around.Folder.FullName, "data");
        _around.Variables["XDG_DATA_HOME"] = _around.Variables["APPDATA"] = data;

        int status = _around.Run("--paths");

        Assert.Equal(0, status);
        Assert.Contains(Path.Combine(data, "fieldcheck", "presets"), _around.Written);
        Assert.Contains(Path.Combine(_around.Folder.FullName, "presets"), _around.Written);
    }

    [Fact]
    public void FaultOfTheProgram_HasItsOwnStatusAndLeavesTheOutputClean()
    {
        CommandEnvironment broken = _around.Environment() with
        {
            Variable = _ => throw new InvalidOperationException("not the beam's fault"),
        };

        int status = Program.Run(["--paths"], broken);

        Assert.Equal(4, status);
        Assert.Equal("", _around.Written);
        Assert.StartsWith("fieldcheck: the program failed.", _around.Complaints, StringComparison.Ordinal);
        Assert.Contains("not the beam's fault", _around.Complaints);
    }

    [Fact]
    public void OutputThatCannotBeWritten_IsNotASuccess()
    {
        using Surroundings full = new() { Output = new FullDisk() };

        Assert.Equal(2, full.Run("--version"));
        Assert.StartsWith("fieldcheck: the output cannot be written", full.Complaints, StringComparison.Ordinal);
    }

    public void Dispose() => _around.Dispose();

    private sealed class FullDisk : StringWriter
    {
        public override void Write(string? value) => throw new IOException("No space left on device", 28);
    }
}
