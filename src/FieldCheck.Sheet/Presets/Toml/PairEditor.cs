using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Document.Tables;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Changes single statements: a value, a key, a new pair in a block.</summary>
internal sealed class PairEditor(TomlFile file, FileDraft draft, BlockDraft[] blockOf)
{
    private readonly ValueEditor _values = new(file.Text, draft);

    /// <summary>Changes the value of a statement.</summary>
    internal void EditValue(Schema schema, TomlNode node, Content wanted)
    {
        TomlSpan span = node.Span;
        Replace(node.Statements[0], span.Start, span.End, _values.Edit(schema, node, wanted), piece => piece);
    }

    /// <summary>Changes the last part of the name in a header.</summary>
    internal void Rename(int header, string name)
    {
        TomlSpan span = file.Statements[header].Name;
        Replace(header, span.Start, span.End, TomlText.Key(name), piece => piece);
    }

    /// <summary>Puts another key and value in the place of a pair, and keeps its comments.</summary>
    internal void Exchange(int number, string key, string value)
    {
        TomlStatement pair = file.Statements[number];
        TomlSpan old = pair.Value!.Span;
        int equals = PairStyle.EqualsOf(file.Text, pair);
        int room = Math.Max(equals - pair.Name.Start - key.Length, equals > pair.Name.End ? 1 : 0);
        string text = key + new string(' ', room) + file.Text[equals..old.Start] + draft.WithLineEnds(value);
        Replace(number, pair.Span.Start, old.End, text, piece => piece with { Statement = null, Key = key });
    }

    /// <summary>Adds a pair to a block, where a new file would have it among the pairs that are there.</summary>
    internal void Add(string key, string value, BlockDraft block, Schema.Table schema)
    {
        PairStyle style = PairStyle.Of(file.Text, block.Pieces
            .Where(piece => piece is { Key: not null, Statement: not null })
            .Select(piece => file.Statements[piece.Statement!.Value]));
        int order = OrderOf(key, schema);
        int after = block.Pieces.FindLastIndex(piece => piece.Key is not null && OrderOf(piece.Key, schema) < order);
        int index = after >= 0 ? after : block.Pieces.FindIndex(piece => piece is { Key: null, Statement: not null });
        string text = style.Pair(key, draft.WithLineEnds(value)) + draft.LineEnd;
        block.Pieces.Insert(index + 1, new PieceDraft("", text, null, key));
    }

    /// <summary>A key that the schema does not know, as <c>format</c>, stands before all others.</summary>
    private static int OrderOf(string key, Schema.Table schema) =>
        schema.Keys.Select(known => known.Key).ToList().IndexOf(key);

    private void Replace(int number, int start, int end, string text, Func<PieceDraft, PieceDraft> change)
    {
        int at = file.Statements[number].Span.Start;
        int line = TomlLayout.StartOfLine(file.Text, at);
        blockOf[number].Replace(number, piece =>
            change(piece with { Text = piece.Text[..(start - line)] + text + piece.Text[(end - line)..] }));
    }
}
