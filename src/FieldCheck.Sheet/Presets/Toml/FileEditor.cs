using FieldCheck.Sheet.Document.Tables;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Changes a file to hold other content, and leaves the rest of it as it stands.</summary>
/// <remarks>
/// A value is changed where it is; a row keeps its block and its comments. Where a table is written in a form that
/// cannot take a change (keys with dots, a table under a header inside a row), that table alone is written anew.
/// </remarks>
internal sealed class FileEditor
{
    private readonly TomlFile _file;
    private readonly Schema.Table _top;
    private readonly FileDraft _draft;
    private readonly PairEditor _pairs;
    private readonly BlockDraft[] _blockOf;

    private FileEditor(TomlFile file, Schema.Table top)
    {
        _file = file;
        _top = top;
        _draft = TomlLayout.Of(file);
        _blockOf = new BlockDraft[file.Statements.Length];
        _pairs = new PairEditor(file, _draft, _blockOf);
        foreach (BlockDraft block in _draft.Blocks)
        {
            foreach (int statement in block.Pieces.Select(piece => piece.Statement).OfType<int>())
            {
                _blockOf[statement] = block;
            }
        }
    }

    /// <summary>The text of a file after a change.</summary>
    /// <param name="file">The file as it stands; it fits the schema.</param>
    /// <param name="schema">What may stand in it.</param>
    /// <param name="wanted">What it shall hold.</param>
    internal static string Changed(TomlFile file, Schema.Table schema, Content.Table wanted)
    {
        FileEditor editor = new(file, schema);
        editor.EditTable(schema, file.Root, wanted, editor._draft.Blocks[0]);
        string text = editor._draft.Text();
        bool isCut = !TomlLayout.IsWhole(file.Text) && text.EndsWith(editor._draft.LineEnd, StringComparison.Ordinal);
        return isCut ? text[..^editor._draft.LineEnd.Length] : text;
    }

    /// <summary>Changes a table that has a block of its own.</summary>
    private void EditTable(Schema.Table schema, TomlTable table, Content.Table wanted, BlockDraft block)
    {
        string? exchanged = ExchangeKey(schema, table, wanted);
        foreach (SchemaKey key in schema.Keys.Where(key => key.Key != exchanged))
        {
            Content? now = wanted[key.Key];
            TomlNode? node = table[key.Key]?.Node;
            if (node is not null && !Equals(ContentBinder.Of(key.Schema, node), now) && !TryEdit(key, node, now))
            {
                Remove(node);
                node = null;
            }

            if (node is null && now is not null)
            {
                Add(key, now, block, schema);
            }
        }
    }

    /// <summary>Changes what stands under a key, if the way it is written allows it.</summary>
    private bool TryEdit(SchemaKey key, TomlNode node, Content? wanted)
    {
        switch (key.Schema, node, wanted)
        {
            case (Schema.Table schema, TomlTable { Form: TomlForm.Header } table, Content.Table now):
                EditTable(schema, table, now, BlockOf(table));
                return true;
            case (Schema.TableRows { Inline: false } rows, TomlList { UnderHeaders: true } list, Content.List now):
                EditRows(key.Key, rows.Row, list, now);
                return true;
            case (Schema.NamedTables named, TomlTable { Form: not TomlForm.Inline } table, Content.Table now)
                when table.Entries.TrueForAll(entry => entry.Node is TomlTable { Form: TomlForm.Header }):
                EditNamed(key.Key, named.Row, table, now);
                return true;
            case (var schema, _, Content now) when KeepsItsForm(schema, node, now):
                EditInPlace(schema, node, now);
                return true;
            default:
                return false;
        }
    }

    /// <summary>
    /// Where one cell went and another came, as a length that is now a tape reading, the new one takes the line of the old.
    /// </summary>
    /// <returns>The key that came, or null.</returns>
    private string? ExchangeKey(Schema.Table schema, TomlTable table, Content.Table wanted)
    {
        SchemaKey[] cells = [.. schema.Keys.Where(key => key.Schema is Schema.Cell)];
        SchemaKey[] gone = [.. cells.Where(key => table[key.Key] is not null && wanted[key.Key] is null)];
        SchemaKey[] come = [.. cells.Where(key => table[key.Key] is null && wanted[key.Key] is not null)];
        if (gone.Length != 1 || come.Length != 1 || !IsValue(table[gone[0].Key]!.Node))
        {
            return null;
        }

        int number = table[gone[0].Key]!.Node.Statements[0];
        _pairs.Exchange(number, come[0].Key, TomlWriter.Value(come[0].Schema, wanted[come[0].Key]!));
        return come[0].Key;
    }

    private void EditRows(string key, Schema.Table schema, TomlList list, Content.List now)
    {
        TomlTable[] rows = [.. list.Items.Cast<TomlTable>()];
        Content.Table[] wanted = [.. now.Items.Cast<Content.Table>()];
        int[] match = RowAlignment.Match([.. rows.Select(row => ContentBinder.Of(schema, row)!)], wanted);
        EditBlocks(key, schema, rows, match, wanted, row => TomlWriter.Block($"[[{key}]]", schema, wanted[row]));
    }

    private void EditNamed(string key, Schema.Table schema, TomlTable table, Content.Table now)
    {
        TomlTable[] rows = [.. table.Entries.Select(entry => (TomlTable)entry.Node)];
        int[] match = NameAlignment.Match(schema, table.Entries, now.Entries);
        for (int row = 0; row < match.Length; row++)
        {
            if (match[row] >= 0 && !TryRename(table.Entries[match[row]], now.Entries[row].Key))
            {
                match[row] = -1;
            }
        }

        EditBlocks(key, schema, rows, match, [.. now.Entries.Select(entry => (Content.Table)entry.Content)],
            row => TomlWriter.NamedBlock(key, schema, now.Entries[row]));
    }

    private bool TryRename(TomlEntry entry, string name)
    {
        if (entry.Key == name)
        {
            return true;
        }

        // With tables under headers of their own inside, there is more than one header to rename: it is written anew.
        if (entry.Node.Statements is [int header])
        {
            _pairs.Rename(header, name);
            return true;
        }

        return false;
    }

    /// <summary>Changes rows that stand under headers, takes some out, adds others, and brings them into order.</summary>
    private void EditBlocks(
        string key, Schema.Table schema, TomlTable[] rows, int[] match, Content.Table[] now, Func<int, string> textOf)
    {
        List<BlockDraft>[] blocks = [.. rows.Select(BlocksOf)];
        foreach (int row in Enumerable.Range(0, match.Length).Where(row => match[row] >= 0))
        {
            EditTable(schema, rows[match[row]], now[row], BlockOf(rows[match[row]]));
        }

        foreach (int row in Enumerable.Range(0, rows.Length).Except(match))
        {
            Remove(rows[row]);
        }

        BlockOrder.Arrange(_draft, blocks, match, row => _draft.NewBlock(key, textOf(row)));
    }

    /// <summary>True: the change is one of values that stand as they are.</summary>
    private bool KeepsItsForm(Schema schema, TomlNode node, Content wanted) => (node, wanted) switch
    {
        _ when IsValue(node) => true,
        (TomlTable table, Content.Table now) => KeysOf(schema, table).SequenceEqual(now.Entries.Select(entry => entry.Key))
            && now.Entries.All(entry =>
                KeepsItsForm(CellSearch.Below(schema, entry.Key)!, table[entry.Key]!.Node, entry.Content)),
        (TomlList list, Content.List now) => list.Items.Count == now.Items.Count
            && now.Items.Zip(list.Items).All(pair => KeepsItsForm(CellSearch.OfItem(schema)!, pair.Second, pair.First)),
        _ => false,
    };

    /// <summary>The keys of a table in the order in which content has them.</summary>
    private static IEnumerable<string> KeysOf(Schema schema, TomlTable table) => schema is Schema.Table known
        ? known.Keys.Select(key => key.Key).Where(key => table[key] is not null)
        : table.Entries.Select(entry => entry.Key);

    private void EditInPlace(Schema schema, TomlNode node, Content wanted)
    {
        if (Equals(ContentBinder.Of(schema, node), wanted))
        {
            return;
        }

        if (IsValue(node))
        {
            _pairs.EditValue(schema, node, wanted);
        }
        else if (wanted is Content.Table table)
        {
            foreach (ContentEntry entry in table.Entries)
            {
                EditInPlace(CellSearch.Below(schema, entry.Key)!, ((TomlTable)node)[entry.Key]!.Node, entry.Content);
            }
        }
        else
        {
            foreach ((Content item, TomlNode old) in ((Content.List)wanted).Items.Zip(((TomlList)node).Items))
            {
                EditInPlace(CellSearch.OfItem(schema)!, old, item);
            }
        }
    }

    /// <summary>True: it is the value of a statement, whatever its key.</summary>
    private bool IsValue(TomlNode node) => node.Statements is [int number] && _file.Statements[number].Value == node;

    /// <summary>The block that the header of a table begins.</summary>
    private BlockDraft BlockOf(TomlTable table) =>
        _blockOf[table.Statements.First(number => _file.Statements[number].Span.Start == table.Span.Start)];

    /// <summary>All blocks that write something, those of tables inside it too.</summary>
    private List<BlockDraft> BlocksOf(TomlNode node) =>
        [.. node.Statements.Where(number => _file.Statements[number].IsHeader).Select(number => _blockOf[number])];

    private void Remove(TomlNode node)
    {
        BlocksOf(node).ForEach(block => block.IsRemoved = true);
        foreach (int number in node.Statements.Where(number => !_file.Statements[number].IsHeader))
        {
            _blockOf[number].Remove(number);
        }
    }

    private void Add(SchemaKey key, Content wanted, BlockDraft block, Schema.Table schema)
    {
        if (schema == _top && TomlWriter.IsUnderHeader(key.Schema))
        {
            IEnumerable<string> texts = TomlWriter.Blocks(key, wanted);
            _draft.Blocks.InsertRange(PlaceOf(key.Key), texts.Select(text => _draft.NewBlock(key.Key, text)).ToList());
        }
        else
        {
            _pairs.Add(key.Key, TomlWriter.Value(key.Schema, wanted), block, schema);
        }
    }

    /// <summary>Where the first block of a key stands: after the last block of the keys that a new file has before it.</summary>
    private int PlaceOf(string key)
    {
        List<string> order = [.. _top.Keys.Select(known => known.Key)];
        int limit = order.IndexOf(key);
        int latest = _draft.Blocks.Where(block => !block.IsRemoved && block.Key is not null)
            .Select(block => order.IndexOf(block.Key!)).Where(place => place < limit).DefaultIfEmpty(-1).Max();
        return latest < 0
            ? 1
            : _draft.Blocks.FindLastIndex(block => !block.IsRemoved && block.Key == order[latest]) + 1;
    }
}
