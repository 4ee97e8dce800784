using FieldCheck.Sheet.Document.Tables;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Finds which old row each new row was, by what they hold: rows have no marks of their own.</summary>
internal static class RowAlignment
{
    /// <summary>Pairs of rows to be compared at most; beyond it rows are paired by their order alone.</summary>
    private const long MostPairs = 1_000_000;

    /// <summary>Cells of a row that may all be changed at once; where more are, the row is taken for another one.</summary>
    private const int MostCellsOfShortRow = 2;

    /// <summary>Matches rows.</summary>
    /// <param name="old">The rows before.</param>
    /// <param name="now">The rows now.</param>
    /// <returns>For each row now, the number of the old one, or -1 for a new row. No old row is named twice.</returns>
    /// <remarks>
    /// Rows that stayed are found first, as the longest common sequence; then those that were moved unchanged; what is
    /// left between two that stayed is paired in order, so that most cells agree.
    /// </remarks>
    internal static int[] Match(IReadOnlyList<Content> old, IReadOnlyList<Content> now)
    {
        int[] match = new int[now.Count];
        Array.Fill(match, -1);
        MatchStaying(old, now, match);
        List<(int Old, int Now)> stayed =
            [(-1, -1), .. match.Select((from, to) => (from, to)).Where(pair => pair.from >= 0), (old.Count, now.Count)];
        MatchMoved(old, now, match);
        HashSet<int> taken = [.. match];
        for (int i = 1; i < stayed.Count; i++)
        {
            int[] oldLeft = [.. Between(stayed[i - 1].Old, stayed[i].Old).Where(row => !taken.Contains(row))];
            int[] nowLeft = [.. Between(stayed[i - 1].Now, stayed[i].Now).Where(row => match[row] < 0)];
            MatchSimilar(old, now, match, oldLeft, nowLeft);
        }

        return match;
    }

    private static IEnumerable<int> Between(int before, int after) => Enumerable.Range(before + 1, after - before - 1);

    private static void MatchStaying(IReadOnlyList<Content> old, IReadOnlyList<Content> now, int[] match)
    {
        int start = 0;
        while (start < old.Count && start < now.Count && old[start].Equals(now[start]))
        {
            match[start] = start++;
        }

        int end = 0;
        while (end < Math.Min(old.Count, now.Count) - start && old[old.Count - 1 - end].Equals(now[now.Count - 1 - end]))
        {
            end++;
            match[now.Count - end] = old.Count - end;
        }

        int oldCount = old.Count - start - end;
        int nowCount = now.Count - start - end;
        Pair(oldCount, nowCount, (i, j) => old[start + i].Equals(now[start + j]) ? 1 : 0,
            (i, j) => match[start + j] = start + i);
    }

    private static void MatchMoved(IReadOnlyList<Content> old, IReadOnlyList<Content> now, int[] match)
    {
        HashSet<int> taken = [.. match];
        ILookup<Content, int> free = Enumerable.Range(0, old.Count).Where(row => !taken.Contains(row))
            .ToLookup(row => old[row]);
        for (int row = 0; row < now.Count; row++)
        {
            if (match[row] < 0)
            {
                match[row] = free[now[row]].Where(taken.Add).Take(1).DefaultIfEmpty(-1).Single();
            }
        }
    }

    private static void MatchSimilar(
        IReadOnlyList<Content> old, IReadOnlyList<Content> now, int[] match, int[] oldLeft, int[] nowLeft)
    {
        bool isDone = Pair(oldLeft.Length, nowLeft.Length, (i, j) => Likeness(old[oldLeft[i]], now[nowLeft[j]]),
            (i, j) => match[nowLeft[j]] = oldLeft[i]);
        for (int i = 0; !isDone && i < Math.Min(oldLeft.Length, nowLeft.Length); i++)
        {
            match[nowLeft[i]] = oldLeft[i];
        }
    }

    /// <summary>How much speaks for two rows being one; 0 for rows that are taken for different ones.</summary>
    private static int Likeness(Content a, Content b)
    {
        if ((a, b) is not (Content.Table one, Content.Table other))
        {
            return 1;
        }

        int agreeing = one.Entries.Count(entry => entry.Content.Equals(other[entry.Key]));
        bool isShort = Math.Max(one.Entries.Count, other.Entries.Count) <= MostCellsOfShortRow;
        return agreeing > 0 || isShort ? 1 + (2 * agreeing) : 0;
    }

    /// <summary>Pairs two sequences in order for the greatest sum of worths; a pair worth nothing is not made.</summary>
    /// <returns>False where there are too many to compare.</returns>
    private static bool Pair(int oldCount, int nowCount, Func<int, int, int> worthOf, Action<int, int> pair)
    {
        if ((long)oldCount * nowCount > MostPairs)
        {
            return false;
        }

        int[,] worth = new int[oldCount, nowCount];
        int[,] best = new int[oldCount + 1, nowCount + 1];
        for (int i = oldCount - 1; i >= 0; i--)
        {
            for (int j = nowCount - 1; j >= 0; j--)
            {
                worth[i, j] = worthOf(i, j);
                best[i, j] = Math.Max(Math.Max(best[i + 1, j], best[i, j + 1]), best[i + 1, j + 1] + worth[i, j]);
            }
        }

        for (int i = 0, j = 0; i < oldCount && j < nowCount;)
        {
            if (worth[i, j] > 0 && best[i, j] == best[i + 1, j + 1] + worth[i, j])
            {
                pair(i++, j++);
            }
            else if (best[i, j] == best[i + 1, j])
            {
                i++;
            }
            else
            {
                j++;
            }
        }

        return true;
    }
}
