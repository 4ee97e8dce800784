using FieldCheck.Sheet.Document.Tables;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Says what was expected where a key or table is not known.</summary>
internal static class UnknownKey
{
    /// <summary>What is wrong with a key.</summary>
    /// <param name="top">What is known at the top of the file.</param>
    /// <param name="table">What is known where it stands.</param>
    /// <param name="entry">The key.</param>
    /// <param name="near">A known key of nearly the same spelling, or null.</param>
    internal static string Say(Schema.Table top, Schema.Table table, TomlEntry entry, string? near)
    {
        bool isTop = table == top;
        string what = isTop && entry.Node is not TomlCell ? "unknown table" : "unknown key";
        if (near is not null)
        {
            return $"{what}; did you mean {(isTop ? Header(near, table[near]!) : near)}?";
        }

        if (!isTop && IsOfTheTop(top, entry.Key))
        {
            return $"{what}; {entry.Key} stands at the top of the file, before the first table";
        }

        IEnumerable<string> known = isTop && entry.Node is not TomlCell
            ? table.Keys.Where(key => !IsValue(key.Schema)).Select(key => Header(key.Key, key.Schema))
            : table.Keys.Where(key => !isTop || IsValue(key.Schema)).Select(key => key.Key);
        return $"{what}; known here: {string.Join(", ", known)}";
    }

    /// <summary>A key of the top as it is written there: <c>title</c>, <c>[record]</c>, <c>[[span]]</c>, <c>[section.NAME]</c>.</summary>
    internal static string Header(string key, Schema schema) => schema switch
    {
        Schema.TableRows => $"[[{key}]]",
        Schema.NamedTables => $"[{key}.NAME]",
        Schema.Table => $"[{key}]",
        _ => key,
    };

    private static bool IsOfTheTop(Schema.Table top, string key) =>
        (top == FileContent.Schema && key == BeamFileFormat.Key) || (top[key] is Schema schema && IsValue(schema));

    private static bool IsValue(Schema schema) => schema is Schema.Cell or Schema.Texts or Schema.Figures;
}
