using FieldCheck.Screen.Combining;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Sections;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen.FormGrid;

/// <summary>Changes of the beam from the form, each a step of the history.</summary>
internal static class FormEdits
{
    /// <summary>The state after a change; the cell given is where undo leads back to.</summary>
    /// <param name="state">The state before.</param>
    /// <param name="edit">The change.</param>
    /// <param name="place">The cell.</param>
    /// <param name="merges">True: edits of one cell that follow each other are one step.</param>
    internal static ScreenState Make(ScreenState state, Edit edit, FormPlace place, bool merges = true)
    {
        FormSheet changed = Editor.Apply(state.Sheet, edit);
        HistoryStep step = new(
            changed, StepNames.Of(state.Sheet, changed, edit), place, Merges: merges && edit is Edit.TypeCell);
        return state with { History = state.History.With(step) };
    }

    /// <summary>The state with what is being typed accepted; the same where nothing is.</summary>
    /// <param name="state">The state.</param>
    internal static ScreenState Accept(ScreenState state)
    {
        if (state.Draft is not CellDraft draft)
        {
            return state;
        }

        ScreenState typed = Typed(state with { Draft = null }, draft.Place, draft.Line.Text);
        return (CaseWords.NotTaken(draft.Place, draft.Line.Text) ?? StickWords.NotTaken(draft.Place, draft.Line.Text)) is string why ? NotTaken(typed, draft, why) : typed;
    }

    /// <summary>The state with a text typed in the cell that the person is on.</summary>
    /// <param name="state">The state.</param>
    /// <param name="text">The text; empty clears the cell.</param>
    internal static ScreenState Type(ScreenState state, string text) => Typed(state, state.Focus, text);

    private static ScreenState Typed(ScreenState state, FormPlace place, string text)
    {
        ScreenState typed = Make(state, new Edit.TypeCell(place, text), place) with { ReadBack = place };
        return state.Focus == place ? Followed(state, typed) : typed;
    }

    // A cell that takes nothing but its words has no room for others: they can be had back.
    private static ScreenState NotTaken(ScreenState state, CellDraft draft, string why) =>
        string.IsNullOrWhiteSpace(draft.Line.Text)
            ? state with { Notice = new Notice(why, Role.Warn) }
            : state with
            {
                Dropped = draft,
                Notice = new Notice($"{why} {state.Table.KeyOf(CommandName.Undo)} brings back what was typed.", Role.Warn),
            };

    // A row may stand elsewhere once it is typed: the person stays on it.
    private static ScreenState Followed(ScreenState before, ScreenState after)
    {
        FormPlace place = before.Focus;
        int? row = place switch
        {
            // A case, where own weight belongs to another.
            { Block: FormBlock.Cases } => CaseRows.IndexOf(
                after.Document, CaseRows.Of(before.Document).ElementAtOrDefault(place.Row)?.Name),

            // What is stated stands with its support.
            { Block: FormBlock.Stated, Column: FormColumn.Support }
                when StatedRows.Of(before.Document).ElementAtOrDefault(place.Row)?.Entry is int entry =>
                StatedRows.IndexOf(after.Document, entry),
            _ => null,
        };
        return row is int other ? after with { Focus = place with { Row = other } } : after;
    }

    /// <summary>True: of the load the person is on it must be asked whether its size is the whole.</summary>
    /// <param name="state">The state.</param>
    internal static bool IsAsked(ScreenState state) =>
        state.Focus is { Block: FormBlock.Loads, Column: FormColumn.Size or FormColumn.From or FormColumn.To }
        && FormCells.IsAsked(state.Document, state.Focus.Row);
}
