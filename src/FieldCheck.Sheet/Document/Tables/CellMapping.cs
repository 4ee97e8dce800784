namespace FieldCheck.Sheet.Document.Tables;

/// <summary>A cell is its text.</summary>
internal sealed class CellMapping(Wanted wanted) : Mapping<string?>(new Schema.Cell(wanted))
{
    internal override Content? Write(string? value) => value is null ? null : new Content.Cell(value);

    internal override string? Read(Content? content) => (content as Content.Cell)?.Text;
}
