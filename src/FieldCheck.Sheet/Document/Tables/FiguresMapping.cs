namespace FieldCheck.Sheet.Document.Tables;

/// <summary>Named figures are a table of cells; an empty one is not written.</summary>
internal sealed class FiguresMapping(Wanted wanted) : Mapping<Rows<NamedFigure>>(new Schema.Figures(wanted))
{
    internal override Content? Write(Rows<NamedFigure> value) =>
        value.Count == 0 ? null : new Content.Table([.. value.Select(Entry)]);

    internal override Rows<NamedFigure> Read(Content? content) =>
        content is Content.Table table ? [.. table.Entries.Select(Figure)] : [];

    private static ContentEntry Entry(NamedFigure figure) => new(figure.Name, new Content.Cell(figure.Text));

    private static NamedFigure Figure(ContentEntry entry) =>
        new(entry.Key, (entry.Content as Content.Cell)?.Text ?? "");
}
