namespace FieldCheck.Fuzz;

/// <summary>Texts that are worth reading again at every run of the tests: few, short, and each with an answer of its own.</summary>
/// <remarks>
/// Those of one target are lines of Corpus/NAME.txt, each as <see cref="QuotedText"/> writes it. Corpus/NAME-found.txt holds
/// what once was not answered as promised; lines that begin with # say what it was.
/// </remarks>
public static class FuzzCorpus
{
    /// <summary>No text of a corpus is longer.</summary>
    public const int Longest = 4096;

    /// <summary>The corpus of a target, with what was once found.</summary>
    /// <param name="target">What it is called.</param>
    public static IReadOnlyList<string> Of(string target) => [.. Lines($"{target}.txt"), .. Lines($"{target}-found.txt")];

    /// <summary>Few of these texts with every kind of answer among them; of too many those that add most. The short first.</summary>
    /// <param name="kinds">Each text with the kinds of its answers.</param>
    /// <param name="most">How many texts at most.</param>
    public static IReadOnlyList<string> Fewest(IReadOnlyDictionary<string, IReadOnlySet<string>> kinds, int most)
    {
        Dictionary<string, HashSet<string>> left = kinds
            .OrderBy(pair => pair.Key.Length)
            .ThenBy(pair => pair.Key, StringComparer.Ordinal)
            .ToDictionary(pair => pair.Key, pair => new HashSet<string>(pair.Value, StringComparer.Ordinal), StringComparer.Ordinal);
        List<string> few = [];
        while (few.Count < most && left.Count > 0 && left.MaxBy(pair => pair.Value.Count) is { Value.Count: > 0 } best)
        {
            few.Add(best.Key);
            string[] had = [.. best.Value];
            foreach (HashSet<string> kind in left.Values)
            {
                kind.ExceptWith(had);
            }
        }

        return [.. few.OrderBy(text => text.Length).ThenBy(text => text, StringComparer.Ordinal)];
    }

    private static IEnumerable<string> Lines(string file)
    {
        using Stream? stream = typeof(FuzzCorpus).Assembly.GetManifestResourceStream("corpus/" + file);
        using StreamReader reader = new(stream ?? Stream.Null);
        while (reader.ReadLine() is string line)
        {
            if (line.StartsWith('"'))
            {
                yield return QuotedText.Read(line);
            }
        }
    }
}
