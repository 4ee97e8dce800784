namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Brings the blocks of the rows of one table into a new order, and moves as few as may be.</summary>
internal static class BlockOrder
{
    /// <summary>Brings the blocks into order.</summary>
    /// <param name="draft">The file.</param>
    /// <param name="old">The blocks of each old row, one or more; of one old row at least.</param>
    /// <param name="match">For each row now, the number of the old one, or -1 for a new one.</param>
    /// <param name="added">Makes the block of a new row.</param>
    internal static void Arrange(
        FileDraft draft, List<BlockDraft>[] old, int[] match, Func<int, BlockDraft> added)
    {
        HashSet<int> staying = Staying(match);
        BlockDraft? before = null;
        for (int row = 0; row < match.Length; row++)
        {
            bool isOld = match[row] >= 0;
            List<BlockDraft> blocks = isOld ? old[match[row]] : [added(row)];
            if (!staying.Contains(row))
            {
                int index = before is not null ? draft.Blocks.IndexOf(before) + 1 : Start(draft, old, match, staying);
                Put(draft, blocks, index, isOld, before is null);
            }

            before = blocks[^1];
        }
    }

    private static void Put(FileDraft draft, List<BlockDraft> blocks, int index, bool isOld, bool isFirst)
    {
        BlockDraft? next = isFirst ? draft.Blocks.ElementAtOrDefault(index) : null;
        foreach (BlockDraft block in blocks)
        {
            if (isOld)
            {
                draft.Move(block, index++);
            }
            else
            {
                draft.Blocks.Insert(index++, block);
            }
        }

        // What stands above the first row, a heading perhaps, stays above the first row.
        if (next is not null && next.Key == blocks[0].Key)
        {
            (blocks[0].Gap, next.Gap) = (next.Gap, blocks[0].Gap);
        }
    }

    private static int Start(FileDraft draft, List<BlockDraft>[] old, int[] match, HashSet<int> staying) =>
        draft.Blocks.IndexOf(staying.Count > 0 ? old[match[staying.Min()]][0] : old[0][0]);

    /// <summary>The rows that need not move: the longest sequence of them that is in the old order.</summary>
    private static HashSet<int> Staying(int[] match)
    {
        List<int> ends = [];
        int[] previous = new int[match.Length];
        foreach (int row in Enumerable.Range(0, match.Length).Where(row => match[row] >= 0))
        {
            int low = 0;
            for (int high = ends.Count; low < high;)
            {
                int middle = (low + high) / 2;
                (low, high) = match[ends[middle]] < match[row] ? (middle + 1, high) : (low, middle);
            }

            previous[row] = low > 0 ? ends[low - 1] : -1;
            if (low == ends.Count)
            {
                ends.Add(row);
            }

            ends[low] = row;
        }

        HashSet<int> staying = [];
        for (int row = ends.LastOrDefault(-1); row >= 0; row = previous[row])
        {
            staying.Add(row);
        }

        return staying;
    }
}
