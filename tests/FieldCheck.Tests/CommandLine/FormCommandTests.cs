using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Tests.CommandLine;

public sealed class FormCommandTests : IDisposable
{
    private const string Bench = """
        format = 1
        title  = "Bench"
        [[span]]
        length = "4 m"
        """;

    private readonly Surroundings _terminal = new() { IsTerminal = true };
    private readonly Surroundings _pipe = new();

    [Theory]
    [InlineData("chekc", "check")]
    [InlineData("json", "--json")]
    public void MistypedCommand_WithoutATerminalToo_AsksWhatWasMeant(string typed, string meant)
    {
        Assert.Equal(2, _pipe.Run(typed));

        Assert.Equal("", _pipe.Written);
        Assert.Equal(
            $"fieldcheck: there is no file and no command {typed}. Did you mean {meant}?\n"
            + $"For a new beam of that name: fieldcheck {typed}.toml\n",
            _pipe.Complaints);
    }

    [Fact]
    public void NoFile_OpensTheExample()
    {
        Assert.Equal(0, _terminal.Run());

        Assert.True(_terminal.Form!.IsExample);
        Assert.Null(_terminal.Form.Path);
        Assert.Equal(PresetLibrary.Example().Text, _terminal.Form.Origin);
        Assert.NotEmpty(_terminal.Form.Document.Spans);
        Assert.Equal("", _terminal.Written + _terminal.Complaints);
    }

    [Fact]
    public void File_OpensThatBeam()
    {
        _terminal.Write("job/bench.toml", Bench);
        string name = Path.Combine("job", "bench.toml");

        Assert.Equal(0, _terminal.Run(name));

        Assert.False(_terminal.Form!.IsExample);
        Assert.Equal((name, "Bench"), (_terminal.Form.Path, _terminal.Form.Document.Title));
        Assert.Equal(Bench, _terminal.Form.Origin!.Text);
        string here = _terminal.Folder.FullName;
        Assert.Equal<string>(
            [Path.Combine(here, "job", "presets"), Path.Combine(here, "presets")], _terminal.Form.Folders.SitePresets);
    }

    [Fact]
    public void FileThatDoesNotExist_OpensAnEmptyBeamOfThatName()
    {
        Assert.Equal(0, _terminal.Run("new.toml"));

        Assert.Equal("new.toml", _terminal.Form!.Path);
        Assert.Equal(new BeamDocument(), _terminal.Form.Document);
        Assert.Null(_terminal.Form.Origin);
    }

    [Fact]
    public void FileWithACellThatDoesNotRead_OpensAllTheSame()
    {
        _terminal.Write("half.toml", Bench.Replace("4 m", "long", StringComparison.Ordinal));

        Assert.Equal(0, _terminal.Run("half.toml"));

        Assert.Equal("long", _terminal.Form!.Document.Spans[0].Length);
    }

    [Fact]
    public void BrokenFile_KeepsTheFormFromOpening()
    {
        _terminal.Write("broken.toml", "format = 1\n[[span]\n");

        Assert.Equal(2, _terminal.Run("broken.toml"));

        Assert.Null(_terminal.Form);
        Assert.StartsWith("broken.toml:2:", _terminal.Complaints, StringComparison.Ordinal);
    }

    [Fact]
    public void Folder_KeepsTheFormFromOpening()
    {
        _terminal.Folder.CreateSubdirectory("job");

        Assert.Equal(2, _terminal.Run("job"));

        Assert.Null(_terminal.Form);
        Assert.Equal("job: it is a folder, not a file.\n", _terminal.Complaints);
    }

    [Theory]
    [InlineData("chekc", "check")]
    [InlineData("preset", "presets")]
    [InlineData("help", "--help")]
    [InlineData("version", "--version")]
    public void MistypedCommand_IsNotTakenForANewBeam(string typed, string meant)
    {
        Assert.Equal(2, _terminal.Run(typed));

        Assert.Null(_terminal.Form);
        Assert.Equal(
            $"fieldcheck: there is no file and no command {typed}. Did you mean {meant}?\n"
            + $"For a new beam of that name: fieldcheck {typed}.toml\n",
            _terminal.Complaints);
    }

    [Fact]
    public void FileNamedLikeAMistypedCommand_Opens()
    {
        _terminal.Write("chekc", Bench);

        Assert.Equal(0, _terminal.Run("chekc"));

        Assert.Equal("Bench", _terminal.Form!.Document.Title);
    }

    [Theory]
    [InlineData(null, false)]
    [InlineData("", false)]
    [InlineData("1", true)]
    public void NoColorVariable_CountsUnlessEmpty(string? value, bool expected)
    {
        if (value is not null)
        {
            _terminal.Variables["NO_COLOR"] = value;
        }

        _terminal.Run();

        Assert.Equal(expected, _terminal.Form!.NoColor);
    }

    [Fact]
    public void NoColorOption_Counts()
    {
        _terminal.Run("--no-color");

        Assert.True(_terminal.Form!.NoColor);
    }

    [Fact]
    public void NoTerminalAndNoFile_PrintsTheExampleAndSaysHowToGetTheForm()
    {
        Assert.Equal(0, _pipe.Run());

        Assert.Null(_pipe.Form);
        Assert.Contains("Bearer of a loading platform", _pipe.Written);
        Assert.Equal(
            "fieldcheck: this is the built-in example. For your own beam: fieldcheck check FILE\n"
            + "fieldcheck: for the form, start it in a terminal and leave standard input and output as they are.\n",
            _pipe.Complaints);
    }

    [Fact]
    public void NoTerminal_PrintsTheCheckOfTheFile()
    {
        _pipe.Write("swing.toml", Bench);

        Assert.Equal(3, _pipe.Run("swing.toml"));

        Assert.Contains("CAN MOVE", _pipe.Written);
        Assert.Contains("for the form", _pipe.Complaints);
    }

    [Fact]
    public void NoTerminalAndNoSuchFile_IsAnError()
    {
        Assert.Equal(2, _pipe.Run("new.toml"));

        Assert.Equal("", _pipe.Written);
        Assert.StartsWith("new.toml: there is no such file.\n", _pipe.Complaints, StringComparison.Ordinal);
    }

    [Fact]
    public void Dash_PrintsTheCheckOfStandardInput()
    {
        using Surroundings piped = new() { IsTerminal = true, Input = Bench };

        Assert.Equal(3, piped.Run("-"));

        Assert.Null(piped.Form);
        Assert.Contains("CAN MOVE", piped.Written);
    }

    [Fact]
    public void DumbTerminal_TalksInLines()
    {
        _terminal.Variables["TERM"] = "dumb";

        Assert.Equal(0, _terminal.Run());

        Assert.Null(_terminal.Form);
        Assert.StartsWith("FieldCheck in lines.", _terminal.Written, StringComparison.Ordinal);
    }

    [Fact]
    public void Plain_TalksInLines()
    {
        using Surroundings terminal = new() { IsTerminal = true, Input = "load 2 size 3 kN\nsave mine\nleave\n" };

        Assert.Equal(0, terminal.Run("--plain"));

        Assert.Null(terminal.Form);
        Assert.Contains("Saved mine.toml", terminal.Written);
        Assert.Contains("3 kN", File.ReadAllText(Path.Combine(terminal.Folder.FullName, "mine.toml")));
        Assert.Equal("", terminal.Complaints);
    }

    [Fact]
    public void Plain_WithoutATerminal_PrintsTheCheckAsSentences()
    {
        _pipe.Write("swing.toml", Bench);

        Assert.Equal(3, _pipe.Run("--plain", "swing.toml"));

        Assert.StartsWith("Check of a beam: Bench.", _pipe.Written, StringComparison.Ordinal);
        Assert.Contains("for the form", _pipe.Complaints);
    }

    [Fact]
    public void Plain_WithDash_PrintsTheCheckOfStandardInput()
    {
        using Surroundings piped = new() { IsTerminal = true, Input = Bench };

        Assert.Equal(3, piped.Run("--plain", "-"));

        Assert.StartsWith("Check of a beam: Bench.", piped.Written, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("en_US.UTF-8", "dépôt")]
    [InlineData("en_US.utf8", "dépôt")]
    [InlineData("C", "depot")]
    [InlineData(null, "depot")]
    public void Plain_IsAsciiWhereTheTerminalIsNotUtf8(string? locale, string expected)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        if (locale is not null)
        {
            _terminal.Variables["LANG"] = locale;
        }

        _terminal.Write("bench.toml", Bench.Replace("Bench", "dépôt", StringComparison.Ordinal));

        Assert.Equal(0, _terminal.Run("--plain", "bench.toml"));

        Assert.Contains($"bench: {expected}. 1 span", _terminal.Written);
    }

    public void Dispose()
    {
        _terminal.Dispose();
        _pipe.Dispose();
    }
}
