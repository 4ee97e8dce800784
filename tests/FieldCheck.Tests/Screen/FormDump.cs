using System.Text;
using FieldCheck.Screen;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Tests.Screen;

/// <summary>
/// A form as lines of text, both ways: a line a row, cells with "|" between them, "[ ]" round the cell that the person
/// is on. Empty cells at the end of a row are left out. Of sections, materials, limits and what is held and borne, only
/// what stands is told, each behind its heading: "section beam: width = 75 mm".
/// </summary>
internal static class FormDump
{
    internal static string Of(ScreenState state)
    {
        StringBuilder text = new();
        foreach (FormBlock block in Enum.GetValues<FormBlock>())
        {
            int first = block == FormBlock.Loads ? FormPlace.OwnWeightRow : 0;
            for (int row = first; row <= FormMoves.LastRow(state.Sheet, block); row++)
            {
                Row(text, state, block, row);
            }
        }

        return text.ToString();
    }

    /// <summary>Types the rows of a dump into an empty beam.</summary>
    internal static (BeamDocument Document, FormPlace? Focus) Read(IEnumerable<string> lines)
    {
        FormSheet sheet = new(new BeamDocument());
        FormPlace? focus = null;
        Dictionary<FormBlock, int> rows = Enum.GetValues<FormBlock>().ToDictionary(block => block, _ => 0);
        foreach (string line in lines)
        {
            (string head, string rest) = (line[..line.IndexOf(':')], line[(line.IndexOf(':') + 1)..]);
            bool isOwnWeight = head.Trim() == "own weight";
            FormBlock block = head.Trim().Split(' ') switch
            {
                ["stated", ..] => FormBlock.Stated,
                ["section", ..] => FormBlock.Sections,
                ["material", ..] => FormBlock.Materials,
                ["limits"] => FormBlock.Limits,
                ["span", _, "held"] => FormBlock.Bracing,
                ["support", _, "bears"] => FormBlock.Bearings,
                ["case", ..] => FormBlock.Cases,
                ["combination", ..] or ["new", "combination"] => FormBlock.Combinations,
                ["rolling", ..] or ["new", "rolling", "load"] => FormBlock.Rolling,
                ["own", ..] or [.., "load"] or ["load", ..] => FormBlock.Loads,
                [.., "span"] or ["span", ..] => FormBlock.Spans,
                _ => FormBlock.Supports,
            };
            if (StickCells.Has(block))
            {
                (sheet, focus) = ReadStick(sheet, focus, block, head.Trim(), rest);
                continue;
            }

            int row = isOwnWeight ? FormPlace.OwnWeightRow
                : block is FormBlock.Stated or FormBlock.Cases ? RowOf(sheet, block, head.Trim())
                : rows[block];
            rows[block] += isOwnWeight ? 0 : 1;
            string[] cells = [.. rest.Split('|').Select(cell => cell.Trim())];
            for (int index = 0; index < cells.Length; index++)
            {
                FormPlace place = isOwnWeight
                    ? new FormPlace(block, row, index == 0 ? FormColumn.Size : FormColumn.Case)
                    : new FormPlace(block, row, FormMoves.ColumnsOf(sheet, new FormPlace(block, row, default))[index]);
                bool isFocus = cells[index].StartsWith('[');
                focus = isFocus ? place : focus;
                string cell = isFocus ? cells[index][1..^1].Trim() : cells[index];
                if (cell.Length > 0)
                {
                    sheet = Editor.Apply(sheet, new Edit.TypeCell(place, cell));
                }
            }

            // A span brings its own supports; the dump lists all that there are.
            sheet = block == FormBlock.Spans ? sheet with { Document = sheet.Document with { Supports = [] } } : sheet;
        }

        return (sheet.Document, focus);
    }

    private static (FormSheet Sheet, FormPlace? Focus) ReadStick(
        FormSheet sheet, FormPlace? focus, FormBlock block, string name, string rest)
    {
        int row = RowOf(sheet, block, name.Replace(" held", "").Replace(" bears", ""));
        foreach (string cell in rest.Split('|'))
        {
            string[] parts = [.. cell.Split('=', 2).Select(part => part.Trim())];
            FormColumn column = FormColumns.Of(block).First(column => FormColumns.Heading(column) == parts[0]);
            FormPlace place = new(block, row, column);
            bool isFocus = parts[1].StartsWith('[');
            focus = isFocus ? place : focus;
            sheet = Editor.Apply(sheet, new Edit.TypeCell(place, isFocus ? parts[1][1..^1] : parts[1]));
        }

        return (sheet, focus);
    }

    private static int RowOf(FormSheet sheet, FormBlock block, string name) => Enumerable.Range(0, sheet.RowsOf(block))
        .First(row => FormWords.Row(sheet, block, row) == name);

    private static void Row(StringBuilder text, ScreenState state, FormBlock block, int row)
    {
        FormPlace first = new(block, row, FormColumn.Size);
        List<string> cells = [];
        foreach (FormColumn column in FormMoves.ColumnsOf(state.Sheet, first))
        {
            FormPlace place = first with { Column = column };
            string cell = state.Draft is CellDraft draft && draft.Place == place
                ? draft.Line.Text.Insert(draft.Line.Caret, "_")
                : FormCells.TextOf(state.Document, place) ?? "";
            cells.Add(state.Focus == place ? $"[{cell}]" : cell);
        }

        if (StickCells.Has(block))
        {
            string[] standing =
            [
                .. FormMoves.ColumnsOf(state.Sheet, first).Zip(cells)
                    .Where(cell => cell.Second.Length > 0)
                    .Select(cell => $"{FormColumns.Heading(cell.First)} = {cell.Second}"),
            ];
            string verb = block == FormBlock.Bracing ? " held" : block == FormBlock.Bearings ? " bears" : "";
            text.Append(standing.Length == 0
                ? ""
                : $"{FormWords.Row(state.Sheet, block, row)}{verb}: {string.Join(" | ", standing)}\n");
            return;
        }

        while (cells.Count > 0 && cells[^1].Length == 0)
        {
            cells.RemoveAt(cells.Count - 1);
        }

        bool isBare = FormMoves.IsEmptyRow(state.Sheet, first) || (row < 0 && state.Document.SelfWeight is null)
            || (block == FormBlock.Cases && !CaseRows.Of(state.Document)[row].IsPattern);
        if (cells.Count > 0 && !(isBare && cells.All(cell => !cell.StartsWith('['))))
        {
            text.Append($"{FormWords.Row(state.Sheet, block, row)}: {string.Join(" | ", cells)}\n");
        }
    }
}
