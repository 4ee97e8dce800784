namespace FieldCheck.Sheet.Document.Tables;

/// <summary>A key of a table, whatever stands under it.</summary>
/// <typeparam name="TRow">The row.</typeparam>
internal abstract class Part<TRow>(string key, Schema schema)
{
    internal string Key { get; } = key;

    internal Schema Schema { get; } = schema;

    /// <summary>What a row says under this key; null where nothing is to be written.</summary>
    internal abstract ContentEntry? Write(TRow row);

    /// <summary>The row with what stands in the file under this key.</summary>
    internal abstract TRow Read(TRow row, Content? content);

    /// <summary>A part that holds one cell.</summary>
    internal static Part<TRow> Of(Field<TRow> field) =>
        Of(field.Key, new CellMapping(field.Wanted), field.Get, field.Set);

    /// <summary>A part that holds named figures.</summary>
    internal static Part<TRow> Of(FiguresField<TRow> field) =>
        Of(field.Key, new FiguresMapping(field.Wanted), field.Get, field.Set);

    /// <summary>A part that holds anything.</summary>
    internal static Part<TRow> Of<TValue>(
        string key, Mapping<TValue> mapping, Func<TRow, TValue> get, Func<TRow, TValue, TRow> set) =>
        new Mapped<TValue>(key, mapping, get, set);

    private sealed class Mapped<TValue>(
        string key, Mapping<TValue> mapping, Func<TRow, TValue> get, Func<TRow, TValue, TRow> set)
        : Part<TRow>(key, mapping.Schema)
    {
        internal override ContentEntry? Write(TRow row) =>
            mapping.Write(get(row)) is Content content ? new ContentEntry(Key, content) : null;

        internal override TRow Read(TRow row, Content? content) => set(row, mapping.Read(content));
    }
}
