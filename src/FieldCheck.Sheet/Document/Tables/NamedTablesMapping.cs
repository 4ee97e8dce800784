namespace FieldCheck.Sheet.Document.Tables;

/// <summary>Rows with names are tables under their names; where there is none, nothing is written.</summary>
/// <param name="row">Everything of a row but its name.</param>
/// <param name="name">The name of a row.</param>
/// <param name="rename">The row under another name.</param>
internal sealed class NamedTablesMapping<TRow>(
    TableMapping<TRow> row, Func<TRow, string> name, Func<TRow, string, TRow> rename)
    : Mapping<Rows<TRow>>(new Schema.NamedTables(row.Schema))
{
    internal override Content? Write(Rows<TRow> value) => value.Count == 0
        ? null
        : new Content.Table([.. value.Select(item => new ContentEntry(name(item), row.Write(item)!))]);

    internal override Rows<TRow> Read(Content? content) => content is Content.Table table
        ? [.. table.Entries.Select(entry => rename(row.Read(entry.Content), entry.Key))]
        : [];
}
