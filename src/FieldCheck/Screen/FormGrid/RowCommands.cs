using System.Collections.Immutable;
using FieldCheck.Screen.Details;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Overlays;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Screen.FormGrid;

/// <summary>Commands on whole rows.</summary>
internal static class RowCommands
{
    internal static ScreenState Run(ScreenState state, CommandName name) => name switch
    {
        CommandName.PutRowBack => PutBack(state),
        CommandName.NextMarked => NextMarked(state),
        _ when state.Focus.Block == FormBlock.Cases => state with
        {
            Notice = new Notice("The cases are those of the loads: they come and go with them."),
        },
        CommandName.AddRow => Add(state),
        _ when state.Focus.IsOwnWeight || FormMoves.IsEmptyRow(state.Sheet, state.Focus) => OnNoRow(state, name),
        CommandName.CopyRow => Copy(state),
        CommandName.DeleteRow => Delete(state),
        CommandName.RowUp => Swap(state, state.Focus.Row - 1, state.Focus.Row - 1),
        CommandName.RowDown => Swap(state, state.Focus.Row, state.Focus.Row + 1),
        CommandName.ChangeKind => ChangeKind(state),
        CommandName.MoreOfRow =>
            state with { Overlay = new Overlay.Details(new DetailPage(state.Focus.Block, state.Focus.Row)) },
        _ => state,
    };

    private static ScreenState OnNoRow(ScreenState state, CommandName name) =>
        name == CommandName.DeleteRow && state.Focus.IsOwnWeight
            ? FormEdits.Type(state with { Focus = state.Focus with { Column = FormColumn.Size } }, "")
            : name is CommandName.CopyRow or CommandName.DeleteRow or CommandName.MoreOfRow or CommandName.ChangeKind
                ? state with { Notice = new Notice("There is no row here yet.") }
                : state;

    // A load is of the kind that its size says, so its size is what is changed.
    private static ScreenState ChangeKind(ScreenState state) => state.Focus.Block switch
    {
        FormBlock.Supports => FormKeys.NextChoice(state with { Focus = state.Focus with { Column = FormColumn.Kind } }),
        FormBlock.Loads => FormKeys.Edit(state with { Focus = state.Focus with { Column = FormColumn.Size } }) with
        {
            Notice = new Notice(CellHints.Of(state.Focus with { Column = FormColumn.Size })),
        },
        _ => state with { Notice = new Notice("Spans are of one kind only.") },
    };

    private static ScreenState Add(ScreenState state)
    {
        if (FormMoves.IsEmptyRow(state.Sheet, state.Focus))
        {
            return state;
        }

        FormPlace added = state.Focus with { Row = state.Focus.Row + 1 };
        added = FormMoves.RowEnd(state.Sheet, added, last: false);
        FormRow blank = added.Block == FormBlock.Stated
            ? new FormRow.Stated(new StatedEntry { Support = StatedRows.EntryAt(state.Document, state.Focus.Row).Support })
            : FormRow.Blank(state.Document, added.Block);
        return FormEdits.Make(state, new Edit.PutRow(added.Row, blank), added) with { Focus = added };
    }

    private static ScreenState Copy(ScreenState state)
    {
        FormPlace copy = state.Focus with { Row = state.Focus.Row + 1 };
        return FormEdits.Make(state, new Edit.CopyRow(copy.Block, state.Focus.Row), copy) with { Focus = copy };
    }

    private static ScreenState Delete(ScreenState state)
    {
        FormPlace focus = state.Focus;
        string name = FormWords.Row(state.Sheet, focus.Block, focus.Row);
        ScreenState deleted = FormEdits.Make(state, new Edit.DeleteRow(focus.Block, focus.Row), focus);
        return deleted with
        {
            DeletedRow = FormRow.At(state.Document, focus.Block, focus.Row),
            Focus = FormMoves.Within(deleted.Sheet, focus),
            Notice = new Notice($"{char.ToUpperInvariant(name[0])}{name[1..]} deleted. {state.Table.KeyOf(CommandName.Undo)} brings it back."),
        };
    }

    private static ScreenState PutBack(ScreenState state)
    {
        if (state.DeletedRow is not FormRow row)
        {
            return state with { Notice = new Notice("No row has been deleted.") };
        }

        FormBlock block = StepNames.BlockOf(row);
        int at = block == state.Focus.Block ? Math.Max(state.Focus.Row, 0) : state.Sheet.RowsOf(block);
        Edit put = new Edit.PutRow(at, row);
        FormPlace place = new(block, RowPut(state, at, row), FormColumns.Of(block)[0]);
        return FormEdits.Make(state, put, place) with { Focus = place, View = FormMoves.ViewOf(block) };
    }

    // What is stated goes to its support, wherever the person is.
    private static int RowPut(ScreenState state, int at, FormRow row)
    {
        BeamDocument after = Editor.Apply(state.Sheet, new Edit.PutRow(at, row)).Document;
        int same = after.Stated.Zip(state.Document.Stated).TakeWhile(pair => pair.First == pair.Second).Count();
        return row is FormRow.Stated ? StatedRows.IndexOf(after, same) ?? at : at;
    }

    private static ScreenState Swap(ScreenState state, int upper, int to)
    {
        FormPlace place = state.Focus with { Row = to };
        if (place.Block == FormBlock.Stated && !IsPair(state, upper))
        {
            return state with { Notice = new Notice("Stated rows stand in the order of their supports.") };
        }

        ScreenState swapped = FormEdits.Make(state, new Edit.SwapRows(state.Focus.Block, upper), place);
        return swapped.Sheet == state.Sheet && !IsPair(state, upper) ? state : swapped with { Focus = place };
    }

    private static bool IsPair(ScreenState state, int upper) =>
        upper >= 0 && upper + 1 < state.Sheet.RowsOf(state.Focus.Block)
        && (state.Focus.Block != FormBlock.Stated || AreOfOneSupport(state.Document, upper));

    private static bool AreOfOneSupport(BeamDocument document, int upper)
    {
        ImmutableArray<StatedRow> rows = StatedRows.Of(document);
        return string.Equals(rows[upper].Label, rows[upper + 1].Label, StringComparison.OrdinalIgnoreCase);
    }

    private static ScreenState NextMarked(ScreenState state)
    {
        if (CellProblems.Next(state.Settled, state.Focus) is FormPlace place)
        {
            return state with { Focus = place, View = FormMoves.ViewOf(place.Block), TabStart = null };
        }

        if (state.Settled.Problems is not [Problem problem, ..])
        {
            return state with { Notice = new Notice("No cell is marked.") };
        }

        int line = DetailLines.IndexOf(state.Document, problem.Key);
        return state with { Overlay = new Overlay.Details(new DetailPage(null), line) };
    }
}
