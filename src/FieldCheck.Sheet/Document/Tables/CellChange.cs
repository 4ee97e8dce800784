using System.Diagnostics;

namespace FieldCheck.Sheet.Document.Tables;

/// <summary>Changes one cell of content, by walking the schema beside it.</summary>
internal static class CellChange
{
    /// <summary>Makes the change.</summary>
    /// <param name="schema">What may stand here.</param>
    /// <param name="content">What stands here, or null.</param>
    /// <param name="path">The cell.</param>
    /// <param name="text">Its new text, or null to clear it.</param>
    /// <param name="changed">What stands here now, or null.</param>
    /// <returns>False where the path names no cell.</returns>
    internal static bool TryMake(Schema schema, Content? content, KeyPath path, string? text, out Content? changed) =>
        TryMake(schema, content, [.. path.Steps], text, out changed);

    private static bool TryMake(
        Schema schema, Content? content, ReadOnlySpan<KeyStep> steps, string? text, out Content? changed)
    {
        if (steps.IsEmpty)
        {
            changed = text is null ? null : new Content.Cell(text);
            return schema is Schema.Cell;
        }

        return steps[0] switch
        {
            KeyStep.At(int row) => InRow(schema, content as Content.List, row, steps[1..], text, out changed),
            KeyStep.Into(string key) => UnderKey(schema, content as Content.Table, key, steps[1..], text, out changed),
            _ => throw new UnreachableException(),
        };
    }

    private static bool InRow(
        Schema schema, Content.List? list, int row, ReadOnlySpan<KeyStep> rest, string? text, out Content? changed)
    {
        changed = null;
        if (CellSearch.OfItem(schema) is not Schema item || list is null || row > list.Items.Count
            || !TryMake(item, list.Items[row - 1], rest, text, out Content? now))
        {
            return false;
        }

        changed = new Content.List(now is null ? list.Items.RemoveAt(row - 1) : list.Items.SetItem(row - 1, now));
        return true;
    }

    private static bool UnderKey(
        Schema schema, Content.Table? table, string key, ReadOnlySpan<KeyStep> rest, string? text, out Content? changed)
    {
        changed = null;
        Content? before = table?[key];
        if (CellSearch.Below(schema, key) is not Schema below || (before is null && schema is Schema.NamedTables)
            || !TryMake(below, before, rest, text, out Content? now))
        {
            return false;
        }

        changed = new Content.Table(Replaced(table?.Entries ?? [], key, now));
        return true;
    }

    private static Rows<ContentEntry> Replaced(Rows<ContentEntry> entries, string key, Content? now)
    {
        int index = entries.ToList().FindIndex(entry => entry.Key == key);
        if (index < 0)
        {
            return now is null ? entries : entries.Add(new ContentEntry(key, now));
        }

        return now is null ? entries.RemoveAt(index) : entries.SetItem(index, new ContentEntry(key, now));
    }
}
