using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Document.Tables;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Finds which old named table each new one was: by its name, or else, renamed, by what it holds.</summary>
internal static class NameAlignment
{
    /// <summary>Matches tables; for each one now the number of the old one, or -1 for a new one.</summary>
    internal static int[] Match(Schema.Table schema, List<TomlEntry> old, Rows<ContentEntry> now)
    {
        Dictionary<string, int> byName = old.Select((entry, number) => (entry.Key, number))
            .ToDictionary(pair => pair.Key, pair => pair.number, StringComparer.Ordinal);
        int[] match = [.. now.Select(entry => byName.GetValueOrDefault(entry.Key, -1))];
        HashSet<int> taken = [.. match];
        int[] oldLeft = [.. Enumerable.Range(0, old.Count).Where(number => !taken.Contains(number))];
        int[] nowLeft = [.. Enumerable.Range(0, now.Count).Where(number => match[number] < 0)];
        int[] renamed = RowAlignment.Match(
            [.. oldLeft.Select(number => ContentBinder.Of(schema, old[number].Node)!)],
            [.. nowLeft.Select(number => now[number].Content)]);
        for (int i = 0; i < nowLeft.Length; i++)
        {
            match[nowLeft[i]] = renamed[i] < 0 ? -1 : oldLeft[renamed[i]];
        }

        return match;
    }
}
