using FieldCheck.Sheet.Document.Tables;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Writes a changed value with as much as may stay of the way it is written.</summary>
internal sealed class ValueEditor(string text, FileDraft draft)
{
    /// <summary>The value of a statement.</summary>
    internal string Edit(Schema schema, TomlNode node, Content wanted) =>
        node is TomlCell ? draft.WithLineEnds(TomlWriter.Value(schema, wanted)) : EditInside(schema, node, wanted);

    private string EditInside(Schema schema, TomlNode node, Content wanted) => (node, wanted) switch
    {
        _ when wanted.Equals(ContentBinder.Of(schema, node)) => node.Span.In(text),
        (TomlTable table, Content.Table now) when table.Entries.TrueForAll(entry => IsPlain(entry.Node)) =>
            EditTable(schema, table, now),
        (TomlList list, Content.List now) when list.Items.Count > 0 => EditList(schema, list, now),
        _ => TomlWriter.Inline(schema, wanted),
    };

    private static bool IsPlain(TomlNode node) => node is not TomlTable { Form: not TomlForm.Inline };

    private string EditTable(Schema schema, TomlTable table, Content.Table now)
    {
        // The order of known keys says nothing, so they stay where they are; that of a person's own names does.
        IEnumerable<ContentEntry> entries = schema is Schema.Table
            ? now.Entries.OrderBy(entry => table[entry.Key] is TomlEntry at ? table.Entries.IndexOf(at) : int.MaxValue)
            : now.Entries;
        List<(TomlSpan? Old, string Text)> parts = [];
        foreach (ContentEntry entry in entries)
        {
            parts.Add(table[entry.Key] is TomlEntry old
                ? (old.KeySpan with { End = old.Node.Span.End }, EditPair(schema, old, entry.Content))
                : (null, TomlWriter.Pair(schema, entry)));
        }

        IEnumerable<TomlSpan> before = table.Entries.Select(entry => entry.KeySpan with { End = entry.Node.Span.End });
        return Joined(table.Span, [.. before], parts);
    }

    private string EditPair(Schema schema, TomlEntry entry, Content wanted) =>
        text[entry.KeySpan.Start..entry.Node.Span.Start]
        + EditInside(CellSearch.Below(schema, entry.Key)!, entry.Node, wanted);

    private string EditList(Schema schema, TomlList list, Content.List now)
    {
        Schema item = CellSearch.OfItem(schema)!;
        Content[] old = [.. list.Items.Select(node => ContentBinder.Of(item, node) ?? new Content.Table([]))];
        int[] match = RowAlignment.Match(old, now.Items);
        List<(TomlSpan? Old, string Text)> parts =
        [
            .. now.Items.Select((content, row) => match[row] < 0
                ? ((TomlSpan?)null, TomlWriter.Inline(item, content))
                : (list.Items[match[row]].Span, EditInside(item, list.Items[match[row]], content))),
        ];
        TomlSpan[] before = [.. list.Items.Select(node => node.Span)];
        return LineList.Of(text, list.Span, before) is LineList lines && !IsSame(before, parts)
            ? lines.With(parts, draft.LineEnd)
            : Joined(list.Span, before, parts);
    }

    /// <summary>The parts where the old ones stood, if they are the same ones; else one after the other on a line.</summary>
    private string Joined(TomlSpan whole, TomlSpan[] before, List<(TomlSpan? Old, string Text)> parts)
    {
        string open = text[whole.Start..(whole.Start + 1)];
        string close = text[(whole.End - 1)..whole.End];
        if (!IsSame(before, parts))
        {
            string pad = before.Length > 0 && before[0].Start == whole.Start + 1 ? "" : " ";
            return $"{open}{pad}{string.Join(", ", parts.Select(part => part.Text))}{pad}{close}";
        }

        int at = whole.Start;
        string joined = "";
        foreach ((TomlSpan? old, string part) in parts)
        {
            joined += text[at..old!.Value.Start] + part;
            at = old.Value.End;
        }

        return joined + text[at..whole.End];
    }

    private static bool IsSame(TomlSpan[] before, List<(TomlSpan? Old, string Text)> parts) =>
        before.Select(span => (TomlSpan?)span).SequenceEqual(parts.Select(part => part.Old));
}
