using FieldCheck.Reporting.Tables;
using FieldCheck.Screen;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Tests.Screen;

/// <summary>What holds of the screen whatever keys were pressed.</summary>
internal static class Invariants
{
    /// <summary>The person is on a cell that there is, and the figures are of the beam that they are said to be of.</summary>
    internal static void Hold(ScreenState state)
    {
        Assert.True(IsACell(state), $"No cell: {state.Focus}");
        Assert.Equal(state.Document, state.Settled.Document);
        if (state.Age == ResultsAge.UpToDate)
        {
            BeamDocument typed = state.Draft is CellDraft draft
                ? Editor.Apply(state.Sheet, new Edit.TypeCell(draft.Place, draft.Line.Text)).Document
                : state.Document;
            Assert.Equal(typed, state.Shown.Document);
        }
    }

    internal static void ReadsAgain(BeamDocument document)
    {
        BeamFileText text = BeamFileText.New("beam.toml", document);
        Assert.Equal(document, Assert.IsType<BeamFileReading.Opened>(BeamFileText.Read(text.Name, text.Text)).Document);
    }

    /// <param name="state">The screen at the end.</param>
    /// <param name="press">Presses keys and gives the screen after them.</param>
    internal static void UndoneToTheEnd_IsTheStart(ScreenState state, Func<string, ScreenState> press)
    {
        BeamDocument start = state.History.Steps[0].Sheet.Document;
        state = press("Esc Esc Esc Esc F3");
        while (state.History.ToUndo is HistoryStep step)
        {
            state = press("^Z");
            Assert.NotEqual(step, state.History.ToUndo);
        }

        Assert.Equal(start, state.Document);
    }

    private static bool IsACell(ScreenState state)
    {
        FormPlace focus = state.Focus;
        int first = focus.Block == FormBlock.Loads ? FormPlace.OwnWeightRow : 0;
        return focus.Row >= first && focus.Row <= FormMoves.LastRow(state.Sheet, focus.Block)
            && FormMoves.ColumnsOf(state.Sheet, focus).Contains(focus.Column);
    }
}
