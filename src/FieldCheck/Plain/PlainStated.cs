using FieldCheck.Screen.FormGrid;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Plain;

/// <summary>What a supplier states, said in lines.</summary>
internal static class PlainStated
{
    /// <summary>
    /// "stated A 10.3 kN" is the vertical figure, "stated A moment 5 kNm" changes a cell, "stated A" asks them one after the
    /// other, "stated" the vertical figure of every support.
    /// </summary>
    internal static PlainStep Change(PlainState state, string text)
    {
        FormSheet sheet = state.Form.Sheet;
        if (PlainTokens.Of(text) is not [(string word, int end), ..])
        {
            return sheet.RowsOf(FormBlock.Stated) == 0
                ? state.Say("No support is there of which something could be stated.")
                : (state with { Ask = new PlainAsk.Cell(Vertical(0), PlainWalk.Down) }).Say();
        }

        string figure = PlainTokens.Rest(text, end);
        return figure.Length > 0 && BeginsFigure(figure[0]) && PlainNames.Row(sheet, FormBlock.Stated, word) is int row
            ? PlainCells.Type(state, new PlainTarget.Cell(Vertical(row)), figure)
            : PlainRows.Change(state, FormBlock.Stated, text);
    }

    /// <summary>"add stated A": one more row of a support, for another combination or case; its cells are asked.</summary>
    internal static PlainStep Add(PlainState state, string text)
    {
        FormSheet sheet = state.Form.Sheet;
        if (PlainTokens.Of(text) is not [(string word, _), ..]
            || PlainNames.Row(sheet, FormBlock.Stated, word) is not int row)
        {
            return state.Say("Stated of which support? As: add stated A.");
        }

        FormPlace first = Vertical(row);
        if (FormMoves.IsEmptyRow(sheet, first))
        {
            return PlainRows.Ask(state, first);
        }

        FormRow blank = new FormRow.Stated(new StatedEntry { Support = StatedRows.EntryAt(sheet.Document, row).Support });
        FormPlace added = Vertical(row + 1);
        return PlainRows.Ask(PlainCells.Make(state, new Edit.PutRow(added.Row, blank), added), added);
    }

    private static FormPlace Vertical(int row) => new(FormBlock.Stated, row, FormColumn.Vertical);

    private static bool BeginsFigure(char first) => char.IsDigit(first) || "+-.(½¼¾".Contains(first, StringComparison.Ordinal);
}
