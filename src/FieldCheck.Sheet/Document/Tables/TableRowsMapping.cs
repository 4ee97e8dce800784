namespace FieldCheck.Sheet.Document.Tables;

/// <summary>Rows are tables one after the other; where there is none, nothing is written.</summary>
internal sealed class TableRowsMapping<TRow>(TableMapping<TRow> row, bool inline = false)
    : Mapping<Rows<TRow>>(new Schema.TableRows(row.Schema, inline))
{
    internal override Content? Write(Rows<TRow> value) =>
        value.Count == 0 ? null : new Content.List([.. value.Select(item => row.Write(item)!)]);

    internal override Rows<TRow> Read(Content? content) =>
        content is Content.List list ? [.. list.Items.Select(row.Read)] : [];
}
