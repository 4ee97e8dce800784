using FieldCheck.Sheet.Editing;

namespace FieldCheck.Sheet.Tests.Editing;

public sealed class HistoryTests
{
    private static readonly FormPlace Length = new(FormBlock.Spans, 0, FormColumn.Length);
    private static readonly FormPlace Far = new(FormBlock.Spans, 0, FormColumn.Reading);

    [Fact]
    public void EditsOfOneCell_AreOneStep()
    {
        History history = Typed(Typed(Typed(History.Start(FormSheet.Empty), Far, "2"), Length, "3"), Length, "4");

        Assert.Equal("4 m", history.Sheet.Document.Spans[0].Length);
        Assert.Equal("2 m", history.Undo().Sheet.Document.Spans[0].To);
        Assert.Equal(FormSheet.Empty, history.Undo().Undo().Sheet);
    }

    [Fact]
    public void EditTypedBackToWhatStood_LeavesNoStep()
    {
        History start = Typed(History.Start(FormSheet.Empty), Far, "2");

        History history = Typed(Typed(start, Length, "3"), Far, "2");

        Assert.Equal(3, history.Steps.Length - 1);
        Assert.Equal(start, Typed(Typed(start, Far, "5"), Far, "2") with { Steps = start.Steps });
        Assert.Equal(1, Typed(Typed(start, Far, "5"), Far, "2").Index);
    }

    [Fact]
    public void ChangeThatChangesNothing_IsNoStep()
    {
        History start = Typed(History.Start(FormSheet.Empty), Length, "2");

        Assert.Same(start, Typed(start, Length, "2 m"));
    }

    [Fact]
    public void ChangeAfterAnUndo_ForgetsWhatWasUndone()
    {
        History undone = Typed(Typed(History.Start(FormSheet.Empty), Length, "3"), Far, "4").Undo();

        Assert.Equal("4", undone.ToRedo?.Name);
        History changed = Typed(undone, Far, "5");

        Assert.Null(changed.ToRedo);
        Assert.Equal("5 m", changed.Sheet.Document.Spans[0].To);
        Assert.Equal("3 m", changed.Undo().Sheet.Document.Spans[0].Length);
    }

    [Fact]
    public void EditOfTheSameCellAfterAnUndo_DoesNotMerge()
    {
        History undone = Typed(Typed(History.Start(FormSheet.Empty), Length, "3"), Far, "4").Undo();

        History changed = Typed(undone, Length, "5");

        Assert.Equal("3 m", changed.Undo().Sheet.Document.Spans[0].Length);
    }

    [Fact]
    public void MoreStepsThanAreKept_TheOldestGo()
    {
        History history = History.Start(FormSheet.Empty);
        for (int step = 1; step <= History.Limit + 5; step++)
        {
            history = Typed(history, step % 2 == 0 ? Length : Far, $"{step}");
        }

        int undone = 0;
        while (history.ToUndo is not null)
        {
            history = history.Undo();
            undone++;
        }

        Assert.Equal(History.Limit, undone);
        Assert.Equal("5 m", history.Sheet.Document.Spans[0].To);
    }

    private static History Typed(History history, FormPlace place, string text) => history.With(
        new HistoryStep(Editor.Apply(history.Sheet, new Edit.TypeCell(place, text)), text, place, Merges: true));
}
