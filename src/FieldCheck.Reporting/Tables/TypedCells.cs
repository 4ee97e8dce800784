using System.Collections.Immutable;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Reporting.Tables;

/// <summary>The cells of a row in which something was typed, by the table of keys.</summary>
internal static class TypedCells
{
    /// <summary>Each cell as "flange width 102 mm", in the letters that were typed.</summary>
    internal static IEnumerable<string> Of<TRow>(ImmutableArray<Field<TRow>> fields, TRow row) =>
        from field in fields
        let text = field.Get(row)
        where text is not null
        select $"{field.Key.Replace('_', ' ')} {text}";
}
