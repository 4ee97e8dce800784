using System.Collections.Immutable;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>Finds names by typed letters.</summary>
internal static class NameSearch
{
    private const int NotFound = int.MaxValue;

    /// <summary>
    /// The names that the text fits, best first: the name itself, names that begin so, names and then families that hold it,
    /// and last those where each of its words stands in either. Within a rank they keep their order.
    /// </summary>
    /// <param name="text">As typed; where nothing is typed, all names fit.</param>
    /// <param name="names">The names to search.</param>
    internal static ImmutableArray<CatalogueName> Of(string text, ImmutableArray<CatalogueName> names)
    {
        string typed = CatalogueName.Plain(text);
        string[] words =
            [.. text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(CatalogueName.Plain).Where(word => word.Length > 0)];
        return typed.Length == 0 && text.Trim().Length > 0
            ? []
            : [.. names
                .Select(name => (Name: name, Rank: Rank(typed, words, name)))
                .Where(found => found.Rank != NotFound)
                .OrderBy(found => found.Rank)
                .Select(found => found.Name)];
    }

    private static int Rank(string typed, string[] words, CatalogueName candidate)
    {
        string name = CatalogueName.Plain(candidate.Name);
        string family = CatalogueName.Plain(candidate.Family);
        return name == typed ? 0
            : name.StartsWith(typed, StringComparison.Ordinal) ? 1
            : name.Contains(typed, StringComparison.Ordinal) ? 2
            : family.Contains(typed, StringComparison.Ordinal) ? 3
            : words.All(word =>
                name.Contains(word, StringComparison.Ordinal) || family.Contains(word, StringComparison.Ordinal)) ? 4
            : NotFound;
    }
}
