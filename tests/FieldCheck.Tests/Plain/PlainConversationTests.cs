using FieldCheck.Plain;
using FieldCheck.Screen;

namespace FieldCheck.Tests.Plain;

/// <summary>Unsaved work, what the help says, and what only shows beside a whole conversation.</summary>
public sealed class PlainConversationTests
{
    [Fact]
    public void AcceptedAnswer_IsKeptAtOnceAndDroppedOnceSaved()
    {
        using Talk talk = new();
        Assert.Empty(talk.Kept);

        talk.Say("load 2 size 3 kN");
        Assert.Contains("force = \"3 kN\"", File.ReadAllText(Assert.Single(talk.Kept)));

        talk.Say("undo");
        Assert.Empty(talk.Kept);

        talk.Say("redo", "save mine");
        Assert.Empty(talk.Kept);
    }

    [Theory]
    [InlineData("yes", "3 kN")]
    [InlineData("no", "900 kg / 2")]
    [InlineData("show", "900 kg / 2")]
    public void WorkLeftBehind_IsOfferedAtTheNextStart(string answer, string size)
    {
        using Talk before = new();
        before.Say("load 2 size 3 kN").Happen(new PlainEvent.InputEnded());
        Assert.True(before.HasEnded);
        Abandon(before);

        using Talk after = new(folder: before.Folder);
        Assert.Contains("loading-platform (3 loads).\nTake it up again, yes or no? ", after.Written);
        after.Say("maybe");
        Assert.Equal("Answer yes or no.", after.Answer);
        after.Say(answer);

        Assert.Equal(size, after.Document.Loads[1].Force);
        Assert.Equal(answer == "yes", after.State.Form.IsUnsaved);
        string kept = Assert.Single(after.Kept);
        Assert.Equal(answer == "yes", Path.GetFileName(kept) != Abandoned);
    }

    [Fact]
    public void Stopped_KeepsTheWorkAndEnds()
    {
        using Talk talk = new();

        talk.Say("load 2", "3 kN").Happen(new PlainEvent.Happened(new ScreenEvent.Stopped()));

        Assert.True(talk.HasEnded);
        Assert.Contains("3 kN", File.ReadAllText(Assert.Single(talk.Kept)));
    }

    [Fact]
    public void Help_NamesEveryCommandAndEveryUsageRuns()
    {
        using Talk talk = new();
        talk.Say("help");
        string[] said = talk.Answer.Split('\n');

        Assert.All(PlainCommands.All, command =>
            Assert.Contains(said, line => line.StartsWith(command.Usage.Split(',')[0], StringComparison.Ordinal)));
        Assert.All(PlainCommands.All, command => Assert.All(
            command.Usage.Split(", "),
            usage => Assert.Same(command, PlainCommands.Of(usage))));
    }

    [Fact]
    public void EveryCommand_HasItsOwnWordAndIsInTheDocumentation()
    {
        IEnumerable<string> words = PlainCommands.All.SelectMany(command => command.OtherWords.Append(command.Word));
        string page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "plain.md"));

        Assert.Equal(words.Distinct(StringComparer.OrdinalIgnoreCase), words);
        Assert.All(PlainCommands.All, command =>
            Assert.Contains($"| `{command.Usage.Replace(", ", "`, `", StringComparison.Ordinal)}` | {command.Does} |", page));
    }

    [Theory]
    [InlineData("case roof_live name canopy", "canopy", "roof")]
    [InlineData("case roof live name canopy", "canopy", "roof")]
    [InlineData("case roof name canopy", "roof_live", "canopy")]
    [InlineData("case 1 name canopy", "canopy", "roof")]
    public void CaseOfSeveralWords_IsFoundByItsName(string line, string first, string second)
    {
        using Talk talk = new();
        File.WriteAllText(
            talk.PathOf("roof.toml"),
            "format = 1\n[[span]]\nlength = \"4 m\"\n[[load]]\nkind = \"point\"\ncase = \"roof_live\"\n"
                + "[[load]]\nkind = \"point\"\ncase = \"roof\"\n");

        talk.Say("open roof.toml", "stop", line);

        Assert.Equal([first, second], talk.Document.Loads.Select(load => load.Case));
    }

    [Fact]
    public void ControlCharactersOfAFile_DoNotReachTheTerminal()
    {
        using Talk talk = new();
        File.WriteAllText(talk.PathOf("evil.toml"), "format = 1\ntitle = \"\\u001b[2Jgone\"\n[[span]]\nlength = \"\\u001b]0;x\"\n");

        talk.Say("open evil.toml", "show", "problems", "more title");

        Assert.Contains("?[2Jgone", talk.Said);
        Assert.DoesNotContain('\u001b', talk.Said);
    }

    [Fact]
    public void KeyWithoutAColumn_ThatAPresetAsksFor_IsAskedInItsTurn()
    {
        using Talk talk = new();
        File.WriteAllText(talk.PathOf("ask.toml"), """
            format = 1
            ask = ["limits.deflection", "span[1].length"]
            [[span]]
            length = "4 m"
            [limits]
            deflection = "L/300"
            """);

        talk.Say("open ask.toml");
        Assert.EndsWith("\nLimits deflection (L/300)? ", talk.Said, StringComparison.Ordinal);
        talk.Say("L/250");
        Assert.EndsWith("\nLength of span 1 (4 m)? ", talk.Said, StringComparison.Ordinal);
        talk.Say("5");

        Assert.Equal(("L/250", "5 m"), (talk.Document.Limits!.Deflection, talk.Document.Spans[0].Length));
        Assert.EndsWith("\nNext? ", talk.Said, StringComparison.Ordinal);
    }

    private const string Abandoned = "abandoned.toml";

    // As if its process had gone.
    [Theory]
    [InlineData("working about Z", "Z is no place: no support is called Z")]
    [InlineData("working 3", "Working how? As: working, working short, working about B, working save NAME.")]
    [InlineData("working about", "Working how? As: working, working short, working about B, working save NAME.")]
    public void WorkingAskedWrongly_IsSaid(string line, string said)
    {
        using Talk talk = new();

        Assert.StartsWith(said, talk.Say(line).Answer);
    }

    [Fact]
    public void Working_IsSavedAboutThePointLastNamed_AndNeverOverAFileUnasked()
    {
        using Talk talk = new();
        talk.Say("working about B short", "working save site", "working", "working save site");
        string about = File.ReadAllText(talk.PathOf("site.txt"));
        Assert.StartsWith("Working by hand: Bearer of a loading platform", about);
        Assert.Contains("site.txt is there already.", talk.Written);

        talk.Say("perhaps");
        Assert.Equal("Answer overwrite, name or back.", talk.Answer);
        talk.Say("back");
        Assert.Equal("Not saved.", talk.Answer);
        Assert.Equal(about, File.ReadAllText(talk.PathOf("site.txt")));

        talk.Say("working save", "second");
        Assert.True(File.Exists(talk.PathOf("second.txt")));
        talk.Say("working save site", "overwrite");
        Assert.Equal(File.ReadAllText(talk.PathOf("second.txt")), File.ReadAllText(talk.PathOf("site.txt")));
    }

    private static void Abandon(Talk talk)
    {
        string left = Path.Combine(talk.Recovery, Abandoned);
        File.Move(Assert.Single(talk.Kept), left);
        File.SetLastWriteTimeUtc(left, new DateTime(2031, 3, 4, 11, 0, 0, DateTimeKind.Utc));
    }
}
