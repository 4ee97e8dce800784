using System.Collections.Immutable;
using System.Diagnostics;
using System.Text;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Document.Tables;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Writes content anew, tidily: keys in the schema's order with their equals signs below one another.</summary>
internal static class TomlWriter
{
    private const int LongLine = 100;

    /// <summary>A whole file.</summary>
    /// <param name="schema">What may stand in it.</param>
    /// <param name="content">What shall stand in it.</param>
    /// <param name="first">Keys with their values that come first; they are not of the content.</param>
    internal static string File(
        Schema.Table schema, Content.Table content, ImmutableArray<(string Key, string Value)> first)
    {
        Rows<ContentEntry> top = [.. content.Entries.Where(entry => !IsUnderHeader(schema[entry.Key]!))];
        ImmutableArray<(string Key, string Value)> pairs = [.. first, .. PairsOf(schema, new Content.Table(top))];
        List<string> blocks = pairs.IsEmpty ? [] : [Pairs(pairs)];
        foreach (SchemaKey key in schema.Keys.Where(key => IsUnderHeader(key.Schema)))
        {
            blocks.AddRange(Blocks(key, content[key.Key]));
        }

        return string.Join('\n', blocks);
    }

    /// <summary>True for what a file writes under headers of its own.</summary>
    internal static bool IsUnderHeader(Schema schema) =>
        schema is Schema.Table or Schema.NamedTables or Schema.TableRows { Inline: false };

    /// <summary>The blocks of a key of the top, each with its header.</summary>
    internal static IEnumerable<string> Blocks(SchemaKey key, Content? content) => (key.Schema, content) switch
    {
        (Schema.Table table, Content.Table one) => [Block($"[{key.Key}]", table, one)],
        (Schema.TableRows rows, Content.List list) =>
            list.Items.Select(item => Block($"[[{key.Key}]]", rows.Row, (Content.Table)item)),
        (Schema.NamedTables named, Content.Table tables) =>
            tables.Entries.Select(entry => NamedBlock(key.Key, named.Row, entry)),
        _ => [],
    };

    /// <summary>A table with a name, and its header.</summary>
    internal static string NamedBlock(string key, Schema.Table schema, ContentEntry entry) =>
        Block($"[{key}.{TomlText.Key(entry.Key)}]", schema, (Content.Table)entry.Content);

    /// <summary>A header and what stands under it.</summary>
    internal static string Block(string header, Schema.Table schema, Content.Table content) =>
        $"{header}\n{Pairs(PairsOf(schema, content))}";

    /// <summary>A value that begins behind a key; it may take several lines, which end in a line feed.</summary>
    internal static string Value(Schema schema, Content content)
    {
        if (schema is Schema.Cell cell)
        {
            return TomlLiteral.OfLines(((Content.Cell)content).Text, cell.Wanted);
        }

        string line = Inline(schema, content);
        return content is Content.List list && line.Length > LongLine
            ? $"[\n{string.Concat(list.Items.Select(item => $"  {Inline(CellSearch.OfItem(schema)!, item)},\n"))}]"
            : line;
    }

    /// <summary>A value on one line.</summary>
    internal static string Inline(Schema schema, Content content) => content switch
    {
        Content.Cell cell => TomlLiteral.Of(cell.Text, ((Schema.Cell)schema).Wanted),
        Content.Table { Entries.Count: 0 } => "{}",
        Content.Table table => $"{{ {string.Join(", ", table.Entries.Select(entry => Pair(schema, entry)))} }}",
        Content.List list => Bracketed(list.Items.Select(item => Inline(CellSearch.OfItem(schema)!, item)), schema),
        _ => throw new UnreachableException(),
    };

    /// <summary>A key with its value, on one line.</summary>
    internal static string Pair(Schema schema, ContentEntry entry) =>
        $"{TomlText.Key(entry.Key)} = {Inline(CellSearch.Below(schema, entry.Key)!, entry.Content)}";

    private static string Bracketed(IEnumerable<string> items, Schema schema) =>
        schema is Schema.Texts ? $"[{string.Join(", ", items)}]" : $"[ {string.Join(", ", items)} ]";

    private static ImmutableArray<(string Key, string Value)> PairsOf(Schema.Table schema, Content.Table content) =>
    [
        .. content.Entries.Select(entry => (entry.Key, Value(schema[entry.Key]!, entry.Content))),
    ];

    private static string Pairs(ImmutableArray<(string Key, string Value)> pairs)
    {
        int width = pairs.Max(pair => (int?)pair.Key.Length) ?? 0;
        StringBuilder text = new();
        foreach ((string key, string value) in pairs)
        {
            text.Append(key.PadRight(width)).Append(" = ").Append(value).Append('\n');
        }

        return text.ToString();
    }
}
