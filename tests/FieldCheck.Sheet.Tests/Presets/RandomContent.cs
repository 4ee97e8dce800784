using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Document.Tables;

namespace FieldCheck.Sheet.Tests.Presets;

/// <summary>Makes beams with anything in them, and changes them anyhow, from a seed.</summary>
internal sealed class RandomContent(int seed)
{
    private static readonly string[] Texts =
    [
        "", " ", "3 m", "12'-6 1/2\"", "5 1/4\"", "C:\\yard", "it's", "a\tb", "two\nlines", "quote \"\"\" inside\n\"", "\r\n",
        "# no comment", "x = 1", "[[span]]", "±5 %", "𝄞 é 長さ", "\u001b[31m", "\u007f", "\\", "'''", "'", "\"", "end\\\n",
    ];

    private static readonly string[] Bare =
        ["0", "1", "12", "-3", "+1", "1.25", "1e3", "0.5", "true", "false", "nan", "1.", ".5", "007", "1e999", "one", "1 2"];

    private static readonly string[] Names =
        ["dead", "live", "a", "b", "c", "long name", "with.dot", "\"q\"", "é", "1", "-", "format", "", "line\nbreak"];

    private readonly Random _random = new(seed);

    internal static BeamDocument Document(int seed) =>
        FileContent.Read(new RandomContent(seed).Table(FileContent.Schema));

    /// <summary>The beam after some changes, each of a cell or a row anywhere.</summary>
    internal static BeamDocument Changed(BeamDocument document, int seed)
    {
        RandomContent random = new(seed);
        Content content = FileContent.Of(document);
        for (int i = random._random.Next(1, 4); i > 0; i--)
        {
            content = random.Changed(FileContent.Schema, content);
        }

        return FileContent.Read(content);
    }

    private Content Any(Schema schema) => schema switch
    {
        Schema.Cell cell => new Content.Cell(Text(cell.Wanted)),
        Schema.Texts => new Content.List([.. Some(() => Any(new Schema.Cell(new Wanted.FreeText())))]),
        Schema.Figures figures => new Content.Table([.. Named(() => Any(new Schema.Cell(figures.Wanted)))]),
        Schema.Table table => Table(table),
        Schema.TableRows rows => new Content.List([.. Some(() => Table(rows.Row))]),
        Schema.NamedTables named => new Content.Table([.. Named(() => Table(named.Row))]),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private Content.Table Table(Schema.Table table) => new(
    [
        .. table.Keys.Where(_ => _random.Next(3) > 0).Select(key => new ContentEntry(key.Key, Any(key.Schema))),
    ]);

    private string Text(Wanted wanted) => wanted is Wanted.Truth or Wanted.Whole or Wanted.BareNumber && _random.Next(5) > 0
        ? Bare[_random.Next(Bare.Length)]
        : Texts[_random.Next(Texts.Length)];

    private Content[] Some(Func<Content> any) => [.. Enumerable.Range(0, _random.Next(1, 4)).Select(_ => any())];

    private ContentEntry[] Named(Func<Content> any)
    {
        string[] names = [.. Names];
        _random.Shuffle(names);
        return [.. names.Take(_random.Next(1, 4)).Select(name => new ContentEntry(name, any()))];
    }

    private Content Changed(Schema schema, Content? content) => (schema, content) switch
    {
        (_, null) or (Schema.Cell, _) => Any(schema),
        (Schema.Table table, Content.Table now) => ChangedKey(table, now),
        (_, Content.Table now) => new Content.Table(Shuffled(now.Entries, of => Entry(of, now), item => item with
        {
            Content = Changed(CellSearch.Below(schema, item.Key)!, item.Content),
        }, schema)),
        (_, Content.List now) => new Content.List(Shuffled(now.Items, of => Any(CellSearch.OfItem(of)!),
            item => Changed(CellSearch.OfItem(schema)!, item), schema)),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>One more entry, under a name that does not stand yet: a table holds a key once.</summary>
    private ContentEntry Entry(Schema schema, Content.Table beside)
    {
        string name;
        do
        {
            name = Names[_random.Next(Names.Length)] + _random.Next(99);
        }
        while (beside[name] is not null);

        return new ContentEntry(name, Any(CellSearch.Below(schema, name)!));
    }

    private Content.Table ChangedKey(Schema.Table table, Content.Table now)
    {
        SchemaKey key = table.Keys[_random.Next(table.Keys.Length)];
        Content? old = now[key.Key];
        Content? changed = old is not null && _random.Next(4) == 0 ? null : Changed(key.Schema, old);
        Dictionary<string, Content> entries = now.Entries.ToDictionary(entry => entry.Key, entry => entry.Content);
        entries.Remove(key.Key);
        if (changed is not null)
        {
            entries.Add(key.Key, changed);
        }

        return new Content.Table(
        [
            .. table.Keys.Where(known => entries.ContainsKey(known.Key))
                .Select(known => new ContentEntry(known.Key, entries[known.Key])),
        ]);
    }

    private Rows<T> Shuffled<T>(Rows<T> rows, Func<Schema, T> added, Func<T, T> changed, Schema schema)
    {
        int row = _random.Next(rows.Count);
        int to = _random.Next(rows.Count);
        return _random.Next(6) switch
        {
            0 => rows.Insert(to, added(schema)),
            1 => rows.Add(added(schema)),
            2 when rows.Count > 1 => rows.RemoveAt(row),
            3 => rows.RemoveAt(row).Insert(to, rows[row]),
            _ => rows.SetItem(row, changed(rows[row])),
        };
    }
}
