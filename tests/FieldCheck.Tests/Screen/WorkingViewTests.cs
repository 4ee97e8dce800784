using FieldCheck.Reporting.Working;
using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Workings;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Tests.Screen;

public sealed class WorkingViewTests
{
    [Fact]
    public void Working_IsMadeOnceForAllThatDoesNotChangeIt()
    {
        Desk desk = Trench().Press("F5");
        ShownWorking worked = desk.State.Worked;
        var lines = worked.Lines(80);

        desk.Press("PgDn Down End F3 Down Down F4 Right F5 Home / Esc ? Esc =");
        Assert.Same(worked, desk.State.Worked);
        Assert.True(lines == desk.State.Worked.Lines(80));

        // The last size that it was drawn in is the one that is kept.
        Assert.False(lines == worked.Lines(60));
    }

    [Theory]
    [InlineData("Tab")]
    [InlineData("f")]
    [InlineData("n")]
    [InlineData("/ e")]
    [InlineData("F3 5 Enter")]
    [InlineData("F3 5 Enter ^Z")]
    public void Working_IsMadeAnewForWhatChangesIt(string keys)
    {
        Desk desk = Trench().Press("F5");
        ShownWorking worked = desk.State.Worked;

        Assert.NotSame(worked, desk.Press(keys).State.Worked);
    }

    [Fact]
    public void Tab_GoesThroughSupportsAndHingesAndBackToNone()
    {
        BeamDocument hinged = new()
        {
            Spans = [new SpanEntry { Length = "4 m" }, new SpanEntry { Length = "4 m" }],
            Supports =
            [
                new SupportEntry { Kind = "pin", Joint = "0" },
                new SupportEntry { Kind = "roller", Joint = "1" },
                new SupportEntry { Kind = "roller", Joint = "2", Label = "Q" },
            ],
            Hinges = [new HingeEntry { At = "5 m" }],
            Loads = [new LoadEntry { Kind = "point", Force = "10 kN", At = "2 m" }],
        };
        Desk desk = new Desk(hinged, BeamOrigin.NewBeam).Press("F5");
        List<MomentPoint?> points = [];
        for (int press = 0; press < 5; press++)
        {
            points.Add(desk.Press("Tab").State.About);
        }

        Assert.Equal([new(0, "A"), new(4, "B"), new(5, null), new(8, "Q"), null], points);
        Assert.Equal("Moments are taken about the point that leaves fewest unknowns.", desk.Says);
        Assert.Equal(new MomentPoint(8, "Q"), desk.Press("Shift+Tab").State.About);
        Assert.Equal("Moments are taken about Q (8.00 m).", desk.Says);
        Assert.Equal(new MomentPoint(5, null), desk.Press("Shift+Tab").State.About);
    }

    [Theory]
    [InlineData("1.25 Enter", 1.25, null)]
    [InlineData("m \"A + 1\" Enter", 1.3, null)]
    [InlineData("m B Enter", 2.7, "B")]
    [InlineData("2700mm Enter", 2.7, "B")]
    [InlineData("~30 cm~ Enter", 0.3, "A")]
    public void PlaceTyped_IsThePointOfMoments(string keys, double position, string? support)
    {
        MomentPoint? point = Trench().Press("F5").Press(keys).State.About;

        Assert.Equal(position, point!.Position, 1e-12);
        Assert.Equal(support, point.Support);
    }

    [Fact]
    public void PlaceThatIsNone_IsSaidAndKept()
    {
        Desk desk = Trench().Press("F5 9 Enter");

        Assert.Equal("9: this is off the beam, which is 3.60 m long.", desk.Says);
        Assert.Equal(3.0, desk.Press("Backspace 3 Enter").State.About!.Position);
    }

    [Fact]
    public void PointThatIsASupport_GoesWhereTheSupportGoes()
    {
        Desk desk = Trench().Press("F5 m B Enter F3").Press(Go.To(Trench().State, new(FormBlock.Supports, 1, FormColumn.Place)));

        desk.Press("2.5 Enter F5");

        Assert.Contains("moments about B", desk.Says, StringComparison.Ordinal);
        Assert.Equal(2.5, desk.State.About!.On(desk.State.Shown.Beam!));
        Assert.Contains("Moments about B,", string.Concat(desk.State.Worked.Lines(80).Select(line => line.Text)), StringComparison.Ordinal);
    }

    [Fact]
    public void PointBeyondAShorterBeam_IsItsEnd()
    {
        Desk desk = new Desk().Press("^N 4 Enter F5 3.5 Enter F3 Up 3 Enter F5");

        Assert.Equal(3, desk.State.About!.On(desk.State.Shown.Beam!));
    }

    [Fact]
    public void FormAndStepNames_AreKeptForTheNextStart()
    {
        Desk desk = Trench().Press("F5 f n");

        Assert.Equal(new WorkingOptions { IsShort = true, HasStepNames = false }, Kept(desk));
        Assert.Equal("Short form, without the names of its steps.", desk.Says);
        Assert.Equal(new WorkingOptions(), Kept(desk.Press("f n")));
        Assert.Equal("Full form.", desk.Says);
        Assert.False(desk.State.IsUnsaved);
    }

    [Theory]
    [InlineData("^N", "waiting for: length")]
    [InlineData("5..x Enter", "1 cell to mend")]
    [InlineData("Down Down Down ^X", "CAN MOVE")]
    public void WhereTheBeamCannotBeWorked_TheViewSaysWhy(string keys, string said)
    {
        Desk desk = Trench().Press(keys).Press("F5");

        Assert.Contains(said, desk.Show(80, 24).Lines[1].ToString(), StringComparison.Ordinal);
        Assert.Equal("There is nothing to work yet: see the results.", desk.Press("m").Says);
        Assert.Equal("There is nothing to work yet: see the results.", desk.Press("Tab").Says);
        Assert.Equal("There is nothing to work yet: see the results.", desk.Press("x").Says);
        Assert.Null(desk.State.Overlay);
    }

    [Fact]
    public void SavedAsText_BesideTheBeam_InFullWhateverIsShown()
    {
        Desk desk = OfFile().Press("F5 f n x Enter");

        Assert.Equal("Saved site/trench-working.txt 09:41", desk.Says);
        string full = desk.Texts["site/trench-working.txt"];
        Assert.StartsWith("Working by hand of a beam\nfile: site/trench.toml\n\n", full, StringComparison.Ordinal);
        Assert.EndsWith("\n", full, StringComparison.Ordinal);
        desk.Press("f n x \" two\" Enter");
        Assert.Equal(full, desk.Texts["site/trench-working.txt two.txt"]);
    }

    [Fact]
    public void FileThatIsThere_IsNotWrittenOverWithoutAsking()
    {
        Desk desk = OfFile();
        desk.Texts["site/trench-working.txt"] = "mine";

        desk.Press("F5 x Enter");
        Assert.Contains("site/trench-working.txt is there already.", desk.Picture, StringComparison.Ordinal);
        desk.Press("Esc");
        Assert.Equal("mine", desk.Texts["site/trench-working.txt"]);

        desk.Press("x Enter n other Enter");
        Assert.Equal("mine", desk.Texts["site/trench-working.txt"]);
        Assert.Contains("other.txt", desk.Texts.Keys);

        desk.Press("x Enter o");
        Assert.Equal(desk.Texts["other.txt"], desk.Texts["site/trench-working.txt"]);
    }

    [Fact]
    public void BeamsOwnFile_CannotBeWrittenOver()
    {
        Desk desk = OfFile().Press("F5 x Backspace").Press(Enumerable.Repeat<KeyStroke>(new KeyStroke.Named(KeyName.Backspace), 40));

        Assert.Equal("A name is needed to save under.", desk.Press("Enter").Says);
        Assert.Equal("Saved site/trench.toml.txt 09:41", desk.Press("site/trench.toml Enter").Says);
        Assert.Empty(desk.Files);
    }

    [Fact]
    public void Keys_ScrollByALineByAScreenfulAndToTheEnds()
    {
        Desk desk = Trench().Press("F5");
        string[] lines = [.. desk.State.Worked.Lines(80).Select(line => line.Text)];
        int last = lines.Length - 21;
        Assert.True(last > 40);

        Assert.Equal(lines[..21], Seen(desk, 80, 24));
        Assert.StartsWith($"lines 1-21 of {lines.Length}", desk.Says, StringComparison.Ordinal);
        AssertTop(1, "Down");
        AssertTop(21, "PgDn");
        AssertTop(20, "Up");
        AssertTop(0, "PgUp");
        AssertTop(0, "Up");
        AssertTop(last, "End");
        Assert.StartsWith($"lines {last + 1}-{lines.Length} of {lines.Length}", desk.Says, StringComparison.Ordinal);
        AssertTop(last, "Down");
        AssertTop(last, "PgDn");
        AssertTop(last - 1, "Up");
        AssertTop(0, "Home");

        void AssertTop(int top, string key) => Assert.Equal(lines[top..(top + 21)], Seen(desk.Press(key), 80, 24));
    }

    [Fact]
    public void PageOfALowWindow_IsAsMuchAsItShows()
    {
        Desk desk = Trench().Happen(new ScreenEvent.Resized(60, 10)).Press("F5 PgDn");

        Assert.Equal(6, desk.State.WorkingTop);
    }

    [Fact]
    public void WindowOfAnotherWidth_ShowsAboutTheSamePart()
    {
        Desk desk = Trench().Press("F5 PgDn PgDn Down Down Down Down Down Down");
        string[] Steps() => [.. desk.State.Worked.Lines(desk.State.Size.Width)
            .Take(desk.State.WorkingTop + 1)
            .Where(line => line.Kind == WorkingLineKind.Step && char.IsAsciiDigit(line.Text[0]))
            .Select(line => line.Text[..1])];
        string[] wide = Steps();

        desk.Happen(new ScreenEvent.Resized(40, 24));
        Assert.Equal(wide, Steps());
        desk.Happen(new ScreenEvent.Resized(80, 24));
        Assert.InRange(desk.State.WorkingTop, 44, 46);
    }

    [Fact]
    public void Place_StaysWhenACellChanges_AndIsTheLastThereIsInAShorterWorking()
    {
        Desk desk = Trench().Press("F5 PgDn Down F3 4 Enter F5");
        Assert.Equal(21, desk.State.WorkingTop);

        desk.Press("End F3 PgDn PgDn ^X ^X F5");
        int count = desk.State.Worked.Lines(80).Length;
        Assert.StartsWith($"lines {count - 20}-{count} of {count}", desk.Says, StringComparison.Ordinal);
        Assert.Equal(desk.State.Worked.Lines(80)[^22].Text, Seen(desk.Press("Up"), 80, 24)[0]);
    }

    /// <summary>Whatever form is shown, the person stays at the line that they were reading.</summary>
    [Theory]
    [InlineData("f")]
    [InlineData("n")]
    [InlineData("f n")]
    public void OtherForm_KeepsTheLineThatIsRead(string keys)
    {
        Desk desk = Trench().Press("F5 PgDn");
        while (!Seen(desk, 80, 24)[0].Contains("V_B = ", StringComparison.Ordinal))
        {
            desk.Press("Down");
        }

        string read = Seen(desk, 80, 24)[0];
        desk.Press(keys);
        Assert.Equal(read, Seen(desk, 80, 24)[0]);
        Assert.Equal(read, Seen(desk.Press(keys), 80, 24)[0]);
    }

    [Fact]
    public void StepNames_StandOutWithoutColour()
    {
        Desk desk = Trench().Press("F5");
        PictureRun[] steps = [.. desk.Show(80, 24).Lines.SelectMany(line => line.Runs).Where(run => run.Role == Role.Heading)];

        Assert.NotEmpty(steps);
        Assert.All(steps, step => Assert.Matches("^[1-9][.] [A-Z]", step.Text));
        Assert.DoesNotContain(desk.Press("n").Show(80, 24).Lines.SelectMany(line => line.Runs), run => run.Role == Role.Heading);
    }

    [Fact]
    public void PointTyped_IsTheOneOfTheWorking()
    {
        Desk desk = Trench().Press("F5 1.25 Enter");

        Assert.Contains("x = 1.25 m", string.Join(' ', desk.State.Worked.Lines(80).Select(line => line.Text)), StringComparison.Ordinal);
        Assert.Contains("moments about 1.25 m", desk.Press("Down").Says, StringComparison.Ordinal);
    }

    [Fact]
    public void NextCombination_IsWorkedAndNamed()
    {
        Desk desk = new Desk(
            Beams.Trench with
            {
                Combinations =
                [
                    new CombinationEntry { Name = "dead alone", Factors = [new NamedFigure("dead", "1.0")] },
                    new CombinationEntry { Name = "all", Factors = [new NamedFigure("dead", "1.0"), new NamedFigure("live", "1.0")] },
                ],
            },
            BeamOrigin.NewBeam).Press("F5");
        Assert.Contains("dead alone, 1 of 2 (; next)", desk.Says, StringComparison.Ordinal);

        desk.Press("/ t Down Up");
        Assert.Contains("all, 2 of 2 (; next)", desk.Says, StringComparison.Ordinal);
        Assert.Contains(desk.State.Worked.Lines(80), line => line.Text.Contains("A: 9.90 kN up", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(20, 5)]
    [InlineData(39, 7)]
    [InlineData(60, 20)]
    public void NarrowWindow_LosesNoWordOfTheWorking(int width, int height)
    {
        Desk desk = Trench().Happen(new ScreenEvent.Resized(width, height)).Press("F5");
        string[] words = [.. desk.State.Worked.Lines(Math.Max(width, 40)).SelectMany(line => Words(line.Text))];
        int count = desk.State.Worked.Lines(width).Length;
        HashSet<string> seen = [];
        for (int line = 0; line < count; line++)
        {
            Picture picture = desk.Show(width, height);
            ScreenPictureTests.Fills(picture, width, height);
            seen.UnionWith(picture.Lines.SelectMany(drawn => Words(drawn.ToString())));
            desk.Press("Down");
        }

        Assert.NotEmpty(words);
        Assert.Empty(words.Except(seen));
    }

    private static string[] Seen(Desk desk, int width, int height) =>
        [.. desk.Show(width, height).Lines[1..^2].Select(line => line.ToString().TrimEnd())];

    private static string[] Words(string line) => line.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static WorkingOptions Kept(Desk desk) =>
        desk.Effects.OfType<Effect.KeepPreferences>().Last().Preferences.Working;

    private static Desk Trench() => new(Beams.Trench, new BeamOrigin("trench-bearer"));

    internal static Desk OfFile() => new(
        Beams.Trench, BeamOrigin.File("site/trench.toml", BeamFileText.New("site/trench.toml", Beams.Trench)));
}
