using System.Collections.Immutable;

namespace FieldCheck.Sheet.Document.Tables;

/// <summary>A row is a table of its parts; a table where nothing stands is still a table.</summary>
internal sealed class TableMapping<TRow>(Func<TRow> empty, ImmutableArray<Part<TRow>> parts, bool saysByStanding = true)
    : Mapping<TRow>(new Schema.Table([.. parts.Select(part => new SchemaKey(part.Key, part.Schema))], saysByStanding))
{
    internal new Schema.Table Schema => (Schema.Table)base.Schema;

    internal override Content? Write(TRow value)
    {
        Rows<ContentEntry> entries = [.. parts.Select(part => part.Write(value)).OfType<ContentEntry>()];
        return entries.Count > 0 || Schema.SaysByStanding ? new Content.Table(entries) : null;
    }

    internal override TRow Read(Content? content) => content is Content.Table table
        ? parts.Aggregate(empty(), (row, part) => part.Read(row, table[part.Key]))
        : empty();
}
