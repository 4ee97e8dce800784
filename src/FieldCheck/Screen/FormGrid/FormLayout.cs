using System.Collections.Immutable;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen.FormGrid;

/// <summary>Shares the lines of the form out to its blocks; where the person is, is always seen.</summary>
internal static class FormLayout
{
    /// <summary>How many lines show every row of every block of the Beam view.</summary>
    /// <param name="sheet">The beam.</param>
    internal static int HeightOf(FormSheet sheet) => HeightWith(sheet, FormBlock.Spans);

    /// <summary>How many lines show every row of all blocks of the view that a block is in.</summary>
    /// <param name="sheet">The beam.</param>
    /// <param name="block">The block.</param>
    internal static int HeightWith(FormSheet sheet, FormBlock block) =>
        FormMoves.Beside(block).Sum(other => HeightOf(sheet, other));

    /// <summary>How many lines show every row of a block.</summary>
    /// <param name="sheet">The beam.</param>
    /// <param name="block">The block.</param>
    internal static int HeightOf(FormSheet sheet, FormBlock block) => 1 + AllRows(sheet, block);

    /// <summary>True: in so many lines only the block that the person is in is seen.</summary>
    /// <param name="block">The block that the person is in.</param>
    /// <param name="height">The lines.</param>
    internal static bool IsOneBlock(FormBlock block, int height)
    {
        int blocks = FormMoves.Beside(block).Length;
        return blocks == 1 || height < 2 * blocks;
    }

    /// <summary>The blocks that are seen in so many lines, a heading for each.</summary>
    /// <param name="sheet">The beam.</param>
    /// <param name="focus">Where the person is.</param>
    /// <param name="height">The lines; 1 or more. In one line there is no heading.</param>
    internal static ImmutableArray<BlockWindow> Of(FormSheet sheet, FormPlace focus, int height)
    {
        ImmutableArray<FormBlock> blocks = FormMoves.Beside(focus.Block);
        if (IsOneBlock(focus.Block, height))
        {
            return [Window(sheet, focus, focus.Block, Math.Max(height - 1, 1))];
        }

        int left = height - 2 * blocks.Length;
        Dictionary<FormBlock, int> shares = blocks.ToDictionary(block => block, _ => 1);
        foreach ((FormBlock block, int wanted) in blocks.Contains(FormBlock.Loads) ? Wishes(sheet, focus)
            : blocks.Contains(FormBlock.Cases) ? WishesOfCases(sheet, focus)
            : WishesOfSection(sheet, focus))
        {
            int given = Math.Clamp(wanted - shares[block], 0, left);
            shares[block] += given;
            left -= given;
        }

        return [.. blocks.Select(block => Window(sheet, focus, block, shares[block]))];
    }

    // A row beside the person's, then the block the person is in; the combinations before the rest.
    private static IEnumerable<(FormBlock Block, int Rows)> WishesOfCases(FormSheet sheet, FormPlace focus)
    {
        yield return (focus.Block, Math.Min(AllRows(sheet, focus.Block), 2));
        yield return (focus.Block, AllRows(sheet, focus.Block));
        foreach (FormBlock block in new[] { FormBlock.Combinations, FormBlock.Cases, FormBlock.Rolling })
        {
            yield return (block, sheet.RowsOf(block));
        }

        foreach (FormBlock block in FormMoves.Beside(focus.Block))
        {
            yield return (block, AllRows(sheet, block));
        }
    }

    // All of the block that the person is in, then the blocks in their order.
    private static IEnumerable<(FormBlock Block, int Rows)> WishesOfSection(FormSheet sheet, FormPlace focus) =>
        FormMoves.Beside(focus.Block).Prepend(focus.Block).Select(block => (block, AllRows(sheet, block)));

    // A row beside the person's is wanted before all, then a second support; then the block the person is in, then rows
    // of the beam, then the rest.
    private static IEnumerable<(FormBlock Block, int Rows)> Wishes(FormSheet sheet, FormPlace focus)
    {
        yield return (focus.Block, Math.Min(sheet.RowsOf(focus.Block), 2));
        yield return (FormBlock.Supports, Math.Min(sheet.RowsOf(FormBlock.Supports), 2));
        yield return (focus.Block, AllRows(sheet, focus.Block));
        foreach (FormBlock block in new[] { FormBlock.Loads, FormBlock.Supports, FormBlock.Spans })
        {
            yield return (block, sheet.RowsOf(block) + (block == FormBlock.Loads && IsOwnWeightOn(sheet) ? 1 : 0));
        }

        foreach (FormBlock block in FormMoves.Beside(focus.Block))
        {
            yield return (block, AllRows(sheet, block));
        }
    }

    private static BlockWindow Window(FormSheet sheet, FormPlace focus, FormBlock block, int count)
    {
        int top = block == FormBlock.Loads ? FormPlace.OwnWeightRow : 0;
        int all = AllRows(sheet, block);
        int shown = Math.Min(count, all);
        int first = top;
        if (block == focus.Block)
        {
            // One row below the person's is seen too where there is room for it.
            int last = Math.Min(focus.Row + (shown > 2 ? 1 : 0), FormMoves.LastRow(sheet, block));
            first = Math.Max(top, last - shown + 1);
        }
        else if (block == FormBlock.Loads && shown < all && sheet.RowsOf(block) > 0
            && (!IsOwnWeightOn(sheet) || shown == 1))
        {
            first = 0;
        }

        int seen = Enumerable.Range(first, shown).Count(row => row >= 0 && row < sheet.RowsOf(block));
        return new BlockWindow(block, first, shown, sheet.RowsOf(block) - seen);
    }

    private static int AllRows(FormSheet sheet, FormBlock block) =>
        FormMoves.LastRow(sheet, block) + (block == FormBlock.Loads ? 2 : 1);

    private static bool IsOwnWeightOn(FormSheet sheet) => sheet.Document.SelfWeight is not null;
}
