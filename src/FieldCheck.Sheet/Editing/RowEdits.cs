using System.Diagnostics;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>Puts in, takes away and swaps whole rows, with all that goes by their numbers.</summary>
internal static class RowEdits
{
    internal static SheetChange Put(FormSheet sheet, int row, FormRow content)
    {
        if (content is FormRow.Stated stated)
        {
            return new SheetChange(StatedEdits.Put(sheet, row, stated.Entry));
        }

        FormSheet moved = Renumbered(sheet, BlockOf(content), old => old >= row ? old + 1 : old);
        BeamDocument document = moved.Document;
        switch (content)
        {
            case FormRow.Span span:
                (BeamDocument put, int first, int count) = SpanRows.Put(document, row, span.Entry);
                return new SheetChange(
                    moved with { Document = AskOfSupports(put, old => old >= first ? old + count : old) },
                    old => old >= first ? old + count : old);
            case FormRow.Support support:
                document = document with { Supports = document.Supports.Insert(row, support.Entry) };
                return new SheetChange(moved with { Document = document }, old => old >= row ? old + 1 : old);
            case FormRow.Load load:
                document = document with { Loads = document.Loads.Insert(row, load.Entry) };
                return new SheetChange(moved with { Document = document });
            case FormRow.Combination combination:
                document = document with { Combinations = document.Combinations.Insert(row, combination.Entry) };
                return new SheetChange(moved with { Document = document });
            case FormRow.Rolling rolling:
                document = document with { Rolling = document.Rolling.Insert(row, rolling.Entry) };
                return new SheetChange(moved with { Document = document });
            default:
                throw new UnreachableException();
        }
    }

    internal static SheetChange Copy(FormSheet sheet, FormBlock block, int row)
    {
        if (block == FormBlock.Stated)
        {
            return new SheetChange(StatedEdits.Copy(sheet, row));
        }

        SheetChange copied = Put(sheet, row + 1, CopyOf(sheet.Document, block, row));
        if (block != FormBlock.Loads || !sheet.BareSizes.Contains(row))
        {
            return copied;
        }

        Rows<int> bare = [.. copied.Sheet.BareSizes.Append(row + 1).Order()];
        return copied with { Sheet = copied.Sheet with { BareSizes = bare } };
    }

    internal static SheetChange Delete(FormSheet sheet, FormBlock block, int row)
    {
        if (block == FormBlock.Stated)
        {
            return new SheetChange(StatedEdits.Delete(sheet, row));
        }

        int? Left(int old) => old == row ? null : old > row ? old - 1 : old;

        FormSheet moved = Renumbered(sheet, block, Left);
        BeamDocument document = moved.Document;
        switch (block)
        {
            case FormBlock.Spans:
                int?[] kept = RowsKept(sheet.Document.Supports, support => !SpanRows.GoesWith(document, support, row));
                document = AskOfSupports(SpanRows.Delete(document, row), old => kept.ElementAtOrDefault(old));
                return new SheetChange(moved with { Document = document }, old => kept[old]);
            case FormBlock.Supports:
                document = document with { Supports = document.Supports.RemoveAt(row) };
                return new SheetChange(moved with { Document = document }, Left);
            case FormBlock.Combinations:
                document = document with { Combinations = document.Combinations.RemoveAt(row) };
                return new SheetChange(moved with { Document = document });
            case FormBlock.Rolling:
                document = document with { Rolling = document.Rolling.RemoveAt(row) };
                return new SheetChange(moved with { Document = document });
            default:
                document = document with { Loads = document.Loads.RemoveAt(row) };
                return new SheetChange(moved with { Document = document });
        }
    }

    internal static SheetChange Swap(FormSheet sheet, FormBlock block, int row)
    {
        if (block == FormBlock.Stated)
        {
            return new SheetChange(StatedEdits.Swap(sheet, row));
        }

        int? Swapped(int old) => old == row ? row + 1 : old == row + 1 ? row : old;

        FormSheet moved = Renumbered(sheet, block, Swapped);
        BeamDocument document = moved.Document;
        return block switch
        {
            FormBlock.Spans => new SheetChange(moved with { Document = SpanRows.Swap(document, row) }),
            FormBlock.Supports => new SheetChange(
                moved with { Document = document with { Supports = SwappedIn(document.Supports, row) } }, Swapped),
            FormBlock.Combinations => new SheetChange(
                moved with { Document = document with { Combinations = SwappedIn(document.Combinations, row) } }),
            FormBlock.Rolling => new SheetChange(
                moved with { Document = document with { Rolling = SwappedIn(document.Rolling, row) } }),
            _ => new SheetChange(moved with { Document = document with { Loads = SwappedIn(document.Loads, row) } }),
        };
    }

    internal static FormSheet PutCombinations(FormSheet sheet, Edit.PutCombinations put)
    {
        FormSheet kept = put.Replaces ? Renumbered(sheet, FormBlock.Combinations, _ => null) : sheet;
        Rows<CombinationEntry> standing = put.Replaces ? [] : sheet.Document.Combinations;
        return kept with { Document = kept.Document with { Combinations = put.Rows.AddedTo(standing) } };
    }

    internal static FormBlock BlockOf(FormRow content) => content switch
    {
        FormRow.Span => FormBlock.Spans,
        FormRow.Support => FormBlock.Supports,
        FormRow.Load => FormBlock.Loads,
        FormRow.Stated => FormBlock.Stated,
        FormRow.Combination => FormBlock.Combinations,
        FormRow.Rolling => FormBlock.Rolling,
        _ => throw new UnreachableException(),
    };

    private static Rows<T> SwappedIn<T>(Rows<T> rows, int row) =>
        rows.SetItem(row, rows[row + 1]).SetItem(row + 1, rows[row]);

    private static int?[] RowsKept<T>(Rows<T> rows, Func<T, bool> isKept)
    {
        int next = 0;
        return [.. rows.Select(row => isKept(row) ? next++ : (int?)null)];
    }

    // A copy of a support would stand where the first stands, and under its name: both are left to be typed.
    private static FormRow CopyOf(BeamDocument document, FormBlock block, int row) => block switch
    {
        FormBlock.Spans => new FormRow.Span(SpanRows.CopyOf(document, row)),
        FormBlock.Supports =>
            new FormRow.Support(document.Supports[row] with { Joint = null, At = null, Label = null }),
        FormBlock.Combinations => new FormRow.Combination(CombinationCells.CopyOf(document, row)),
        FormBlock.Rolling => new FormRow.Rolling(document.Rolling[row]),
        _ => new FormRow.Load(document.Loads[row]),
    };

    private static BeamDocument AskOfSupports(BeamDocument document, Func<int, int?> row) =>
        document with { Ask = AskedCells.Renumber(document.Ask, FormColumns.Table(FormBlock.Supports), row) };

    /// <summary>The sheet with new row numbers in all that goes by those of a block's table in the file.</summary>
    internal static FormSheet Renumbered(FormSheet sheet, FormBlock block, Func<int, int?> row) => new(
        sheet.Document with
        {
            Ask = AskedCells.Renumber(sheet.Document.Ask, FormColumns.Table(block), row),
        },
        block == FormBlock.Loads ? [.. sheet.BareSizes.Select(row).OfType<int>().Order()] : sheet.BareSizes);
}
