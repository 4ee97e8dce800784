namespace FieldCheck.Sheet.Document.Tables;

/// <summary>Finds cells in content by walking the schema beside it.</summary>
internal static class CellSearch
{
    private static readonly Schema.Cell FreeText = new(new Wanted.FreeText());

    /// <summary>The cell that a path names, or null.</summary>
    internal static DocumentCell? Find(Schema schema, Content? content, KeyPath path)
    {
        foreach (KeyStep step in path.Steps)
        {
            if (Step(schema, content, step) is not (Schema below, var beside))
            {
                return null;
            }

            schema = below;
            content = beside;
        }

        return schema is Schema.Cell cell
            ? new DocumentCell(path.ToString(), cell.Wanted, (content as Content.Cell)?.Text)
            : null;
    }

    /// <summary>Every cell in which something stands.</summary>
    internal static IEnumerable<DocumentCell> All(Schema schema, Content content, KeyPath path) => content switch
    {
        Content.Cell cell => [new DocumentCell(path.ToString(), ((Schema.Cell)schema).Wanted, cell.Text)],
        Content.Table table => table.Entries.SelectMany(entry =>
            All(Below(schema, entry.Key)!, entry.Content, path.Into(entry.Key))),
        Content.List list => list.Items.SelectMany((item, index) =>
            All(OfItem(schema)!, item, path.At(index + 1))),
        _ => [],
    };

    /// <summary>The schema under a key; null where there can be none.</summary>
    internal static Schema? Below(Schema schema, string key) => schema switch
    {
        Schema.Table table => table[key],
        Schema.Figures figures => new Schema.Cell(figures.Wanted),
        Schema.NamedTables named => named.Row,
        _ => null,
    };

    /// <summary>The schema of each entry of a list; null for what is no list.</summary>
    internal static Schema? OfItem(Schema schema) => schema switch
    {
        Schema.Texts => FreeText,
        Schema.TableRows rows => rows.Row,
        _ => null,
    };

    private static (Schema Schema, Content? Content)? Step(Schema schema, Content? content, KeyStep step)
    {
        if (step is KeyStep.At(int row))
        {
            return OfItem(schema) is Schema item && content is Content.List list && row <= list.Items.Count
                ? (item, list.Items[row - 1])
                : null;
        }

        string key = ((KeyStep.Into)step).Key;
        Content? beside = (content as Content.Table)?[key];
        return Below(schema, key) is Schema below && (beside is not null || schema is not Schema.NamedTables)
            ? (below, beside)
            : null;
    }
}
