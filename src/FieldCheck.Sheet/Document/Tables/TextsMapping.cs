namespace FieldCheck.Sheet.Document.Tables;

/// <summary>A list of texts; an empty one is not written.</summary>
internal sealed class TextsMapping() : Mapping<Rows<string>>(new Schema.Texts())
{
    internal override Content? Write(Rows<string> value) =>
        value.Count == 0 ? null : new Content.List([.. value.Select(text => new Content.Cell(text))]);

    internal override Rows<string> Read(Content? content) =>
        content is Content.List list ? [.. list.Items.OfType<Content.Cell>().Select(cell => cell.Text)] : [];
}
