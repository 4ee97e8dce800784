namespace FieldCheck.Sheet.Reading;

/// <summary>Finds the known words that a mistyped one was probably meant to be.</summary>
public static class NearSpelling
{
    internal const int MostOffered = 3;

    private const int ShortWord = 4;

    /// <summary>The nearest words by letters added, dropped or changed; case does not count.</summary>
    /// <param name="word">As typed.</param>
    /// <param name="known">What could have been meant, likeliest first: that order decides among equals.</param>
    /// <returns>At most three, all equally near; none where one letter, two in a longer word, is not enough.</returns>
    public static IReadOnlyList<string> Of(string word, IEnumerable<string> known)
    {
        int reach = word.Length < 2 ? 0 : word.Length <= ShortWord ? 1 : 2;
        List<(string Word, int Distance)> near = known
            .Where(candidate => candidate.Length > 1)
            .Select(candidate => (candidate, Distance(word.ToUpperInvariant(), candidate.ToUpperInvariant())))
            .Where(candidate => candidate.Item2 <= reach)
            .ToList();
        int nearest = near.Count == 0 ? 0 : near.Min(candidate => candidate.Distance);
        return
        [
            .. near.Where(candidate => candidate.Distance == nearest)
                .Select(candidate => candidate.Word)
                .Take(MostOffered),
        ];
    }

    /// <summary>Levenshtein's distance, one row of the table at a time.</summary>
    private static int Distance(string from, string to)
    {
        int[] row = [.. Enumerable.Range(0, to.Length + 1)];
        for (int i = 1; i <= from.Length; i++)
        {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= to.Length; j++)
            {
                int changed = diagonal + (from[i - 1] == to[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(Math.Min(row[j], row[j - 1]) + 1, changed);
            }
        }

        return row[^1];
    }
}
