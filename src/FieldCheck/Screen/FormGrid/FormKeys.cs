using System.Collections.Immutable;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Sections;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen.FormGrid;

/// <summary>Keys pressed in the form.</summary>
internal static class FormKeys
{
    private const int MostLinesPasted = 1000;

    /// <summary>What a key does in the form.</summary>
    /// <param name="state">The state, nothing lying over the view.</param>
    /// <param name="stroke">The key.</param>
    internal static ScreenStep Press(ScreenState state, KeyStroke stroke) => stroke switch
    {
        KeyStroke.Paste paste => Paste(state, paste.Content).Step(),
        _ when state.Draft is CellDraft draft => InDraft(state, draft, stroke),
        KeyStroke.Text text when Answer(state, text.Grapheme) is ScreenState answered => answered.Step(),
        KeyStroke.Text text when text.Grapheme == " " && FormCells.ChoicesOf(state.Document, state.Focus).IsEmpty
            && !CatalogueKeys.IsFor(state.Focus) => state.Step(),
        _ when state.Table.Of(stroke, state.View) is ScreenCommand named => Commands.Run(state, named.Name, stroke),
        KeyStroke.Text text => Begin(state, LineText.Of(text.Grapheme), isEdited: false).Step(),
        _ => state.Step(),
    };

    /// <summary>Opens what stands in the cell for editing.</summary>
    internal static ScreenState Edit(ScreenState state) => state.Draft is CellDraft draft
        ? state with { Draft = draft with { IsEdited = true } }
        : Begin(state, LineText.Of(FormCells.TextOf(state.Document, state.Focus) ?? ""), isEdited: true);

    /// <summary>
    /// Takes the next of the words that the cell chooses from; past the last, none where it may be empty. Where there
    /// are no words to choose from, nothing changes.
    /// </summary>
    internal static ScreenState NextChoice(ScreenState state)
    {
        ImmutableArray<string> words = FormCells.ChoicesOf(state.Document, state.Focus);
        if (words.IsEmpty)
        {
            return state;
        }

        // A combination without basis is service, the first of its words.
        bool isCombination = state.Focus.Block == FormBlock.Combinations;
        string stands = FormCells.TextOf(state.Document, state.Focus) ?? (isCombination ? words[0] : "");
        bool isYesOrNo = state.Focus.Block == FormBlock.Cases || state.Focus.Column == FormColumn.Unbraced;
        int next = isYesOrNo && stands.Length > 0 ? words.Length
            : Math.Max(words.IndexOf(stands), words.IndexOf(stands.Split(' ')[0])) + 1;
        bool mayBeEmpty = isYesOrNo
            || (state.Focus.Column is FormColumn.Rules or FormColumn.Acts or FormColumn.Basis or FormColumn.Under && !isCombination);
        return FormEdits.Type(state, next < words.Length ? words[next] : mayBeEmpty ? "" : words[0]);
    }

    private static ScreenState Begin(ScreenState state, LineText line, bool isEdited) =>
        state with { Draft = new CellDraft(state.Focus, line, isEdited) };

    private static ScreenStep InDraft(ScreenState state, CellDraft draft, KeyStroke stroke) => stroke switch
    {
        KeyStroke.Text text => (state with { Draft = draft with { Line = draft.Line.Insert(text.Grapheme) } }).Step(),
        KeyStroke.Named { Key: KeyName.Escape } => Drop(state, draft).Step(),
        _ when state.Table.Is(stroke, CommandName.Undo) => Drop(state, draft).Step(),
        _ when state.Table.Is(stroke, CommandName.EditCell) => Edit(state).Step(),
        KeyStroke.Named named when (draft.IsEdited || named.Key is KeyName.Backspace or KeyName.Delete)
            && draft.Line.After(named.Key) is LineText line =>
            (state with { Draft = draft with { Line = line } }).Step(),
        _ => Leave(state, stroke),
    };

    private static ScreenState Drop(ScreenState state, CellDraft draft) =>
        state with
        {
            Draft = null,
            Dropped = draft.WasOffered ? null : draft,
            Notice = draft.WasOffered ? null : new Notice($"Typing dropped. {state.Table.KeyOf(CommandName.Undo)} brings it back."),
        };

    private static ScreenStep Leave(ScreenState state, KeyStroke stroke)
    {
        if (state.Table.Of(stroke, state.View) is not ScreenCommand command)
        {
            return state.Step();
        }

        ScreenState accepted = FormEdits.Accept(state);
        bool asks = FormEdits.IsAsked(accepted) && !FormEdits.IsAsked(state);
        return asks && command.Group == CommandGroup.Cell
            ? accepted.Step()
            : Commands.Run(accepted, command.Name, stroke);
    }

    // Of a number without unit that has an end, one letter says what it is.
    private static ScreenState? Answer(ScreenState state, string letter)
    {
        if (!FormEdits.IsAsked(state) || letter is not ("t" or "m"))
        {
            return null;
        }

        ScreenState answered = FormEdits.Make(state, new Edit.AnswerSize(state.Focus.Row, letter == "t"), state.Focus);
        return Commands.Enter(answered with { ReadBack = state.Focus });
    }

    private static ScreenState Paste(ScreenState state, string content)
    {
        string[] lines = [.. content.ReplaceLineEndings("\n").Split('\n').Where(line => line.Trim().Length > 0)];
        if (lines.Length == 0)
        {
            return state;
        }

        if (lines.Length == 1 && !lines[0].Contains('\t'))
        {
            LineText line = (state.Draft?.Line ?? LineText.Empty).Insert(Clean(lines[0]));
            return state with { Draft = (state.Draft ?? new CellDraft(state.Focus, line)) with { Line = line } };
        }

        ScreenState accepted = FormEdits.Accept(state);
        ImmutableArray<ImmutableArray<string>> cells =
            [.. lines.Take(MostLinesPasted).Select(line => line.Split('\t').Select(Clean).ToImmutableArray())];
        return FormEdits.Make(accepted, new Edit.PasteCells(accepted.Focus, cells), accepted.Focus) with
        {
            Notice = NoticeOfPaste(accepted, cells, lines.Length),
        };
    }

    private static Notice NoticeOfPaste(ScreenState state, ImmutableArray<ImmutableArray<string>> cells, int lines)
    {
        ImmutableArray<FormColumn> columns = FormColumns.Of(state.Document, state.Focus.Block);
        int room = columns.Length - columns.IndexOf(state.Focus.Column);
        int beside = cells.Sum(row => row.Skip(room).Count(cell => cell.Trim().Length > 0));
        string rows = lines == 1 ? "1 row" : $"{lines} rows";
        return lines > MostLinesPasted
            ? new Notice($"Pasted the first {MostLinesPasted} lines; {lines - MostLinesPasted} were left out.", Role.Warn)
            : beside > 0
                ? new Notice($"Pasted {rows}; {beside} {(beside == 1 ? "cell" : "cells")} had no column right of here.", Role.Warn)
                : new Notice($"Pasted {rows}. {state.Table.KeyOf(CommandName.Undo)} takes them away again.");
    }

    private static string Clean(string text) => string.Concat(text.Where(letter => !char.IsControl(letter)));
}
