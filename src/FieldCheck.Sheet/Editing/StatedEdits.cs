using System.Collections.Immutable;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>Changes of what is stated; rows are counted as <see cref="StatedRows"/> does.</summary>
internal static class StatedEdits
{
    /// <summary>
    /// A text typed in a cell. In the row of a support of which nothing is stated it makes the row of the file; the last
    /// figure of a row emptied, the row leaves the file.
    /// </summary>
    internal static FormSheet Type(FormSheet sheet, FormPlace place, string? text)
    {
        BeamDocument document = sheet.Document;
        int rows = StatedRows.Of(document).Length;
        if (place.Row < 0 || place.Row > rows || (text is null && !StatedRows.IsStated(document, place.Row)))
        {
            return sheet;
        }

        StatedEntry before = StatedRows.EntryAt(document, place.Row);
        StatedEntry typed = StatedCells.Type(before, place.Column, text, document);
        return StatedRows.Of(document).ElementAtOrDefault(place.Row)?.Entry is not int entry
                ? Put(sheet, place.Row, typed)
            : HasFigure(before) && !HasFigure(typed) ? Without(sheet, entry)
            : With(sheet, document.Stated.SetItem(entry, typed));
    }

    /// <summary>Puts a row in; it stands with the others of its support.</summary>
    internal static FormSheet Put(FormSheet sheet, int row, StatedEntry entry)
    {
        // The file keeps the order of the rows as well as it may.
        int place = StatedRows.Of(sheet.Document).Take(row).LastOrDefault(above => above.Entry is not null)?.Entry + 1 ?? 0;
        FormSheet moved = RowEdits.Renumbered(sheet, FormBlock.Stated, old => old >= place ? old + 1 : old);
        return With(moved, sheet.Document.Stated.Insert(place, entry));
    }

    internal static FormSheet Copy(FormSheet sheet, int row) => StatedRows.IsStated(sheet.Document, row)
        ? Put(sheet, row + 1, StatedRows.EntryAt(sheet.Document, row))
        : sheet;

    internal static FormSheet Delete(FormSheet sheet, int row) =>
        StatedRows.Of(sheet.Document)[row].Entry is int entry ? Without(sheet, entry) : sheet;

    /// <summary>Swaps a row with the one below it, where both are of one support.</summary>
    internal static FormSheet Swap(FormSheet sheet, int row)
    {
        ImmutableArray<StatedRow> rows = StatedRows.Of(sheet.Document);
        if (rows[row].Entry is not int upper || rows[row + 1].Entry is not int lower || !AreOfOne(rows[row], rows[row + 1]))
        {
            return sheet;
        }

        Rows<StatedEntry> stated = sheet.Document.Stated;
        FormSheet moved = RowEdits.Renumbered(
            sheet, FormBlock.Stated, old => old == upper ? lower : old == lower ? upper : old);
        return With(moved, stated.SetItem(upper, stated[lower]).SetItem(lower, stated[upper]));
    }

    private static bool AreOfOne(StatedRow upper, StatedRow lower) =>
        string.Equals(upper.Label, lower.Label, StringComparison.OrdinalIgnoreCase);

    private static bool HasFigure(StatedEntry entry) =>
        entry.Vertical is not null || entry.Horizontal is not null || entry.Moment is not null;

    private static FormSheet Without(FormSheet sheet, int entry)
    {
        FormSheet moved = RowEdits.Renumbered(
            sheet, FormBlock.Stated, old => old == entry ? null : old > entry ? old - 1 : old);
        return With(moved, sheet.Document.Stated.RemoveAt(entry));
    }

    private static FormSheet With(FormSheet sheet, Rows<StatedEntry> stated) =>
        sheet with { Document = sheet.Document with { Stated = stated } };
}
