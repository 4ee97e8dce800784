namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Finds the word that a misspelt one was meant to be.</summary>
internal static class NearSpelling
{
    /// <summary>Slips that two words may be apart to be near: letters too many, missing, wrong, or swapped with the next.</summary>
    private const int MostSlips = 2;

    /// <summary>The nearest of the words, or null where none is near. Of words equally near, the first.</summary>
    internal static string? Of(string word, IEnumerable<string> words) => words
        .Select(known => (Word: known, Slips: Slips(word, known)))
        .Where(near => near.Slips <= Math.Min(MostSlips, (near.Word.Length - 1) / 2))
        .OrderBy(near => near.Slips)
        .Select(near => near.Word)
        .FirstOrDefault();

    private static int Slips(string a, string b)
    {
        // A word of a hostile file may be as long as the file.
        if (Math.Abs(a.Length - b.Length) > MostSlips)
        {
            return int.MaxValue;
        }

        int[,] slips = new int[a.Length + 1, b.Length + 1];
        for (int i = 0; i <= a.Length; i++)
        {
            for (int j = 0; j <= b.Length; j++)
            {
                slips[i, j] = i == 0 ? j : j == 0 ? i : Least(slips, a, b, i, j);
            }
        }

        return slips[a.Length, b.Length];
    }

    private static int Least(int[,] slips, string a, string b, int i, int j)
    {
        int least = Math.Min(slips[i - 1, j], slips[i, j - 1]) + 1;
        least = Math.Min(least, slips[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1));
        bool isSwapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
        return isSwapped ? Math.Min(least, slips[i - 2, j - 2] + 1) : least;
    }
}
