using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Tables;
using FieldCheck.Screen;
using FieldCheck.Screen.Details;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Overlays;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Tests.Screen;

public sealed class ScreenUpdateTests
{
    private static readonly BeamOrigin Trench =
        BeamOrigin.File("trench.toml", BeamFileText.New("trench.toml", Beams.Trench));

    [Fact]
    public void ABeamIsCalculatedOnceAKeystroke()
    {
        Desk desk = new(Beams.Trench, Trench);
        desk.Press("Down Down");
        int before = desk.Calculations;

        desk.Press("0 . 4");
        Assert.Equal(before + 3, desk.Calculations);

        desk.Press("Enter Up Down Tab F4 F3 F2 Esc");
        Assert.Equal(before + 3, desk.Calculations);
    }

    [Fact]
    public void WhileACellDoesNotRead_FiguresAreSaidToBeOfBefore()
    {
        Desk desk = new(Beams.Trench, Trench);

        desk.Press("4 x");
        Assert.Equal(ResultsAge.BeforeThisCell, desk.State.Age);
        Assert.Equal(Beams.Trench, desk.State.Shown.Document);
        Assert.Contains("before this cell", desk.Picture, StringComparison.Ordinal);

        desk.Press("Backspace");
        Assert.Equal(ResultsAge.UpToDate, desk.State.Age);
        Assert.Equal("4 m", desk.State.Shown.Document.Spans[0].Length);

        desk.Press("x Enter");
        Assert.Null(desk.State.Shown.Outcome);
        Assert.Contains("1 cell to mend", desk.Picture, StringComparison.Ordinal);
        Assert.DoesNotContain("16.50", desk.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void HalfTypedLengthThatPutsALoadOffTheBeam_KeepsTheResultsOfBefore()
    {
        Desk desk = new(Beams.Trench, Trench);

        desk.Press("1");
        Assert.Equal(ResultsAge.BeforeThisCell, desk.State.Age);

        desk.Press("2");
        Assert.Equal(ResultsAge.UpToDate, desk.State.Age);
        Assert.Equal("12 m", desk.State.Shown.Document.Spans[0].Length);
    }

    [Fact]
    public void EscPressedEverywhere_NeverLeaves()
    {
        Desk desk = new(Beams.Trench, Trench);

        desk.Press("5 Enter Up Esc Esc 9 Esc Esc F4 Esc Esc / Esc ? Esc ^O Esc / w Esc ^Q Esc / m Esc Esc Esc");

        Assert.False(desk.HasLeft);
        Assert.Null(desk.State.Overlay);
        Assert.Equal("5 m", desk.State.Document.Spans[0].Length);
    }

    [Fact]
    public void NothingUnsaved_LeavesAtOnce()
    {
        Desk desk = new(Beams.Trench, Trench);

        desk.Press("^Q");

        Assert.Equal([new Effect.DropRecovery(), new Effect.Quit()], desk.Effects);
    }

    [Fact]
    public void Unsaved_IsAskedAboutBeforeLeaving()
    {
        Desk desk = new(Beams.Trench, Trench);

        desk.Press("5 Enter ^Q");
        Assert.False(desk.HasLeft);
        Assert.Contains("Save trench before leaving?", desk.Picture, StringComparison.Ordinal);

        desk.Press("x Esc");
        Assert.False(desk.HasLeft);

        desk.Press("^C s");
        Assert.True(desk.HasLeft);
        Assert.Contains("5 m", desk.Files["trench.toml"].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void AskedTwiceToLeave_LeavesAtOnceAndKeepsTheWork()
    {
        Desk desk = new(Beams.Trench, Trench);

        desk.Press("5 Enter ^C ^C");

        Assert.True(desk.HasLeft);
        Assert.IsType<Effect.KeepRecovery>(desk.Effects[^2]);
        Assert.Empty(desk.Files);
    }

    [Fact]
    public void EndedFromOutside_KeepsWhatWasBeingTyped()
    {
        Desk desk = new(Beams.Trench, Trench);

        desk.Press("4.2").Happen(new ScreenEvent.Stopped());

        Effect.KeepRecovery kept = Assert.IsType<Effect.KeepRecovery>(desk.Effects[^2]);
        Assert.IsType<Effect.Quit>(desk.Effects[^1]);
        Assert.Contains("4.2 m", kept.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void WorkOffered_IsTakenUpByEnterAndLeftByAnythingElse()
    {
        BeamDocument left = Beams.Trench with { Title = "as it was left" };
        ScreenEvent offer = new ScreenEvent.RecoveryFound(left, Trench, "Unsaved work from 09:37: trench (4 loads)");

        Desk taken = new Desk().Happen(offer);
        Assert.Contains("Unsaved work from 09:37", taken.Picture, StringComparison.Ordinal);
        taken.Press("Enter");
        Assert.Equal(left, taken.State.Document);
        Assert.True(taken.State.IsUnsaved);
        Assert.IsType<Effect.TakeRecovery>(taken.Effects[^1]);

        Desk declined = new Desk().Happen(offer).Press("3");
        Assert.Equal("3", declined.State.Draft?.Line.Text);
        Assert.DoesNotContain(declined.Effects, effect => effect is Effect.TakeRecovery or Effect.DropRecovery);
    }

    [Fact]
    public void ExampleIsMarkedUntilItIsChanged()
    {
        Desk desk = new(Beams.Trench, new BeamOrigin("trench", IsExample: true));
        Assert.StartsWith("EXAMPLE trench ", desk.Picture, StringComparison.Ordinal);

        desk.Press("5 Enter");
        Assert.StartsWith("trench * ", desk.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void SavedUnderANameThatWindowsDoesNotTake_IsSavedAndTellsItOnce()
    {
        Desk desk = new Desk().Press("4 Enter ^S").Press("con Enter");

        Assert.Equal(["con.toml"], desk.Files.Keys);
        Assert.False(desk.State.IsUnsaved);
        Assert.Equal(
            "Saved con.toml 09:41, but: Windows keeps the name con for a device, whatever stands behind its dot.", desk.Says);
        Assert.Equal("Saved con.toml 09:41", desk.Press("5 Enter ^S").Says);
    }

    [Fact]
    public void SavedUnderAName_IsAFileFromThenOn()
    {
        Desk desk = new Desk().Press("4 Enter ^S");
        Assert.Contains("Save as: ", desk.Picture, StringComparison.Ordinal);

        desk.Press("\"north bay\" Enter");
        Assert.Equal(["north bay.toml"], desk.Files.Keys);
        Assert.Equal("Saved north bay.toml 09:41", desk.Says);
        Assert.False(desk.State.IsUnsaved);
        Assert.StartsWith("north bay  ", desk.Picture, StringComparison.Ordinal);

        desk.Press("^S");
        Assert.Equal("Nothing has changed since it was saved.", desk.Says);
    }

    [Fact]
    public void FileChangedOnDisk_IsAskedAbout()
    {
        Desk desk = new(Beams.Trench, Trench);
        BeamFileText theirs = BeamFileText.New("trench.toml", Beams.Trench with { Title = "theirs" });
        desk.Files["trench.toml"] = theirs;

        desk.Press("5 Enter ^S");
        Assert.Contains("changed on disk", desk.Picture, StringComparison.Ordinal);
        Assert.Equal(theirs, desk.Files["trench.toml"]);

        desk.Press("Esc ^S t");
        Assert.Equal("theirs", desk.State.Document.Title);

        desk = new(Beams.Trench, Trench);
        desk.Files["trench.toml"] = theirs;
        desk.Press("5 Enter ^S m");
        Assert.Contains("5 m", desk.Files["trench.toml"].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void NameThatIsTaken_IsAskedAbout()
    {
        Desk desk = new Desk();
        desk.Files["north.toml"] = Trench.Text!;

        desk.Press("4 Enter ^S north Enter");
        Assert.Equal(Trench.Text, desk.Files["north.toml"]);
        Assert.Contains("north.toml is there already.", desk.Picture, StringComparison.Ordinal);

        desk.Press("n south Enter");
        Assert.Equal(["north.toml", "south.toml"], desk.Files.Keys.Order());
    }

    [Fact]
    public void BeamThatOnlySlides_IsNotCalledUpToDate()
    {
        Desk desk = new(Beams.Trench, Trench);

        desk.Press("Down Down Down ^X");

        Assert.IsType<BeamOutcome.CanMove>(desk.State.Shown.Outcome);
        Assert.Contains("CAN MOVE", desk.Picture, StringComparison.Ordinal);
        Assert.DoesNotContain("up to date", desk.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void ViewsThatWork_AreWalkedByBrackets()
    {
        Desk desk = new(Beams.Trench, Trench);

        Assert.Equal(ScreenView.Plots, desk.Press("]").State.View);
        Assert.Equal(ScreenView.Working, desk.Press("]").State.View);
        Assert.Equal(ScreenView.Stated, desk.Press("]").State.View);
        Assert.Equal(ScreenView.Section, desk.Press("]").State.View);
        Assert.Equal(ScreenView.Cases, desk.Press("]").State.View);
        Assert.Equal(ScreenView.Beam, desk.Press("]").State.View);
        Assert.Equal(ScreenView.Cases, desk.Press("[").State.View);
        Assert.Equal(ScreenView.Beam, desk.Press("Esc").State.View);
        Assert.Equal(ScreenView.Plots, desk.Press("/ v p").State.View);
        desk.Press("7 kN Tab");
        Assert.Equal(Beams.Trench, desk.State.Document);
    }

    [Fact]
    public void MenuLine_RunsByArrowsAndEnter()
    {
        Desk desk = new(Beams.Trench, Trench);
        int copy = MenuKeys.EntriesOf(desk.State, MenuPage.Actions)
            .ToList()
            .FindIndex(entry => entry.Command == CommandName.CopyRow);

        desk.Press("Down Down /").Press(string.Concat(Enumerable.Repeat("Down ", copy)) + "Enter");

        Assert.Equal(3, desk.State.Document.Supports.Count);
    }

    [Fact]
    public void HelpLine_RunsByEnter()
    {
        Desk desk = new(Beams.Trench, Trench);

        desk.Press("? plots Enter");

        Assert.Equal((ScreenView.Plots, null), (desk.State.View, desk.State.Overlay));
    }

    [Fact]
    public void CellsThatAPresetAsksFor_AreWalkedByEnter()
    {
        BeamDocument asking = Beams.Trench with { Ask = ["load[4].force", "span[1].length", "load[2].to"] };
        Desk desk = new() { Choices = [Choices.Shipped("bay", asking)] };

        desk.Press("^O Enter");
        Assert.Equal(new FormPlace(FormBlock.Loads, 3, FormColumn.Size), desk.State.Focus);
        desk.Press("14kN Enter");
        Assert.Equal(new FormPlace(FormBlock.Spans, 0, FormColumn.Length), desk.State.Focus);
        desk.Press("Enter");
        Assert.Equal(new FormPlace(FormBlock.Loads, 1, FormColumn.To), desk.State.Focus);
        desk.Press("1.7 Enter");
        Assert.Equal(new FormPlace(FormBlock.Loads, 2, FormColumn.To), desk.State.Focus);
        Assert.False(desk.State.IsAsking);
    }

    [Fact]
    public void RowsWithoutABlock_AreBegunByTypingAndGoWhenCleared()
    {
        FormSheet sheet = new(Beams.Trench);
        string[] typed =
        [
            "hinge[1].at", "combination[1].name", "combination[1].factors.live", "pattern[1].case", "rolling[1].label",
            "rolling[1].axles[1].offset", "rolling[1].axles[1].force",
        ];
        foreach (string key in typed)
        {
            Assert.Contains(key, DetailLines.Of(sheet.Document, new DetailPage(null)).Select(line => line.Key));
            sheet = Editor.Apply(sheet, new Edit.TypeKey(key, "1"));
            Assert.NotNull(DocumentCells.Get(sheet.Document, key));
        }

        BeamDocument full = sheet.Document;
        Assert.All(Fields.Combination, field => Assert.Contains("combination[1]." + field.Key, Lines(full)));
        Assert.All(Fields.Rolling, field => Assert.Contains("rolling[1]." + field.Key, Lines(full)));
        Assert.All(Fields.Axle, field => Assert.Contains("rolling[1].axles[1]." + field.Key, Lines(full)));
        foreach (string key in typed.Reverse())
        {
            sheet = Editor.Apply(sheet, new Edit.TypeKey(key, ""));
        }

        Assert.Equal(Beams.Trench, sheet.Document);
    }

    [Fact]
    public void ResultsOfEveryCombination_AreShownInTurn()
    {
        BeamDocument two = Beams.Trench with
        {
            Combinations =
            [
                new CombinationEntry
                {
                    Name = "all",
                    Factors = [new NamedFigure("dead", "1"), new NamedFigure("live", "1")],
                },
                new CombinationEntry { Name = "bare", Factors = [new NamedFigure("dead", "1")] },
            ],
        };
        Desk desk = new(two, Trench);
        Assert.Contains("B  16.50 kN up", desk.Picture, StringComparison.Ordinal);

        desk.Press("/ t");
        Assert.Contains("up to date  bare", desk.Picture, StringComparison.Ordinal);
        Assert.DoesNotContain("16.50", desk.Picture, StringComparison.Ordinal);

        desk.Press("/ t");
        Assert.Contains("up to date  all", desk.Picture, StringComparison.Ordinal);
    }

    private static IEnumerable<string> Lines(BeamDocument document) =>
        DetailLines.Of(document, new DetailPage(null)).Select(line => line.Key);
}
