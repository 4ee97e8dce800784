namespace FieldCheck.Sheet.Reading;

/// <summary>Finds the known words that a mistyped one was probably meant to be.</summary>
public static class NearSpelling
{
    internal const int MostOffered = 3;

    private const int ShortWord = 4;

    /// <summary>The nearest words by slips: a letter added, dropped, changed, or swapped with its neighbour; case does not count.</summary>
    /// <param name="word">As typed.</param>
    /// <param name="known">What could have been meant, likeliest first: that order decides among equals.</param>
    /// <returns>At most three, all equally near; none where one slip, two in a longer word, is not enough.</returns>
    public static IReadOnlyList<string> Of(string word, IEnumerable<string> known)
    {
        int reach = word.Length < 2 ? 0 : word.Length <= ShortWord ? 1 : 2;

        // A word of a hostile file may be as long as the file, so lengths are compared before letters.
        List<(string Word, int Slips)> near = known
            .Where(candidate => candidate.Length > 1 && Math.Abs(candidate.Length - word.Length) <= reach)
            .Select(candidate => (candidate, Slips(word.ToUpperInvariant(), candidate.ToUpperInvariant())))
            .Where(candidate => candidate.Item2 <= reach)
            .ToList();
        int nearest = near.Count == 0 ? 0 : near.Min(candidate => candidate.Slips);
        return
        [
            .. near.Where(candidate => candidate.Slips == nearest)
                .Select(candidate => candidate.Word)
                .Take(MostOffered),
        ];
    }

    private static int Slips(string typed, string meant)
    {
        int[,] slips = new int[typed.Length + 1, meant.Length + 1];
        for (int i = 0; i <= typed.Length; i++)
        {
            for (int j = 0; j <= meant.Length; j++)
            {
                slips[i, j] = i == 0 ? j : j == 0 ? i : Least(slips, typed, meant, i, j);
            }
        }

        return slips[typed.Length, meant.Length];
    }

    private static int Least(int[,] slips, string typed, string meant, int i, int j)
    {
        int least = Math.Min(slips[i - 1, j], slips[i, j - 1]) + 1;
        least = Math.Min(least, slips[i - 1, j - 1] + (typed[i - 1] == meant[j - 1] ? 0 : 1));
        bool isSwapped = i > 1 && j > 1 && typed[i - 1] == meant[j - 2] && typed[i - 2] == meant[j - 1];
        return isSwapped ? Math.Min(least, slips[i - 2, j - 2] + 1) : least;
    }
}
