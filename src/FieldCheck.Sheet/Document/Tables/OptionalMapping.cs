namespace FieldCheck.Sheet.Document.Tables;

/// <summary>A table that may be missing: null then.</summary>
internal sealed class OptionalMapping<TRow>(TableMapping<TRow> table) : Mapping<TRow?>(table.Schema)
    where TRow : class
{
    internal override Content? Write(TRow? value) => value is null ? null : table.Write(value);

    internal override TRow? Read(Content? content) => content is null ? null : table.Read(content);
}
