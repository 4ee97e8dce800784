using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>Makes every change of a beam that the form can make.</summary>
public static class Editor
{
    /// <summary>
    /// The beam after a change. What does not read is kept as typed: a bad cell never stops anything.
    /// </summary>
    /// <param name="sheet">The beam before it.</param>
    /// <param name="edit">The change; one that names a row that is not there changes nothing.</param>
    public static FormSheet Apply(FormSheet sheet, Edit edit)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        SheetChange change = edit switch
        {
            Edit.TypeCell typed => CellEdits.Type(sheet, typed.Place, typed.Text),
            Edit.PasteCells pasted => CellEdits.Paste(sheet, pasted),
            Edit.TypeKey typed => new(sheet with { Document = KeyEdits.Type(sheet.Document, typed.Key, typed.Text) }),
            Edit.TakeShape taken =>
                new(sheet with { Document = StickEdits.Shaped(sheet.Document, taken.Row, taken.Name) }),
            Edit.PutRow put when put.Row >= 0 && put.Row <= sheet.RowsOf(RowEdits.BlockOf(put.Content)) =>
                RowEdits.Put(sheet, put.Row, put.Content),
            Edit.CopyRow copied when Has(sheet, copied.Block, copied.Row) =>
                RowEdits.Copy(sheet, copied.Block, copied.Row),
            Edit.DeleteRow deleted when Has(sheet, deleted.Block, deleted.Row) =>
                RowEdits.Delete(sheet, deleted.Block, deleted.Row),
            Edit.SwapRows swapped when Has(sheet, swapped.Block, swapped.Row)
                && Has(sheet, swapped.Block, swapped.Row + 1) =>
                RowEdits.Swap(sheet, swapped.Block, swapped.Row),
            Edit.AnswerSize answered when Has(sheet, FormBlock.Loads, answered.Row) =>
                CellEdits.Answer(sheet, answered.Row, answered.InAll),
            Edit.PutCombinations put => new(RowEdits.PutCombinations(sheet, put)),
            Edit.ShowUnits units => new(sheet with { Document = sheet.Document with { Display = units.Display } }),
            _ => new(sheet),
        };
        BeamDocument followed = SupportNames.Follow(sheet.Document, change.Sheet.Document, change.SupportRow);
        return change.Sheet with { Document = CaseEdits.WithoutNamesForNone(sheet.Document, followed) };
    }

    // A case is no row of the file: it comes and goes with its loads, and so do sections and materials with the spans.
    private static bool Has(FormSheet sheet, FormBlock block, int row) =>
        block != FormBlock.Cases && !StickCells.Has(block) && row >= 0 && row < sheet.RowsOf(block);
}
