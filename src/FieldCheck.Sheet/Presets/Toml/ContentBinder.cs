using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Document.Tables;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Makes content of what stands in a file, walking the schema beside it; what does not fit is told.</summary>
/// <param name="top">What may stand at the top of the file.</param>
internal sealed class ContentBinder(Schema.Table top)
{
    private readonly List<TomlProblem> _problems = [];

    /// <summary>What did not fit, in no order.</summary>
    internal IReadOnlyList<TomlProblem> Problems => _problems;

    /// <summary>The content of something, without regard to problems.</summary>
    internal static Content? Of(Schema schema, TomlNode node) => new ContentBinder(FileContent.Schema).Bind(schema, node);

    /// <summary>The content of something; null where nothing stands in it.</summary>
    internal Content? Bind(Schema schema, TomlNode node) => (schema, node) switch
    {
        (Schema.Cell, TomlCell cell) => new Content.Cell(cell.Text),
        (Schema.Texts, TomlList { UnderHeaders: false } list) => Texts(list),
        (Schema.Figures figures, TomlTable table) => Figures(figures, table),
        (Schema.Table known, TomlTable table) => Table(known, table),
        (Schema.TableRows rows, TomlList list) => Rows(rows, list),
        (Schema.NamedTables named, TomlTable table) => Named(named, table),
        _ => Misfit(schema, node),
    };

    private Content.List? Texts(TomlList list)
    {
        Rows<Content> items = [.. list.Items.Select(item => Bind(CellSearch.OfItem(new Schema.Texts())!, item)).OfType<Content>()];
        return items.Count == 0 ? null : new Content.List(items);
    }

    private Content.Table? Figures(Schema.Figures figures, TomlTable table)
    {
        Schema.Cell cell = new(figures.Wanted);
        Rows<ContentEntry> entries = [.. table.Entries.Select(entry => Entry(entry.Key, cell, entry)).OfType<ContentEntry>()];
        return entries.Count == 0 ? null : new Content.Table(entries);
    }

    private Content.Table? Table(Schema.Table known, TomlTable table)
    {
        Dictionary<string, TomlEntry> taken = table.Entries
            .Where(entry => known[entry.Key] is not null)
            .ToDictionary(entry => entry.Key, StringComparer.Ordinal);
        foreach (TomlEntry entry in table.Entries.Where(entry => known[entry.Key] is null && !IsFormat(table, entry)))
        {
            string? near =
                NearSpelling.Of(entry.Key, known.Keys.Select(key => key.Key)) is [string meant, ..] ? meant : null;
            _problems.Add(TomlProblem.At(entry.KeySpan, entry.Node.Path.ToString(), UnknownKey.Say(top, known, entry, near)));

            // Read as what it was meant to be: or else "missing" would be told of the same slip.
            if (near is not null)
            {
                taken.TryAdd(near, entry);
            }
        }

        Rows<ContentEntry> entries =
        [
            .. known.Keys
                .Where(key => taken.ContainsKey(key.Key))
                .Select(key => Entry(key.Key, key.Schema, taken[key.Key]))
                .OfType<ContentEntry>(),
        ];
        return entries.Count > 0 || known.SaysByStanding ? new Content.Table(entries) : null;
    }

    private Content.List? Rows(Schema.TableRows rows, TomlList list)
    {
        Rows<Content> items = [.. list.Items.Select(item => Bind(rows.Row, item) ?? new Content.Table([]))];
        return items.Count == 0 ? null : new Content.List(items);
    }

    private Content.Table? Named(Schema.NamedTables named, TomlTable table)
    {
        Rows<ContentEntry> entries =
            [.. table.Entries.Select(entry => Entry(entry.Key, named.Row, entry)).OfType<ContentEntry>()];
        return entries.Count == 0 ? null : new Content.Table(entries);
    }

    private ContentEntry? Entry(string key, Schema schema, TomlEntry entry) =>
        Bind(schema, entry.Node) is Content content ? new ContentEntry(key, content) : null;

    private Content? Misfit(Schema schema, TomlNode node)
    {
        string text = $"expected {Expectation.Of(schema, node.Path)}, found {Expectation.Found(node)}";
        _problems.Add(TomlProblem.At(node.Span, node.Path.ToString(), text));
        return null;
    }

    private static bool IsFormat(TomlTable table, TomlEntry entry) =>
        table.Path.Steps.Count == 0 && entry.Key == BeamFileFormat.Key;
}
