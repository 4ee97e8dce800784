using FieldCheck.CommandLine;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Tests.CommandLine;

public sealed class ArgumentsTests
{
    [Fact]
    public void NothingTyped_AsksForTheFormWithoutAFile() => Assert.Equal(new Request.Form(null), Asked());

    [Fact]
    public void OneName_AsksForTheFormWithThatFile() =>
        Assert.Equal(new Request.Form("bearer.toml"), Asked("bearer.toml"));

    [Fact]
    public void TwoDashes_MakeACommandsNameAFile() => Assert.Equal(new Request.Form("check"), Asked("--", "check"));

    [Fact]
    public void TwoDashes_MakeAnOptionsNameAFile()
    {
        Request.Check check = Assert.IsType<Request.Check>(Asked("check", "--", "--json"));

        Assert.Equal<string>(["--json"], check.Files);
        Assert.False(check.IsJson);
    }

    [Fact]
    public void Check_TakesItsOptionsInAnyOrderAndBothSpellings()
    {
        Request.Check check = Assert.IsType<Request.Check>(
            Asked("check", "--at", "A + 4 ft", "one.toml", "--units=us", "--json", "-", "--at=mid 1"));

        Assert.Equal<string>(["one.toml", "-"], check.Files);
        Assert.Equal<string>(["A + 4 ft", "mid 1"], check.Places);
        Assert.Equal(UnitSystem.Us, check.Units);
        Assert.True(check.IsJson);
    }

    [Fact]
    public void Working_TakesItsOptionsInAnyOrderAndBothSpellings()
    {
        Request.Working working = Assert.IsType<Request.Working>(
            Asked("working", "--about", "A + 4 ft", "--short", "one.toml", "--units=si", "--no-step-names", "--combination=all"));

        Assert.Equal(
            new Request.Working("one.toml")
            {
                About = "A + 4 ft",
                Combination = "all",
                IsShort = true,
                HasStepNames = false,
                Units = UnitSystem.Si,
            },
            working);
        Assert.Equal(new Request.Working("-"), Asked("working", "-"));
    }

    [Fact]
    public void Batch_TakesItsOptionsInAnyOrderAndBothSpellings()
    {
        Request.Batch batch = Assert.IsType<Request.Batch>(
            Asked("batch", "--at", "mid 1", "yard", "--jobs=2", "-", "--units", "si"));

        Assert.Equal<string>(["yard", "-"], batch.Names);
        Assert.Equal<string>(["mid 1"], batch.Places);
        Assert.Equal((2, UnitSystem.Si), (batch.Jobs, batch.Units));
        Assert.Null(Assert.IsType<Request.Batch>(Asked("batch", "yard")).Jobs);
    }

    [Fact]
    public void Place_MayBeginWithAMinus() =>
        Assert.Equal<string>(["-4 ft"], Assert.IsType<Request.Check>(Asked("check", "a.toml", "--at", "-4 ft")).Places);

    [Theory]
    [InlineData("check", "--help")]
    [InlineData("-h", "check")]
    public void HelpWithACommand_AsksForThatCommandsPage(params string[] words) =>
        Assert.Equal(new Request.Help("check"), Asked(words));

    [Fact]
    public void Help_WinsOverWhatElseIsMissing() => Assert.IsType<Request.Help>(Asked("check", "--json", "--help"));

    [Fact]
    public void PlainAndNoColor_StandAnywhere()
    {
        Arguments arguments = Accepted("--plain", "presets", "--no-color");

        Assert.Equal(new Arguments(new Request.Presets(), NoColor: true, Plain: true), arguments);
    }

    [Theory]
    [InlineData("There is no option --jsno. Did you mean --json?", "check", "a.toml", "--jsno")]
    [InlineData("There is no option --frobnicate.", "--frobnicate")]
    [InlineData("There is no option -x.", "-x")]
    [InlineData("There is no command chekc. Did you mean check?", "chekc", "a.toml")]
    [InlineData("There is no command print.", "print", "a.toml", "b.pdf")]
    [InlineData("There is no command rport. Did you mean report?", "rport", "a.toml", "--output", "a.pdf")]
    [InlineData("There is no command solve.", "solve", "a.toml", "b.toml")]
    [InlineData("The form takes one file. To check several: fieldcheck check a.toml b.toml.", "a.toml", "b.toml")]
    [InlineData("check needs a file: fieldcheck check bearer.toml, or - for standard input.", "check", "--json")]
    [InlineData("- stands twice: standard input can be read once.", "check", "-", "-")]
    [InlineData("--units takes us or si, not 'metric'.", "check", "a.toml", "--units", "metric")]
    [InlineData("--at needs a value after it: PLACE.", "check", "a.toml", "--at")]
    [InlineData("--at needs a value after it: PLACE.", "check", "a.toml", "--at", "--json")]
    [InlineData("--at needs a value after it: PLACE.", "check", "a.toml", "--at=")]
    [InlineData("--working is text, and --json is not: ask for one of them.", "check", "a.toml", "--json", "--working")]
    [InlineData("--json takes no value.", "check", "a.toml", "--json=yes")]
    [InlineData("--json belongs to the command check: fieldcheck check FILE --json.", "a.toml", "--json")]
    [InlineData("--at belongs to the commands check and batch: fieldcheck check FILE --at PLACE.", "presets", "--at", "end")]
    [InlineData("--json belongs to the command check: fieldcheck check FILE --json.", "working", "a.toml", "--json")]
    [InlineData("--about belongs to the command working: fieldcheck working FILE --about PLACE.", "check", "a.toml", "--about", "B")]
    [InlineData("--short belongs to the commands working and report: fieldcheck working FILE --short.", "a.toml", "--short")]
    [InlineData("--units belongs to the commands check, batch, working and report: fieldcheck check FILE --units us or si.", "a.toml", "--units", "us")]
    [InlineData("--force belongs to the command report: fieldcheck report FILE --force.", "check", "a.toml", "--force")]
    [InlineData("--jobs belongs to the command batch: fieldcheck batch FILE --jobs N.", "check", "a.toml", "--jobs", "2")]
    [InlineData("--jobs takes a whole number from 1 to 1024, not '0'.", "batch", "a.toml", "--jobs", "0")]
    [InlineData("--jobs takes a whole number from 1 to 1024, not '1.5'.", "batch", "a.toml", "--jobs=1.5")]
    [InlineData("--jobs takes a whole number from 1 to 1024, not '1025'.", "batch", "a.toml", "--jobs=1025")]
    [InlineData("batch needs a file or a folder: fieldcheck batch bearers, or - for names on standard input.", "batch")]
    [InlineData("- stands twice: standard input can be read once.", "batch", "-", "-")]
    [InlineData("A file has no name: '' stands among the files.", "batch", "a.toml", "")]
    [InlineData("report needs a file: fieldcheck report bearer.toml --output bearer.pdf.", "report", "--output", "a.pdf")]
    [InlineData("report needs the file to write: --output bearer.pdf, or .html, .md, .txt.", "report", "a.toml")]
    [InlineData("report takes one file, and 'b.toml' stands after it.", "report", "a.toml", "b.toml", "--output", "a.pdf")]
    [InlineData("report writes one file, and 'b.pdf' stands after the first.", "report", "a.toml", "--output", "a.pdf", "--output", "b.pdf")]
    [InlineData("--output takes a name that ends in .pdf, .html, .md or .txt, which says what to write; not 'a.doc'.", "report", "a.toml", "--output", "a.doc")]
    [InlineData("The file has no name: '' stands where it should.", "report", "", "--output", "a.pdf")]
    [InlineData("--units takes us or si, not 'metric'.", "working", "a.toml", "--units", "metric")]
    [InlineData("There is no option --abuot. Did you mean --about?", "working", "a.toml", "--abuot", "B")]
    [InlineData("--about needs a value after it: PLACE.", "working", "a.toml", "--about")]
    [InlineData("There is no command worknig. Did you mean working?", "worknig", "a.toml", "b.toml")]
    [InlineData("working needs a file: fieldcheck working bearer.toml, or - for standard input.", "working", "--short")]
    [InlineData("working takes one file, and 'b.toml' stands after it.", "working", "a.toml", "b.toml")]
    [InlineData("The file has no name: '' stands where it should.", "working", "")]
    [InlineData("presets takes nothing after it, and 'mine' stands there.", "presets", "mine")]
    [InlineData("--paths takes nothing after it, and 'a.toml' stands there.", "--paths", "a.toml")]
    [InlineData("The file has no name: '' stands where it should.", "")]
    [InlineData("A file has no name: '' stands among the files.", "check", "a.toml", "")]
    public void WrongUsage_IsSaid(string expected, params string[] words) =>
        Assert.Equal(expected, Assert.IsType<Reading<Arguments>.Refused>(Arguments.Read([.. words])).Text);

    private static Request Asked(params string[] words) => Accepted(words).Request;

    private static Arguments Accepted(params string[] words) =>
        Assert.IsType<Reading<Arguments>.Accepted>(Arguments.Read([.. words])).Value;
}
