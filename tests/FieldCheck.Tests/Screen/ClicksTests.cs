using CsCheck;
using FieldCheck.Screen;
using FieldCheck.Screen.Details;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Tests.Screen;

public sealed class ClicksTests
{
    private static readonly BeamOrigin Trench =
        BeamOrigin.File("trench.toml", BeamFileText.New("trench.toml", Beams.Trench));

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    [InlineData(40, 12)]
    public void EveryCellThatIsSeen_IsGoneToByAClickOnIt(int width, int height)
    {
        Desk desk = new(Beams.Trench, Trench);
        Picture picture = desk.Show(width, height);
        int cells = 0;
        foreach ((int x, int y) in Places(width, height))
        {
            if (picture.TargetAt(x, y) is LinkTarget.Cell cell)
            {
                desk.Happen(new ScreenEvent.Click(cell));
                Assert.Equal(cell.Place, desk.State.Focus);
                cells++;
            }
        }

        Assert.True(cells > width, $"only {cells} places lead to a cell");
    }

    [Fact]
    public void ClickedCell_IsTheOneWhoseTextStandsThere()
    {
        Desk desk = new(Beams.Trench, Trench);

        Click(desk, "2.80 m");
        Assert.Contains("[2.80 m", desk.Picture, StringComparison.Ordinal);

        Click(desk, "chain block");
        Assert.Contains("[chain block", desk.Picture, StringComparison.Ordinal);

        Click(desk, "(type here to add a span)");
        desk.Press("2 Enter");
        Assert.Equal("2 m", desk.State.Document.Spans[1].Length);
    }

    [Fact]
    public void ClickWhileTyping_AcceptsTheTypingFirst()
    {
        Desk desk = new(Beams.Trench, Trench);

        desk.Press("4 . 5");
        Click(desk, "chain block");

        Assert.Null(desk.State.Draft);
        Assert.Equal("4.5 m", desk.State.Document.Spans[0].Length);
        Assert.Contains("[chain block", desk.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void ViewNamesAndHelp_AreClicked()
    {
        Desk desk = new(Beams.Trench, Trench);

        Click(desk, "Plots");
        Assert.Equal(ScreenView.Plots, desk.State.View);
        Click(desk, "Beam");
        Assert.Equal(ScreenView.Beam, desk.State.View);
        Click(desk, "? help");
        Assert.IsType<Overlay.Help>(desk.State.Overlay);
    }

    [Fact]
    public void HintOfAKey_IsThatKey()
    {
        Desk desk = new(Beams.Trench, Trench);

        desk.Press("5");
        Click(desk, "Enter accept");
        Assert.Equal("5 m", desk.State.Document.Spans[0].Length);

        Click(desk, "^Z undo");
        Assert.Equal("3.60 m", desk.State.Document.Spans[0].Length);

        Click(desk, "/ menu");
        Click(desk, "Esc back");
        Assert.Null(desk.State.Overlay);

        Click(desk, "^Q leave");
        Assert.True(desk.HasLeft);
    }

    [Fact]
    public void MenuEntry_IsTakenAtOnce()
    {
        Desk desk = new(Beams.Trench, Trench);

        desk.Press("/");
        Click(desk, "more of the beam");

        Assert.Equal(new DetailPage(null), Assert.IsType<Overlay.Details>(desk.State.Overlay).Page);
    }

    [Fact]
    public void LineOfAList_IsChosen_AndTakenWhenClickedOnceMore()
    {
        Desk desk = new(Beams.Trench, Trench);

        desk.Press("?");
        Click(desk, "replace what is in the cell");
        Click(desk, "edit what is in the cell");
        Overlay.Help help = Assert.IsType<Overlay.Help>(desk.State.Overlay);
        Assert.Equal(CommandName.EditCell, HelpLines.Of(desk.State.Table, desk.State.View, "")[help.Choice].Command?.Name);

        Click(desk, "edit what is in the cell");
        Assert.Null(desk.State.Overlay);
        Assert.True(desk.State.Draft?.IsEdited);
    }

    [Fact]
    public void NextChoiceFromTheHelp_WhereThereIsNothingToChoose_ChangesNothing()
    {
        Desk desk = new(Beams.Trench, Trench);

        desk.Press("? \"the next one\" Enter");

        Assert.Null(desk.State.Overlay);
        Assert.Equal(Beams.Trench, desk.State.Document);
    }

    [Fact]
    public void ListOfBeams_ClickedTwice_OpensTheBeam()
    {
        Desk desk = new(Beams.Trench, Trench) { Choices = Choices.OfEveryKind };
        desk.Press("^O");
        string name = OpenListKeys.ShownIn((Overlay.OpenList)desk.State.Overlay!)[1].Name;

        Click(desk, name);
        Assert.Equal(name, ((Overlay.OpenList)desk.State.Overlay!).Chosen?.Name);
        Click(desk, name);
        Assert.Contains(desk.Effects, effect => effect is Effect.Open or Effect.Remember);
    }

    [Fact]
    public void Question_IsNotPassedByByAClick()
    {
        Desk desk = new(Beams.Trench, Trench);

        desk.Press("5 Enter ^Q");
        Click(desk, "chain block");
        Click(desk, "Plots");
        Assert.IsType<Overlay.UnsavedQuestion>(desk.State.Overlay);
        Assert.Equal(ScreenView.Beam, desk.State.View);

        Click(desk, "l leave");
        Assert.True(desk.HasLeft);
    }

    [Fact]
    public void AnyClicks_NeverThrowAndLeaveNothingThatKeysCouldNot() =>
        Gen.Select(Gen.Int[0, 79], Gen.Int[0, 23], Gen.Int[0, 9]).Array[1, 60].Sample(
            clicks =>
            {
                Desk desk = new(Beams.Trench, Trench) { Choices = Choices.OfEveryKind };
                foreach ((int x, int y, int key) in clicks)
                {
                    desk.Press(key switch { 0 => "7", 1 => "/", 2 => "F4", 3 => "F3", 4 => "? Down", 5 => "Enter", 6 => "^O", 7 => "F5", _ => "" });
                    if (desk.Show(80, 24).TargetAt(x, y) is LinkTarget target)
                    {
                        desk.Happen(new ScreenEvent.Click(target));
                    }
                }

                ScreenPictureTests.Fills(desk.Show(80, 24), 80, 24);
                Assert.InRange(desk.State.Focus.Row, -1, desk.State.Sheet.RowsOf(desk.State.Focus.Block));
                Assert.Equal(desk.State.Document, desk.State.Settled.Document);
            },
            iter: 200);

    private static IEnumerable<(int X, int Y)> Places(int width, int height) =>
        from y in Enumerable.Range(0, height) from x in Enumerable.Range(0, width) select (x, y);

    // Clicks where a text begins on the screen.
    private static void Click(Desk desk, string text)
    {
        Picture picture = desk.Show(120, 30);
        string[] lines = picture.ToString().Split('\n');
        int y = Array.FindIndex(lines, line => line.Contains(text, StringComparison.Ordinal));
        Assert.True(y >= 0, $"{text} is not on the screen:\n{picture}");
        if (picture.TargetAt(lines[y].IndexOf(text, StringComparison.Ordinal), y) is LinkTarget target)
        {
            desk.Happen(new ScreenEvent.Click(target));
        }
    }
}
