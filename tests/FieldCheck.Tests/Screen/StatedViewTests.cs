using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.StatedFigures;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Tests.Screen;

/// <summary>The Stated view: each view with cells keeps its own, and what comes of the figures follows every key.</summary>
public sealed class StatedViewTests
{
    [Fact]
    public void View_OpensOnTheFirstSupportOfWhichNothingIsStated()
    {
        BeamDocument stated = Beams.Trench with { Stated = [new StatedEntry { Support = "A", Vertical = "10.3 kN" }] };

        Assert.Equal(Cell(1), new Desk(stated, new BeamOrigin("trench")).Press("F6").State.Focus);
        Assert.Equal(Cell(0), Trench().Press("F6").State.Focus);
    }

    [Fact]
    public void EachViewWithCells_KeepsWhereThePersonIs()
    {
        Desk desk = Trench().Press("Down Down Right");
        FormPlace inForm = desk.State.Focus;

        desk.Press("F6 10.3 Enter Right F4 F3");
        Assert.Equal(inForm, desk.State.Focus);
        Assert.Equal(Cell(1) with { Column = FormColumn.Horizontal }, desk.Press("F6").State.Focus);
        Assert.Equal(Cell(1), desk.Press("Home Down Down Enter").State.Focus);
        Assert.Equal(Cell(0), desk.Press("Up Up Up").State.Focus);
    }

    [Fact]
    public void SupportThatGoes_LeavesThePersonOnACellThatThereIs()
    {
        Desk desk = Trench().Press("F6 Down F3").Press(Go.To(Trench().State, new(FormBlock.Supports, 1, FormColumn.Place)));

        Assert.Equal(Cell(0), desk.Press("^X F6").State.Focus);
    }

    [Fact]
    public void AnotherBeam_IsBegunAtItsFirstSupport()
    {
        Desk desk = Trench().Press("F6 Down F3 ^N F6");

        Assert.Equal(Cell(0), desk.State.Focus);
    }

    [Fact]
    public void Verdicts_FollowEveryKey_AndSayWhenTheyAreOfBefore()
    {
        Desk desk = Trench().Press("F6 9.9 Enter");
        Assert.Equal("STATED  up to date   AGREES", Line(desk, 5));

        Assert.Equal("STATED  up to date   LOW at B", Line(desk.Press("1"), 5));
        Assert.Equal("STATED  up to date   AGREES", Line(desk.Press("6.5"), 5));
        Assert.Equal("STATED  before this cell   AGREES", Line(desk.Press("x"), 5));
        Assert.Equal("RESULTS  1 cell to mend", Line(desk.Press("Enter"), 5));
        Assert.Equal("STATED  up to date   AGREES", Line(desk.Press("^Z"), 5));
    }

    [Fact]
    public void Unstated_IsToldOfASupportLeftOut()
    {
        // 10 kN at the end of an overhang of 2 m behind a span of 4 m: A is held down by 5 kN.
        Desk desk = new Desk().Press("^N 6 Enter Enter Enter 4 Enter Enter 10 Tab 6 Enter F6 Down 15 Enter");

        Assert.Equal("STATED  up to date   not all stated at A", Line(desk, 5));
        Assert.Equal("STATED  up to date   AGREES", Line(desk.Press("Up -5 Enter"), 5));
    }

    [Fact]
    public void Page_ScrollsBelowTheFirstLine_AndEndsWithTheLast()
    {
        Desk desk = Trench().Happen(new ScreenEvent.Resized(60, 16)).Press("F6 10.3 Enter 14.6 Enter");
        string[] lines = [.. StatedLines.Of(desk.State, 60)];
        int last = lines.Length - 9;
        Assert.True(last > 5);

        Assert.Equal([.. lines[..8], $"..{lines.Length - 8} more   PgDn"], Seen(desk));
        Assert.Equal(
            [$"{lines[0]}   lines 7-13 of {lines.Length - 1}", .. lines[7..14], $"..{lines.Length - 14} more   PgDn"],
            Seen(desk.Press("PgDn")));
        Assert.Equal(
            [$"{lines[0]}   lines {last + 1}-{lines.Length - 1} of {lines.Length - 1}", .. lines[(last + 1)..]],
            Seen(desk.Press("PgDn PgDn PgDn")));
        Assert.Equal(lines[..8], Seen(desk.Press("PgUp PgUp PgUp PgUp"))[..8]);
        Assert.Equal(Cell(1), desk.State.Focus);
    }

    private static Desk Trench() => new(Beams.Trench, new BeamOrigin("trench"));

    private static FormPlace Cell(int row) => new(FormBlock.Stated, row, FormColumn.Vertical);

    private static string Line(Desk desk, int index) => desk.Show(80, 24).Lines[index].ToString().TrimEnd();

    // Below title, grid and a blank line; above message and keys.
    private static string[] Seen(Desk desk) =>
        [.. desk.Show(60, 16).Lines[5..14].Select(line => line.ToString().TrimEnd())];
}
