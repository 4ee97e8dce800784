using FieldCheck.Sheet.Document;
using Tomlyn.Syntax;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Makes the tree of what stands in a file from the parser's tree of how it is written.</summary>
/// <remarks>
/// A key stands once, and so does a table; neither braces nor a header that were closed are opened again. Keys with dots go
/// on only with tables that keys with dots began.
/// </remarks>
internal sealed class TomlTreeBuilder(string text)
{
    private readonly TomlTable _root = new(TomlSpan.Top, KeyPath.Top, TomlForm.Header);
    private readonly List<TomlStatement> _statements = [];
    private readonly List<TomlProblem> _problems = [];
    private int _rows;

    /// <summary>Builds the tree.</summary>
    /// <param name="document">A text without errors of grammar.</param>
    internal TomlFile Build(DocumentSyntax document)
    {
        foreach (KeyValueSyntax pair in document.KeyValues)
        {
            AddStatement(_root, pair);
        }

        foreach (TableSyntaxBase table in document.Tables)
        {
            AddHeader(table);
        }

        return new TomlFile(text, _root, [.. _statements], true, [.. _problems]);
    }

    private void AddHeader(TableSyntaxBase syntax)
    {
        int number = _statements.Count;
        List<TomlKey> keys = TomlKey.PartsOf(syntax.Name!);
        TomlSpan span = TomlSpan.Of(syntax.OpenBracket!) with { End = TomlSpan.Of(syntax.CloseBracket!).End };
        _statements.Add(new TomlStatement(true, keys[0].Name, span, keys[^1].Span, null));
        TomlTable? owner = IsTooLong(keys) ? null : Walk(_root, keys, TomlForm.Implied, number);
        TomlTable? table = owner is null ? null
            : syntax is TableArraySyntax ? AddRow(owner, keys[^1], span) : OpenTable(owner, keys[^1], span);
        table?.Statements.Add(number);

        // Without a table of its own, what follows is read into one that is thrown away: it only clashes with itself.
        table ??= new TomlTable(span, KeyPath.Top, TomlForm.Header);
        foreach (KeyValueSyntax pair in syntax.Items)
        {
            AddStatement(table, pair);
        }
    }

    private TomlTable? AddRow(TomlTable owner, TomlKey key, TomlSpan span)
    {
        if (owner[key.Name] is null)
        {
            owner.Add(new TomlEntry(key.Name, key.Span, new TomlList(span, owner.Path.Into(key.Name), true)));
        }

        TomlEntry entry = owner[key.Name]!;
        if (entry.Node is not TomlList { UnderHeaders: true } list)
        {
            return Clash<TomlTable>(key.Span, entry);
        }

        list.Statements.Add(_statements.Count - 1);
        TomlTable row = new(span, list.Path.At(list.Items.Count + 1), TomlForm.Header);
        CountRow(span);
        list.Items.Add(row);
        return row;
    }

    private TomlTable? OpenTable(TomlTable owner, TomlKey key, TomlSpan span)
    {
        if (owner[key.Name] is not TomlEntry entry)
        {
            TomlTable added = new(span, owner.Path.Into(key.Name), TomlForm.Header);
            owner.Add(new TomlEntry(key.Name, key.Span, added));
            return added;
        }

        if (entry.Node is not TomlTable { Form: TomlForm.Implied } table)
        {
            return Clash<TomlTable>(key.Span, entry);
        }

        table.Form = TomlForm.Header;
        table.Span = span;
        return table;
    }

    private void AddStatement(TomlTable table, KeyValueSyntax pair)
    {
        int number = _statements.Count;
        TomlNode? node = AddPair(table, pair, number);
        node?.Statements.Add(number);
        TomlSpan span = TomlSpan.Of(pair.Key!) with { End = TomlSpan.Of(pair.Value!).End };
        List<TomlKey> keys = TomlKey.PartsOf(pair.Key!);
        _statements.Add(new TomlStatement(false, keys[0].Name, span, keys[^1].Span, node));
    }

    private TomlNode? AddPair(TomlTable table, KeyValueSyntax pair, int? number)
    {
        List<TomlKey> keys = TomlKey.PartsOf(pair.Key!);
        if (IsTooLong(keys) || Walk(table, keys, TomlForm.Dotted, number) is not TomlTable owner)
        {
            return null;
        }

        TomlKey key = keys[^1];
        if (owner[key.Name] is TomlEntry before)
        {
            return Clash<TomlNode>(key.Span, before);
        }

        TomlNode node = Value(pair.Value!, owner.Path.Into(key.Name));
        owner.Add(new TomlEntry(key.Name, key.Span, node));
        return node;
    }

    /// <summary>The table that the last of the keys belongs to, made where it does not stand yet.</summary>
    private TomlTable? Walk(TomlTable table, List<TomlKey> keys, TomlForm form, int? number)
    {
        bool isHeader = form == TomlForm.Implied;
        foreach (TomlKey key in keys[..^1])
        {
            if (table[key.Name] is not TomlEntry entry)
            {
                TomlTable added = new(key.Span, table.Path.Into(key.Name), form);
                table.Add(entry = new TomlEntry(key.Name, key.Span, added));
            }

            TomlTable? below = entry.Node switch
            {
                TomlTable inner when inner.Form == TomlForm.Dotted || (isHeader && inner.Form != TomlForm.Inline) => inner,
                TomlList { UnderHeaders: true } list when isHeader => (TomlTable)list.Items[^1],
                _ => null,
            };
            if (below is null)
            {
                return Clash<TomlTable>(key.Span, entry);
            }

            if (number is int statement)
            {
                entry.Node.Statements.Add(statement);
                if (below != entry.Node)
                {
                    below.Statements.Add(statement);
                }
            }

            table = below;
        }

        return table;
    }

    private TomlNode Value(ValueSyntax syntax, KeyPath path)
    {
        TomlSpan span = TomlSpan.Of(syntax);
        switch (syntax)
        {
            case ArraySyntax array:
                TomlList list = new(span, path, false);
                foreach (ArrayItemSyntax item in array.Items)
                {
                    list.Items.Add(Value(item.Value!, path.At(list.Items.Count + 1)));
                    CountRow(list.Items[^1].Span);
                }

                return list;
            case InlineTableSyntax inline:
                _problems.AddRange(TomlVersion.ProblemsOf(inline, text, path));
                TomlTable table = new(span, path, TomlForm.Inline);
                foreach (InlineTableItemSyntax item in inline.Items)
                {
                    AddPair(table, item.KeyValue!, null);
                }

                return table;
            default:
                _problems.AddRange(TomlVersion.ProblemsOf(syntax, text, path));
                return TomlScalar.Of(syntax, text, path);
        }
    }

    private bool IsTooLong(List<TomlKey> keys)
    {
        if (keys.Count > KeyPath.MostKeys)
        {
            _problems.Add(TomlProblem.At(keys[0].Span, "", $"a key has at most {KeyPath.MostKeys} parts, found {keys.Count}"));
        }

        return keys.Count > KeyPath.MostKeys;
    }

    private void CountRow(TomlSpan span)
    {
        _rows++;
        if (_rows == BeamFileText.MostRows + 1)
        {
            _problems.Add(TomlProblem.At(span, "", $"a file has at most {BeamFileText.MostRows:N0} rows"));
        }
    }

    private T? Clash<T>(TomlSpan span, TomlEntry before)
        where T : TomlNode
    {
        string path = before.Node.Path.ToString();
        _problems.Add(TomlProblem.At(span, path, $"already written at line {before.KeySpan.Line}; a key or table stands once"));
        return null;
    }
}
