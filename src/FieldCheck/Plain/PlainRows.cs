using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Plain;

/// <summary>Commands on rows and their cells.</summary>
internal static class PlainRows
{
    private const string NoRowOfFile = "The cases are those of the loads: they come and go with them.";

    /// <summary>"load 2 size 14 kN" changes a cell, "load 2" asks its cells one after the other.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="block">The block.</param>
    /// <param name="text">What stands behind the name of the block.</param>
    internal static PlainStep Change(PlainState state, FormBlock block, string text)
    {
        string name = FormColumns.RowName(block);
        FormSheet sheet = state.Form.Sheet;
        if (PlainTokens.Of(text) is not [(string word, int end), ..])
        {
            return state.Say($"Which {name}? As {PlainNames.WordOf(block)} {Example(sheet, block)}.{OneMore(block)}");
        }

        (string named, string rest) = block == FormBlock.Cases
            ? PlainNames.CaseIn(sheet, text) ?? (word, PlainTokens.Rest(text, end))
            : (word, PlainTokens.Rest(text, end));
        if (PlainNames.Row(sheet, block, named) is not int row)
        {
            return state.Say(NoRow(sheet, block, named));
        }

        if (rest.Length == 0)
        {
            return Ask(state, new FormPlace(block, row, PlainNames.ColumnsOf(sheet, block)[0]));
        }

        return PlainNames.InRow(sheet, block, row, rest) is (PlainTarget target, string typed)
            ? PlainCells.Type(state, target, typed)
            : state.Say(
                $"{PlainWords.Sentence($"a {name} has no cell {PlainTokens.Of(rest).FirstOrDefault().Word ?? rest}")} "
                + $"It has {CellsOf(state.Form.Sheet, block, row)}.");
    }

    /// <summary>Own weight, whether it counts and in which case.</summary>
    internal static PlainStep OwnWeight(PlainState state, string text)
    {
        string rest = PlainTokens.After(text, "weight") ?? text;
        FormPlace size = new(FormBlock.Loads, FormPlace.OwnWeightRow, FormColumn.Size);
        return PlainTokens.After(rest, "case") is string name
            ? PlainCells.Type(state, new PlainTarget.Cell(size with { Column = FormColumn.Case }), name)
            : rest.Length == 0 ? Ask(state, size)
            : PlainCells.Type(state, new PlainTarget.Cell(size), rest);
    }

    /// <summary>"add load", "add load 14 kN", "add span after 1": the cells of the new row are asked.</summary>
    internal static PlainStep Add(PlainState state, string text)
    {
        if (PlainNames.BlockIn(text) is not (FormBlock block, string rest))
        {
            return state.Say("Add what? A span, a support, a load, stated A, a combination or a rolling load, as: add load.");
        }

        if (block == FormBlock.Cases)
        {
            return state.Say(NoRowOfFile);
        }

        FormColumn first = FormColumns.Of(block)[0];
        if (block == FormBlock.Stated)
        {
            return PlainStated.Add(state, rest);
        }

        int rows = state.Form.Sheet.RowsOf(block);
        if (PlainTokens.After(rest, "after") is string after)
        {
            return PlainNames.Row(state.Form.Sheet, block, after) is int row && row < rows
                ? Insert(state, new FormPlace(block, row + 1, first))
                : state.Say(NoRow(state.Form.Sheet, block, after));
        }

        FormPlace place = new(block, rows, first);
        return rest.Length == 0
            ? Ask(state, place)
            : PlainCells.Answer(state, new PlainAsk.Cell(place, PlainWalk.Row), rest);
    }

    internal static PlainStep Delete(PlainState state, string text) => OnRow(state, text, "delete", (at, _) =>
    {
        string name = FormWords.Row(state.Form.Sheet, at.Block, at.Row);
        PlainState deleted = PlainCells.Make(state, new Edit.DeleteRow(at.Block, at.Row), at) with { Ask = null };
        return deleted.Say(
            PlainWords.Sentence($"{name} is deleted; undo brings it back"), PlainWords.Outcome(deleted.Form));
    });

    internal static PlainStep Copy(PlainState state, string text) => OnRow(state, text, "copy", (at, _) =>
    {
        string name = FormWords.Row(state.Form.Sheet, at.Block, at.Row);
        FormPlace copy = at with { Row = at.Row + 1 };
        PlainState copied = PlainCells.Make(state, new Edit.CopyRow(at.Block, at.Row), copy) with { Ask = null };
        string made = FormWords.Row(copied.Form.Sheet, copy.Block, copy.Row);
        return copied.Say(PlainWords.Sentence($"{made} is a copy of {name}"), PlainWords.Outcome(copied.Form));
    });

    internal static PlainStep Move(PlainState state, string text) => OnRow(state, text, "move", (at, rest) =>
    {
        bool isUp = rest.Equals("up", StringComparison.OrdinalIgnoreCase);
        if (!isUp && !rest.Equals("down", StringComparison.OrdinalIgnoreCase))
        {
            return state.Say($"Up or down? As: move {text.Trim()} up.");
        }

        int upper = isUp ? at.Row - 1 : at.Row;
        if (upper < 0 || upper + 1 >= state.Form.Sheet.RowsOf(at.Block))
        {
            return state.Say($"It is the {(isUp ? "first" : "last")} already.");
        }

        FormPlace to = at with { Row = isUp ? at.Row - 1 : at.Row + 1 };
        PlainState moved = PlainCells.Make(state, new Edit.SwapRows(at.Block, upper), to) with { Ask = null };
        if (at.Block == FormBlock.Stated && moved.Form.Document == state.Form.Document)
        {
            return state.Say("Stated rows stand in the order of their supports.");
        }

        string rows = at.Block == FormBlock.Stated ? "what is stated" : $"the {FormColumns.RowName(at.Block)}s";
        return moved.Say($"It is row {to.Row + 1} of {rows} now.", PlainWords.Outcome(moved.Form));
    });

    private static PlainStep OnRow(
        PlainState state, string text, string verb, Func<FormPlace, string, PlainStep> run)
    {
        if (PlainNames.BlockIn(text) is not (FormBlock block, string behind)
            || PlainTokens.Of(behind) is not [(string which, int end), ..])
        {
            return state.Say($"Which row? As: {verb} load 2, {verb} support B, {verb} span 1.");
        }

        if (block == FormBlock.Cases)
        {
            return state.Say(NoRowOfFile);
        }

        FormSheet sheet = state.Form.Sheet;
        return PlainNames.Row(sheet, block, which) is int row && row < sheet.RowsOf(block)
            && !FormMoves.IsEmptyRow(sheet, new FormPlace(block, row, default))
            ? run(new FormPlace(block, row, FormColumns.Of(block)[0]), PlainTokens.Rest(behind, end))
            : state.Say(NoRow(sheet, block, which));
    }

    /// <summary>Asks the cells of a row, from one of them on.</summary>
    internal static PlainStep Ask(PlainState state, FormPlace place) =>
        (state with { Ask = new PlainAsk.Cell(place, PlainWalk.Row) }).Say();

    private static PlainStep Insert(PlainState state, FormPlace place)
    {
        FormRow blank = FormRow.Blank(state.Form.Document, place.Block);
        return Ask(PlainCells.Make(state, new Edit.PutRow(place.Row, blank), place), place);
    }

    private static string NoRow(FormSheet sheet, FormBlock block, string word)
    {
        string name = FormColumns.RowName(block);
        if (block == FormBlock.Stated)
        {
            string[] labels = [.. StatedRows.Of(sheet.Document).Select(row => row.Label).OfType<string>().Distinct()];
            return labels.Contains(word, StringComparer.OrdinalIgnoreCase)
                ? $"Nothing is stated of {word}."
                : $"No support is called {word}. There {(labels.Length == 1 ? "is" : "are")} {string.Join(", ", labels)}.";
        }

        if (block == FormBlock.Cases)
        {
            string[] cases = [.. CaseRows.Of(sheet.Document).Select(row => row.Name)];
            return $"There is no case {word}. There {(cases.Length == 1 ? "is" : "are")} {string.Join(", ", cases)}.";
        }

        string there = block == FormBlock.Supports && sheet.RowsOf(block) > 0
            ? string.Join(", ", FormLabels.Of(sheet.Document).Select((label, row) =>
                label ?? (row + 1).ToString(CultureInfo.InvariantCulture)))
            : FormWords.Count(sheet.RowsOf(block), name);
        string are = sheet.RowsOf(block) == 1 ? "is" : "are";
        return $"There is no {name} {word}. There {are} {there}.{OneMore(block)}";
    }

    private static string OneMore(FormBlock block) =>
        block == FormBlock.Cases ? "" : $" For one more: add {FormColumns.RowName(block)}.";

    private static string CellsOf(FormSheet sheet, FormBlock block, int row) => string.Join(
        ", ",
        PlainNames.ColumnsOf(sheet, block).Select(column => PlainNames.NamesOf(sheet.Document, block, column)[0])
            .Concat(block is FormBlock.Rolling or FormBlock.Combinations
                ? []
                : PlainNames.KeysOf(sheet, block, row).Select(line => line.Words)));

    private static string Example(FormSheet sheet, FormBlock block) =>
        block == FormBlock.Supports ? "B" : block == FormBlock.Cases ? CaseRows.Of(sheet.Document)[0].Name : "1";
}
